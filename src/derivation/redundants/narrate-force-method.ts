import { name, product, sum, type Statement, type Term } from '../../equation/index.ts';
import {
  forceMethod,
  unknownsOf,
  valueOfUnknown,
  type ForceMethod,
  type Unknown,
} from '../../statics/index.ts';
import type { CaseContext } from '../case-context.ts';
import { isCouple } from '../narrators/narrate-sum.ts';
import { reactionsFound } from '../narrators/reactions-found.ts';
import { value } from '../printing.ts';
import type { Step } from '../steps.ts';
import { narrateCompatibility } from './narrate-compatibility.ts';
import { narrateMovements } from './narrate-movements.ts';
import { narrateReleased, unitOfRedundant } from './narrate-released.ts';
import { perUnitFigure } from './per-unit.ts';
import { inReleased, stateSymbol } from './released-contexts.ts';
import { narrateRigidity } from './rigidity.ts';

/**
 * The force method for one case: what is released, its reactions under the loads and under each
 * redundant of size 1, the movements at the releases by virtual work, compatibility, superposition.
 */
export function narrateForceMethod(context: CaseContext): readonly Step[] {
  const work = forceMethod(context.structure, context.mark);
  return [
    ...narrateReleased(context, work),
    narrateRigidity(context),
    ...narrateMovements(context, work),
    ...narrateCompatibility(context, work),
    {
      kind: 'superposition',
      statements: unknownsOf(context.structure).flatMap((unknown) =>
        superposed(context, work, unknown),
      ),
    },
    reactionsFound(context),
  ];
}

/** `R_A = R_A,0 + R_A,1 R_B`, with numbers, and the value; nothing for a redundant itself, or where no state has any. */
function superposed(
  context: CaseContext,
  work: ForceMethod,
  unknown: Unknown,
): readonly Statement[] {
  if (unknown.kind !== 'reaction') return [];
  const place = inReleased(work, unknown);
  if (place === undefined) return [];
  const what = isCouple(context, unknown) ? 'moment' : 'force';
  const base = valueOfUnknown(work.base, place);
  const units = work.releases.flatMap((release, index) => {
    const result = work.units[index];
    const si = result === undefined ? 0 : valueOfUnknown(result, place);
    return si === 0 ? [] : [{ release, si, state: index + 1 }];
  });
  if (base === 0 && units.length === 0) return [];
  const { printing } = context;
  const symbols: Term[] = [];
  const numbers: Term[] = [];
  if (base !== 0) {
    symbols.push({ sign: 1, of: name(stateSymbol(work.released, place, 0)) });
    numbers.push({ sign: 1, of: value(printing, what, base) });
  }
  for (const { release, si, state } of units) {
    const redundant = context.symbols.unknown(release.unknown);
    const worth = valueOfUnknown(context.result, release.unknown);
    symbols.push({
      sign: 1,
      of: product(name(stateSymbol(work.released, place, state)), name(redundant)),
    });
    numbers.push({
      sign: 1,
      of: product(
        perUnitFigure(value(printing, what, si), unitOfRedundant(context, release)),
        value(printing, release.restraint.kind, worth),
      ),
    });
  }
  const found = value(printing, what, valueOfUnknown(context.result, unknown));
  return [
    {
      lines: [
        {
          left: name(context.symbols.unknown(unknown)),
          chain: [{ sign: '=', of: sum(...symbols) }],
          recheck: 'none',
        },
        { chain: [{ sign: '=', of: sum(...numbers) }] },
        { chain: [{ sign: '=', of: found }], boxed: true },
      ],
    },
  ];
}
