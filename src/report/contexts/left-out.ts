import type { MemberReport, ReportInput } from '../report-input.ts';

/** Members of the project that this package does not hold, because only some were asked for. */
export function leftOutOf(
  project: ReportInput['project'],
  members: readonly MemberReport[],
): readonly string[] {
  const held = members.map((member) =>
    member.kind === 'derived' ? member.derivation.mark : member.mark,
  );
  return project.members.map(({ mark }) => mark).filter((mark) => !held.includes(mark));
}
