import {
  functionOf,
  name,
  type Expression,
  type Symbol,
} from '../../equation/index.ts';
import { spansOf } from '../../project/index.ts';
import {
  extremesOf,
  sizeOf,
  valueAt,
  type BeamResult,
  type Piecewise,
  type RangeResult,
  type Side,
} from '../../statics/index.ts';
import type { MemberContext } from '../case-context.ts';
import { placeAtStation } from '../narrators/places.ts';
import { componentEnds, componentsOf } from '../narrators/reaction-components.ts';
import type { QuantityHead } from '../steps/range-steps.ts';
import { momentSymbol, shearSymbol } from '../symbols.ts';

type Sense = 'max' | 'min';

/** A quantity of one place of which greatest and least are sought: linear in the loads, so that arrangements add up. */
export interface Quantity {
  readonly group: 'moments' | 'shears' | 'reactions';
  readonly head: QuantityHead;
  /** The left side of the sum that finds its greatest or its least. */
  readonly left: (sense: Sense) => Expression;
  readonly read: (result: BeamResult) => number;
  /** What the range says. */
  readonly ends: Readonly<Record<Sense, number>>;
}

/** More choices than this make tables that nobody reads: then only what governs, and the reactions, are told. */
export const mostChoicesInFull = 8;

/**
 * The quantities that design asks for: moments at supports and where each span has its greatest,
 * shears on both sides of supports, reactions, and the places of the extremes where they are others.
 */
export function quantitiesOf(
  context: MemberContext,
  range: RangeResult,
  isFull: boolean,
): readonly Quantity[] {
  const { shear, moment } = range.extremes;
  const governing = {
    moment: [moment.max.x, moment.min.x],
    shear: [shear.max.x, shear.min.x],
  };
  const at = {
    moment: isFull
      ? [...momentStations(context, range), ...governing.moment]
      : governing.moment,
    shear: isFull ? [...supportStations(context), ...governing.shear] : governing.shear,
  };
  return [
    ...internal(context, range, 'moment', at.moment),
    ...internal(context, range, 'shear', at.shear),
    ...reactions(context, range),
  ];
}

function supportStations({ structure }: MemberContext): readonly number[] {
  return structure.supports.map(({ x }) => x);
}

/** The supports, and in every span the place of the greatest moment that any arrangement gives it. */
function momentStations(
  context: MemberContext,
  { moment }: RangeResult,
): readonly number[] {
  const inSpans = spansOf(context.structure).flatMap(({ from, to }) => {
    const within = part(moment.max, from, to);
    if (within.pieces.length === 0) return [];
    const { value, x } = extremesOf(within).max;
    return value > 0 ? [x] : [];
  });
  return [...supportStations(context), ...inSpans];
}

function part({ pieces }: Piecewise, from: number, to: number): Piecewise {
  return {
    pieces: pieces.filter(({ start, end }) => {
      const middle = (start + end) / 2;
      return middle > from && middle < to;
    }),
  };
}

function internal(
  context: MemberContext,
  range: RangeResult,
  what: 'moment' | 'shear',
  stations: readonly number[],
): readonly Quantity[] {
  const { max, min } = range[what];
  const size = Math.max(sizeOf(max), sizeOf(min));
  const isZero = (si: number): boolean => Math.abs(si) <= 1e-9 * size;
  return distinct(context, stations).flatMap((x) => {
    const all = sidesAt(context, range[what], { x, size }).map((side): Quantity => {
      const place = placeAtStation(context, x);
      const isOneSided = side !== 'both';
      const read = (f: Piecewise): number => valueAt(f, x, isOneSided ? side : 'left');
      return {
        group: what === 'moment' ? 'moments' : 'shears',
        head: {
          symbol: what === 'moment' ? momentSymbol : shearSymbol,
          place,
          ...(isOneSided ? { side } : {}),
        },
        left: (sense) => functionOf(endSymbol(what, sense, side), place.station),
        read: (result) => read(result[what]),
        ends: { max: read(max), min: read(min) },
      };
    });
    // What no arrangement changes from 0 need not be told.
    return all.filter(({ ends }) => !isZero(ends.max) || !isZero(ends.min));
  });
}

function distinct(
  { structure }: MemberContext,
  stations: readonly number[],
): readonly number[] {
  const length = (structure.points.at(-1)?.x ?? 0) - (structure.points[0]?.x ?? 0);
  return stations
    .toSorted((a, b) => a - b)
    .filter(
      (x, index, all) => index === 0 || x - (all[index - 1] ?? x) > 1e-9 * length,
    );
}

/** The sides on which a station is told: the inner one at an end, both where either curve leaps there, else one value for both. */
function sidesAt(
  { structure }: MemberContext,
  { max, min }: RangeResult['shear'],
  { x, size }: { readonly x: number; readonly size: number },
): readonly (Side | 'both')[] {
  if (x === structure.points[0]?.x || x === structure.points.at(-1)?.x) return ['both'];
  const leaps = [max, min].some(
    (f) => Math.abs(valueAt(f, x, 'left') - valueAt(f, x, 'right')) > 1e-9 * size,
  );
  return leaps ? ['left', 'right'] : ['both'];
}

function endSymbol(
  what: 'moment' | 'shear',
  sense: Sense,
  side: Side | 'both',
): Symbol {
  const base = what === 'moment' ? momentSymbol : shearSymbol;
  const word = sense === 'max' ? 'greatest' : 'least';
  return {
    ...base,
    subscript: side === 'both' ? sense : `${sense}, ${side}`,
    meaning: `${word} ${base.meaning}${side === 'both' ? '' : `, just ${side} of a station`}`,
  };
}

function reactions(context: MemberContext, range: RangeResult): readonly Quantity[] {
  return componentsOf(context).flatMap((component): readonly Quantity[] => {
    const ends = componentEnds(range, component);
    if (ends.max === 0 && ends.min === 0) return [];
    const { symbol } = component;
    return [
      {
        group: 'reactions',
        head: { symbol },
        left: (sense) =>
          name({
            ...symbol,
            subscript: `${symbol.subscript ?? ''}, ${sense}`,
            meaning: `${sense === 'max' ? 'greatest' : 'least'} ${symbol.meaning}`,
          }),
        read: (result) => componentEnds(result, component).max,
        ends,
      },
    ];
  });
}

/** In what a quantity is printed. */
export function displayOf({ group, head }: Quantity): 'force' | 'moment' {
  if (group !== 'reactions') return group === 'moments' ? 'moment' : 'force';
  return head.symbol.letter === 'M' ? 'moment' : 'force';
}
