import type { Arrangement, Determinacy, RangeResult } from '../../statics/index.ts';
import { arrangementText } from '../arrangements/choice-names.ts';
import type { MemberContext } from '../case-context.ts';
import { numberText, valueText } from '../printing.ts';
import type { CautionStep } from '../steps.ts';
import type { Entry } from './governing.ts';

/** Cautions that matter to one member, found in its numbers. */
export function narrateCautions(
  context: MemberContext,
  determinacy: Determinacy,
  judged: readonly Entry[],
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
  judged: readonly Entry[],
): readonly CautionStep[] {
  return context.definition.supports.flatMap(
    ({ point, type }): readonly CautionStep[] => {
      if (type === 'fixed' || type === 'guide') return [];
      const pulls = judged
        .map((entry) => ({
          mark: entry.result.mark,
          ...pullAt(context, entry, point),
        }))
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
            ...(worst.arrangement === undefined
              ? {}
              : {
                  arrangement: arrangementText(context.choiceNames, worst.arrangement),
                }),
          },
        },
      ];
    },
  );
}

/** The least reaction along the support's own normal (up for level supports): negative where it has to pull. */
function pullAt(
  { structure }: MemberContext,
  { result, range }: Entry,
  point: string,
): { readonly si: number; readonly arrangement?: Arrangement } {
  const isHere = (one: { readonly point: string }): boolean => one.point === point;
  const support = structure.supports.find(isHere);
  const index =
    support?.restraints.findIndex((r) => r.kind === 'force' && r.direction[1] !== 0) ??
    -1;
  const restraint = support?.restraints[index];
  if (restraint?.kind !== 'force') return { si: 0 };
  const [, rise] = restraint.direction;
  // A pin taken as two components pulls where its upward one is negative.
  if (range === undefined) {
    const component = result.reactions.find(isHere)?.components[index] ?? 0;
    return { si: rise < 0 ? -component : component };
  }
  return leastAlong(range, point, rise);
}

/** The same of an entry without a single state: only this component of the support acts along y, so y tells it. */
function leastAlong(
  { reactions }: RangeResult,
  point: string,
  rise: number,
): { readonly si: number; readonly arrangement?: Arrangement } {
  const least = reactions.find((one) => one.point === point)?.y?.min;
  return least === undefined
    ? { si: 0 }
    : { si: least.value / Math.abs(rise), arrangement: least.arrangement };
}
