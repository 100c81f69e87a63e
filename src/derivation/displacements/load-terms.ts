import {
  functionOf,
  minus,
  name,
  quotient,
  sum,
  type Expression,
  type Statement,
  type Symbol,
} from '../../equation/index.ts';
import type { Load } from '../../statics/index.ts';
import type { CaseContext } from '../case-context.ts';
import { componentSymbol, sizeFigure } from '../load-figures.ts';
import { tidy, value } from '../printing.ts';
import { coefficientUnit } from './bending-units.ts';
import { termOf, type BendingTerm, type Worked } from './bending.ts';
import { tidyIn } from './exact-figure.ts';
import { factorAt, factored } from './stretch-factor.ts';

/** What terms of loads need to know of the stretch that is worked. */
interface Setting extends Worked {
  readonly EI: number;
  /** Whether the stretch begins where the member does: else what acts at its start is in the shear there. */
  readonly isStart: boolean;
}

type Distributed = Extract<Load, { kind: 'distributed' }>;

/** What a load adds to E I v″ over a stretch, its part along the member aside. */
export function loadTerms(
  context: CaseContext,
  load: Load,
  setting: Setting,
): readonly BendingTerm[] {
  if (load.kind === 'distributed') return spreadTerms(context, load, setting);
  const { from, to, EI, isStart } = setting;
  if (load.x >= to || load.x < from || (load.x === from && !isStart)) return [];
  const factor = factorAt(context, load.x, EI);
  const symbol = context.symbols.load(load.id);
  if (load.kind === 'couple') {
    const numeric = sizeFigure(context, load.id, 'moment', Math.abs(load.m));
    const sense = load.m > 0 ? -1 : 1;
    const of = { symbolic: name(symbol), numeric, size: Math.abs(load.m) };
    return [termOf({ at: load.x, order: 0, sense }, factored(factor, of))];
  }
  const size = Math.abs(load.fy);
  const of = {
    symbolic: name(load.fx === 0 ? symbol : componentSymbol(symbol, 'y')),
    numeric:
      load.fx === 0
        ? sizeFigure(context, load.id, 'force', size)
        : value(context.printing, 'force', size),
    size,
  };
  const sense = load.fy > 0 ? 1 : -1;
  return [termOf({ at: load.x, order: 1, sense }, factored(factor, of))];
}

/** A spread load as a straight line across the member, positive the way its greater end points. */
interface Line {
  readonly sense: 1 | -1;
  readonly from: number;
  readonly to: number;
  readonly at: (x: number) => number;
  /** Change of intensity per length, N/m². */
  readonly rate: number;
}

/** The part of a spread load within a stretch; undefined where it has none. */
function lineOf({ from, to, y1, y2 }: Distributed, worked: Worked): Line | undefined {
  const [start, end] = [Math.max(from, worked.from), Math.min(to, worked.to)];
  if (end <= start || (y1 === 0 && y2 === 0)) return undefined;
  const sense = (Math.abs(y1) >= Math.abs(y2) ? y1 : y2) > 0 ? 1 : -1;
  const rate = (sense * (y2 - y1)) / (to - from);
  return {
    sense,
    from: start,
    to: end,
    // The given values themselves at the given ends, so that a nothing there is exactly nothing.
    at: (x) =>
      x === to ? sense * y2 : x === from ? sense * y1 : sense * y1 + rate * (x - from),
    rate,
  };
}

function spreadTerms(
  context: CaseContext,
  load: Distributed,
  setting: Setting,
): readonly BendingTerm[] {
  const line = lineOf(load, setting);
  if (line === undefined) return [];
  const ends = [
    { x: line.from, sense: line.sense },
    ...(line.to < setting.to ? [{ x: line.to, sense: -line.sense as 1 | -1 }] : []),
  ];
  return ends.flatMap(({ x, sense }) => {
    const factor = factorAt(context, x, setting.EI);
    const intensity = factored(factor, {
      symbolic: intensityName(context, load, { x, isVarying: line.rate !== 0 }),
      numeric: intensityFigure(context, load, line.at(x)),
      size: line.at(x),
    });
    const rate = factored(factor, {
      symbolic: name(rateSymbol(context, load.id)),
      numeric: tidyIn(
        context.printing,
        coefficientUnit(context.printing, 3),
        Math.abs(line.rate),
      ),
      size: line.rate,
    });
    return [
      termOf({ at: x, order: 2, sense }, intensity),
      termOf({ at: x, order: 3, sense }, rate),
    ];
  });
}

function intensityName(
  { symbols, printing }: CaseContext,
  load: Distributed,
  { x, isVarying }: { readonly x: number; readonly isVarying: boolean },
): Expression {
  const whole = symbols.intensity(load.id);
  const symbol = load.x1 === 0 && load.x2 === 0 ? whole : componentSymbol(whole, 'y');
  return isVarying ? functionOf(symbol, tidy(printing, 'length', x)) : name(symbol);
}

function intensityFigure(
  context: CaseContext,
  load: Distributed,
  size: number,
): Expression {
  return load.x1 === 0 && load.x2 === 0
    ? sizeFigure(context, load.id, 'force-per-length', Math.abs(size))
    : value(context.printing, 'force-per-length', Math.abs(size));
}

function rateSymbol({ symbols }: CaseContext, id: string): Symbol {
  const number = String(symbols.numberOf(id));
  return {
    letter: 'k',
    subscript: number,
    meaning: `change of intensity of distributed load ${number} per length`,
  };
}

/** `k_1 = (0.6 kip/ft − 0 kip/ft)/(6 ft) = 0.1 kip/ft²`; nothing for a load that is uniform or not there. */
export function rateOf(
  context: CaseContext,
  load: Load,
  worked: Worked,
): readonly Statement[] {
  if (load.kind !== 'distributed') return [];
  const line = lineOf(load, worked);
  if (line === undefined || line.rate === 0) return [];
  const { printing } = context;
  const [first, last] = [load.y1 * line.sense, load.y2 * line.sense];
  const signed = (size: number): Expression =>
    size < 0
      ? sum(minus(intensityFigure(context, load, size)))
      : intensityFigure(context, load, size);
  const change =
    first === 0
      ? signed(last)
      : sum(signed(last), {
          sign: first > 0 ? -1 : 1,
          of: intensityFigure(context, load, first),
        });
  const found = tidyIn(printing, coefficientUnit(printing, 3), line.rate);
  return [
    {
      lines: [
        {
          left: name(rateSymbol(context, load.id)),
          chain: [
            {
              sign: '=',
              of: quotient(change, tidy(printing, 'length', load.to - load.from)),
            },
            { sign: '=', of: found },
          ],
        },
      ],
    },
  ];
}
