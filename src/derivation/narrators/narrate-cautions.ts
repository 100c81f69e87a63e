import type { BeamResult, Determinacy } from '../../statics/index.ts';
import type { MemberContext } from '../case-context.ts';
import { numberText, valueText } from '../printing.ts';
import type { CautionStep } from '../steps.ts';

/** Cautions that matter to one member, found in its numbers. */
export function narrateCautions(
  context: MemberContext,
  determinacy: Determinacy,
  judged: readonly BeamResult[],
): readonly CautionStep[] {
  const given = context.definition.cautions.map((text): CautionStep => ({
    kind: 'caution',
    caution: 'given',
    facts: { text },
  }));
  const nearly: readonly CautionStep[] = determinacy.nearlyUnstable
    ? [
        {
          kind: 'caution',
          caution: 'nearly-unstable',
          facts: { condition: numberText(determinacy.condition, 2) },
        },
      ]
    : [];
  const axial: readonly CautionStep[] = determinacy.axialOnly
    ? [{ kind: 'caution', caution: 'axial-shared', facts: {} }]
    : [];
  return [...given, ...nearly, ...axial, ...uplift(context, judged)];
}

/** Supports hold both ways; one that has to pull is named, with the entry that asks most of it. */
function uplift(
  context: MemberContext,
  judged: readonly BeamResult[],
): readonly CautionStep[] {
  return context.definition.supports.flatMap(
    ({ point, type }): readonly CautionStep[] => {
      if (type === 'fixed' || type === 'guide') return [];
      const pulls = judged
        .map((result) => ({ mark: result.mark, si: pullAt(context, result, point) }))
        .filter(({ si }) => si < 0);
      const [worst] = [...pulls].sort((a, b) => a.si - b.si);
      if (worst === undefined) return [];
      return [
        {
          kind: 'caution',
          caution: 'uplift',
          facts: {
            point,
            entry: worst.mark,
            size: valueText(context.printing, 'force', -worst.si),
          },
        },
      ];
    },
  );
}

/** The reaction along the support's own normal (up for level supports): negative where it has to pull. */
function pullAt(
  { structure }: MemberContext,
  result: BeamResult,
  point: string,
): number {
  const support = structure.supports.find((candidate) => candidate.point === point);
  const reaction = result.reactions.find((candidate) => candidate.point === point);
  const index =
    support?.restraints.findIndex((r) => r.kind === 'force' && r.direction[1] !== 0) ??
    -1;
  const restraint = support?.restraints[index];
  const component = reaction?.components[index] ?? 0;
  if (restraint?.kind !== 'force') return 0;
  // A pin taken as two components pulls where its upward one is negative.
  return restraint.direction[1] < 0 ? -component : component;
}
