import {
  functionOf,
  name,
  power,
  product,
  type Expression,
  type Figure,
  type StatementLine,
  type Symbol,
  type Term,
} from '../../equation/index.ts';
import type { Segment, SegmentFunction } from '../../statics/index.ts';
import {
  displayUnit,
  divideUnits,
  powerOfUnit,
  quantity,
  type Unit,
} from '../../units/index.ts';
import type { CaseContext } from '../case-context.ts';
import { tidy, value } from '../printing.ts';
import { axialSymbol, momentSymbol, shearSymbol, stationSymbol } from '../symbols.ts';

/** The letters of the internal forces. */
export const symbolOf: Readonly<Record<'shear' | 'moment' | 'axial', Symbol>> = {
  shear: shearSymbol,
  moment: momentSymbol,
  axial: axialSymbol,
};

/**
 * `V(x) = 6.00 kip − 0.25 kip/ft (x − 6 ft)`: powers of the distance from the segment's start, so
 * that every coefficient is a value that the table shows or an intensity of the loads.
 */
export function functionLine(
  context: CaseContext,
  segment: Segment,
  of: SegmentFunction,
  what: 'shear' | 'moment' | 'axial',
): StatementLine {
  const { printing } = context;
  const base = what === 'moment' ? 'moment' : 'force';
  const scale = Math.max(
    Math.abs(of.start),
    Math.abs(of.end),
    ...of.local.map((c, i) => Math.abs(c) * (segment.to - segment.from) ** i),
  );
  const terms = of.local.flatMap((coefficient, degree): readonly Term[] => {
    if (Math.abs(coefficient) * (segment.to - segment.from) ** degree <= 1e-12 * scale)
      return [];
    const unit = unitOfDegree(printing.system, base, degree);
    const figure = figureIn(printing.figures, unit, Math.abs(coefficient));
    const of_: Expression =
      degree === 0
        ? figure
        : product(figure, powerOf(distanceFrom(context, segment.from), degree));
    return [{ sign: coefficient < 0 ? -1 : 1, of: of_ }];
  });
  const right: Expression =
    terms.length === 0 ? value(printing, base, 0) : plain({ kind: 'sum', terms });
  return {
    left: functionOf(symbolOf[what], name(stationSymbol)),
    chain: [{ sign: '=', of: right }],
    recheck: 'none',
  };
}

function plain(of: Expression): Expression {
  if (of.kind !== 'sum') return of;
  const [only] = of.terms;
  return of.terms.length === 1 && only?.sign === 1 ? only.of : of;
}

function powerOf(of: Expression, degree: number): Expression {
  return degree === 1 ? of : power(of, degree);
}

function distanceFrom({ printing }: CaseContext, start: number): Expression {
  if (start === 0) return name(stationSymbol);
  const figure = tidy(printing, 'length', Math.abs(start));
  return {
    kind: 'sum',
    terms: [
      { sign: 1, of: name(stationSymbol) },
      { sign: start > 0 ? -1 : 1, of: figure },
    ],
  };
}

/** The unit of a coefficient of a function of x: kip, kip/ft, kip/ft² … */
export function unitOfDegree(
  system: 'us' | 'si',
  base: 'moment' | 'force',
  degree: number,
): Unit {
  // A moment per length is a force: its coefficients count in kip, kip/ft, kip/ft².
  const force = displayUnit(system, 'force');
  const length = displayUnit(system, 'length');
  if (base === 'moment' && degree === 0) return displayUnit(system, 'moment');
  const steps = base === 'moment' ? degree - 1 : degree;
  return steps === 0 ? force : divideUnits(force, powerOfUnit(length, steps));
}

/** A value printed to so many figures in a unit. */
export function figureIn(figures: number, unit: Unit, si: number): Figure {
  const of = quantity(si / unit.inSi, unit);
  return {
    kind: 'figure',
    quantity: of,
    unit,
    print: { kind: 'figures', count: figures },
  };
}
