import type { ReportInput } from '../report-input.ts';
import { closureFacts } from './closure-facts.ts';
import { anchorOf, derivedOf } from './package-facts.ts';

/** Facts of the table of reactions: members by level, those without one under a head of their own, and the closure. */
export function reactionFacts(input: ReportInput): object {
  const members = derivedOf(input.members).map(({ derivation, reactions }) => ({
    ...reactions,
    title: derivation.title,
    level: derivation.where?.level,
    anchor: anchorOf(reactions.mark),
  }));
  // Levels in the order in which the sheets come to them; members without one come last.
  const levels = [...new Set(members.map(({ level }) => level))].sort(
    (one, other) => Number(one === undefined) - Number(other === undefined),
  );
  const hasLevels = levels.some((level) => level !== undefined);
  return {
    hasLevels,
    levels: levels.map((level) => ({
      level,
      members: members
        .filter((member) => member.level === level)
        .map((member) => ({ ...member, hasLevels })),
    })),
    closure: closureFacts(input),
  };
}
