import type { RangeResult } from '../../statics/index.ts';
import type { CaseContext } from '../case-context.ts';
import type { Section } from '../derivation.ts';
import { narrateArrangements, narrateStated } from './narrate-arrangements.ts';

/**
 * The sections of a case that has choices: the first says that they are worked as placed, and one
 * is added that works the other arrangements. Sections of a case without choices stay as they are.
 */
export function withArrangements(
  context: CaseContext,
  range: RangeResult | undefined,
  sections: readonly Section[],
): readonly Section[] {
  const { arranged, mark } = context;
  const hasChoices = (arranged.choices ?? []).some((choice) => choice.case === mark);
  const [first, ...rest] = sections;
  if (range === undefined || !hasChoices || first === undefined) return sections;
  return [
    { ...first, steps: [narrateStated(context), ...first.steps] },
    ...rest,
    {
      kind: 'arrangements',
      ...(first.case === undefined ? {} : { case: first.case }),
      steps: narrateArrangements(context),
    },
  ];
}
