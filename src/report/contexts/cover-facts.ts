import type { ReportInput } from '../report-input.ts';
import { keptCheck } from '../revision/kept-check.ts';
import { successorOf } from './foot.ts';
import { leftOutOf } from './left-out.ts';
import { anchorOf, derivedOf } from './package-facts.ts';
import { commentCount } from './register-facts.ts';

/** Facts of the cover. */
export function coverFacts(input: ReportInput): object {
  const { project, members, combinations } = input;
  const { definition } = project;
  const revision = definition.revisions.at(-1);
  const open = definition.assumptions.filter(({ confirmed }) => !confirmed);
  const { prepared, checked, approved } = definition.people;
  return {
    ...definition,
    discipline: definition.discipline.value,
    status: definition.status.value,
    isIssued: definition.status.value === 'issued',
    isVoid: definition.status.value === 'void',
    isSuperseded: definition.status.value === 'superseded',
    successor: successorOf(definition),
    successorDate: definition.supersededBy?.date,
    revision: revision?.mark,
    date: revision?.date,
    people: [
      { role: 'Prepared', ...prepared, isSigned: prepared?.date !== undefined },
      { role: 'Checked', ...checked, isSigned: checked?.date !== undefined },
      { role: 'Approved', ...approved, isSigned: approved?.date !== undefined },
    ],
    openAssumptions: open.length,
    comments: commentCount(input),
    openTracks: open.flatMap(({ track }) => (track === undefined ? [] : [track])),
    failed: members.flatMap((member) =>
      member.kind === 'failed' ? [member.mark] : [],
    ),
    failing: derivedOf(members).reduce(
      (all, { derivation }) => all + derivation.summary.failing,
      0,
    ),
    failingMembers: derivedOf(members).flatMap(({ derivation: { mark, summary } }) =>
      summary.failing > 0 ? [{ mark, anchor: anchorOf(mark) }] : [],
    ),
    untaken: combinations.untaken,
    leftOut: leftOutOf(project, members),
    asIs: input.asIs,
    kept: keptOf(input),
  };
}

/** The check of the revision before, where sheets keep it. */
function keptOf({ revision, project }: ReportInput): string | undefined {
  if (revision === undefined || 'why' in revision) return undefined;
  return keptCheck(project.definition, revision);
}
