import { exactly, figure, type Figure } from '../../equation/index.ts';
import {
  countIn,
  displayUnit,
  quantity,
  quantityText,
  type Display,
} from '../../units/index.ts';
import { placeName, type MarkingContext } from '../marking-context.ts';
import type { Atom } from '../matching/atoms.ts';

/** A value as a figure: with its own few digits where these say it exactly, else to four figures. */
export function asFigure(
  { system }: Pick<MarkingContext, 'system'>,
  what: Display,
  si: number,
): Figure {
  const unit = displayUnit(system, what);
  const count = countIn({ si, dimension: unit.dimension }, unit);
  const short = Number(count.toPrecision(4));
  if (Math.abs(count - short) <= 1e-9 * Math.abs(count)) return exactly(short, unit);
  return figure(quantity(count, unit), unit, { kind: 'figures', count: 4 });
}

/** The same as words, with a plain space before the unit. */
export function words(
  context: Pick<MarkingContext, 'system'>,
  what: Display,
  si: number,
): string {
  const { quantity: of, unit, print } = asFigure(context, what, si);
  return quantityText(of, unit, print).replaceAll('\u00a0', ' ');
}

/** The name of a place in words. */
export function placeWords(context: MarkingContext, x: number): string {
  return placeName(context, x, (si) => words(context, 'length', si));
}

/** What an atom is, in words: `the reaction at A`, `the load at B`, `the resultant of D from A to C`. */
export function atomWords(context: MarkingContext, atom: Atom): string {
  const { what, x } = atom;
  switch (what.kind) {
    case 'reaction':
      return atom.quantity === 'couple'
        ? `the moment of the support at ${what.point}`
        : `${componentWords(context, what)} at ${what.point}`;
    case 'cut':
      return `the ${what.force === 'axial' ? 'axial force' : what.force} at ${placeWords(context, x)}`;
    case 'load': {
      if (atom.quantity === 'couple')
        return `the couple of ${words(context, 'moment', atom.size)} at ${placeWords(context, x)}`;
      if (what.resultant === undefined)
        return `the load of ${words(context, 'force', atom.size)} at ${placeWords(context, x)}`;
      const { from, to } = what.resultant;
      const size = words(context, 'force', atom.size);
      return `the distributed load from ${placeWords(context, from)} to ${placeWords(context, to)} (${size})`;
    }
  }
}

function componentWords(
  { structure }: MarkingContext,
  { point, index }: { readonly point: string; readonly index: number },
): string {
  const restraint = structure.supports.find((one) => one.point === point)?.restraints[
    index
  ];
  if (restraint?.kind !== 'force') return 'the reaction';
  const [dx, dy] = restraint.direction;
  return dy === 0 && dx !== 0 ? 'the horizontal reaction' : 'the reaction';
}
