import { name, product, type Symbol } from '../../equation/index.ts';
import type { FreeCurvature } from '../../statics/index.ts';
import type { CaseContext } from '../case-context.ts';
import { value } from '../printing.ts';
import { termOf, type BendingTerm, type Worked } from './bending.ts';
import { rigiditySymbols } from './stiffness-symbols.ts';

/** The free curvatures of a case, numbered from 1 in the order of the file. */
export function curvaturesOf({
  structure,
  mark,
}: Pick<CaseContext, 'structure' | 'mark'>): readonly (FreeCurvature & {
  readonly number: number;
})[] {
  return (structure.curvatures ?? [])
    .map((free, index) => ({ ...free, number: index + 1 }))
    .filter((free) => free.case === mark && free.curvature !== 0);
}

/** The letter of a free curvature. */
export function curvatureSymbol(number: number): Symbol {
  return {
    letter: 'κ',
    subscript: String(number),
    meaning: `curvature that temperature difference ${number} gives a free member`,
  };
}

/** A free curvature over a stretch as a moment E I κ that begins at its start and is taken away at its end. */
export function curvatureTerms(
  context: CaseContext,
  worked: Worked,
  EI: number,
): readonly BendingTerm[] {
  return curvaturesOf(context).flatMap(({ from, to, curvature, number }) => {
    const [start, end] = [Math.max(from, worked.from), Math.min(to, worked.to)];
    if (end <= start) return [];
    const size = EI * curvature;
    const of = {
      symbolic: product(
        ...rigiditySymbols(context, worked.from).map(name),
        name(curvatureSymbol(number)),
      ),
      numeric: value(context.printing, 'moment', Math.abs(size)),
      size,
    };
    return [
      termOf({ at: start, order: 0, sense: 1 }, of),
      ...(end < worked.to ? [termOf({ at: end, order: 0, sense: -1 }, of)] : []),
    ];
  });
}
