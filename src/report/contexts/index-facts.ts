import type { Summary } from '../../derivation/index.ts';
import type { ReportInput } from '../report-input.ts';
import { anchorOf, derivedOf } from './package-facts.ts';

/** Facts of the index: parts and members with their sheets, results at a glance, the load path. */
export function indexFacts(
  input: ReportInput,
  parts: readonly { readonly anchor: string; readonly title: string }[],
): object {
  const rows = input.members.map((member) => {
    if (member.kind === 'failed') {
      return {
        mark: member.mark,
        title: member.title,
        anchor: anchorOf(member.mark),
        failed: true,
        reason: member.findings[0]?.message,
      };
    }
    const { mark, title, summary, typical } = member.derivation;
    return { mark, title, anchor: anchorOf(mark), summary, typical };
  });
  const summaries = derivedOf(input.members).map(
    ({ derivation }) => derivation.summary,
  );
  const total = (read: (one: Summary) => number): number =>
    summaries.reduce((all, one) => all + read(one), 0);
  const judged = summaries.filter(({ limit }) => limit !== undefined).length;
  const unjudged = total((one) => one.unjudged);
  return {
    parts,
    rows,
    judged,
    unjudged,
    statesLimits: judged > 0 || unjudged > 0,
    failing: total(({ failing }) => failing),
    closes: input.closures.length > 0 && input.closures.every(({ closes }) => closes),
    loadPath: input.loadPath.map((edge) => ({
      ...edge,
      isMore: edge.times !== 1,
      fromAnchor: anchorOf(edge.from),
      toAnchor: anchorOf(edge.to),
    })),
  };
}
