import type { Figure, Symbol } from '../equation/index.ts';
import type { BeamLoad } from '../project/index.ts';
import type { GivenQuantity } from '../units/index.ts';
import type { Load, SumTerm } from '../statics/index.ts';
import type { CaseContext, MemberContext } from './case-context.ts';
import { inProjectUnit, tidy, value } from './printing.ts';

/** True where a direction runs along x or along y. */
export function isAlongAxis([dx, dy]: readonly [number, number]): boolean {
  return dx === 0 || dy === 0;
}

/** The symbol of a component: `P` with `2x`. */
export function componentSymbol(of: Symbol, axis: 'x' | 'y'): Symbol {
  return {
    ...of,
    subscript: `${of.subscript ?? ''}${axis}`,
    meaning: `${axis === 'x' ? 'horizontal' : 'vertical'} part of ${of.meaning}`,
  };
}

/** The size of a load as the sums print it: as given where the file gives just this in the project's unit. */
export function forceFigure(context: CaseContext, load: Load, term: SumTerm): Figure {
  const size = term.magnitude ?? 0;
  if (load.kind === 'distributed') return value(context.printing, 'force', size);
  return sizeFigure(
    context,
    load.id,
    load.kind === 'couple' ? 'moment' : 'force',
    size,
  );
}

/** A size of a load in the project's unit, printed as given where it equals what the file gives. */
export function sizeFigure(
  { printing, defined }: MemberContext,
  id: string,
  what: 'force' | 'moment' | 'force-per-length',
  si: number,
): Figure {
  const given = givenSizes(defined.get(id)).find((candidate) =>
    isSame(candidate.si, si),
  );
  if (given !== undefined) return inProjectUnit(printing, what, given);
  return defined.has(id) ? tidy(printing, what, si) : value(printing, what, si);
}

/** True where the program has worked out the size that stands for given: an area load, a weight from area and density. */
export function isWorkedOut({ from }: BeamLoad): boolean {
  return (
    from !== undefined && (from.kind === 'area' || from.how === 'area-times-density')
  );
}

function isSame(a: number, b: number): boolean {
  return Math.abs(a - b) <= 1e-12 * Math.abs(b);
}

/** What the file itself gives; a load worked out of an area or a weight has no size of its own there. */
function givenSizes(load: BeamLoad | undefined): readonly GivenQuantity[] {
  if (load === undefined || isWorkedOut(load)) return [];
  return load.kind === 'distributed' ? load.sizes : [load.size];
}
