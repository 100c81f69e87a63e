import {
  product,
  quotient,
  type Expression,
  type Figure,
} from '../../equation/index.ts';
import type { ForceMethod, SupportShare } from '../../statics/index.ts';
import { displayUnit, divideUnits } from '../../units/index.ts';
import type { CaseContext } from '../case-context.ts';
import { figureIn } from '../narrators/segment-functions.ts';
import { tidy, value } from '../printing.ts';
import { unitOfRedundant } from './narrate-released.ts';
import { perUnitFigure } from './per-unit.ts';
import { rigidityFigure } from './rigidity.ts';

/** `E I r R / k` of a spring, `E I r s` of a foot that moves. */
export function supportProduct(
  context: CaseContext,
  work: ForceMethod,
  of: { readonly share: SupportShare; readonly j: number; readonly k: number },
): Expression {
  const { share, j, k } = of;
  const { printing } = context;
  const what = share.restraint.kind === 'moment' ? 'moment' : 'force';
  const inState = (state: number, si: number): Figure => {
    const release = work.releases[state - 1];
    const figure = value(printing, what, si);
    return release === undefined
      ? figure
      : perUnitFigure(figure, unitOfRedundant(context, release));
  };
  const EI = rigidityFigure(context, work.EI);
  const unit = inState(j, share.unit);
  if (share.moved !== undefined)
    return product(EI, unit, footFigure(context, share.moved, what));
  return quotient(
    product(EI, unit, inState(k, share.force ?? 0)),
    stiffnessFigure(context, share.restraint.stiffness ?? 0, what),
  );
}

/** The movement of a foot: a length, or a turn. */
export function footFigure(
  { printing }: CaseContext,
  si: number,
  what: 'force' | 'moment',
): Figure {
  return what === 'force' ? tidy(printing, 'length', si) : value(printing, 'angle', si);
}

/** The stiffness of a spring in the units of the sums: force over length, or a moment a radian. */
export function stiffnessFigure(
  { printing }: CaseContext,
  si: number,
  what: 'force' | 'moment',
): Figure {
  const { system } = printing;
  const unit =
    what === 'force'
      ? divideUnits(displayUnit(system, 'force'), displayUnit(system, 'length'))
      : displayUnit(system, 'rotational-stiffness');
  return figureIn(printing.figures, unit, si);
}
