import {
  exactly,
  functionOf,
  integral,
  name,
  power,
  product,
  type Expression,
  type StatementLine,
  type Symbol,
  type Term,
} from '../../equation/index.ts';
import type { Stretch } from '../../statics/index.ts';
import {
  displayUnit,
  divideUnits,
  powerOfUnit,
  pureUnit,
  type Unit,
} from '../../units/index.ts';
import type { CaseContext } from '../case-context.ts';
import { figureIn } from '../narrators/segment-functions.ts';
import { tidy } from '../printing.ts';

/** The distance from the start of a stretch. */
export const localStation: Symbol = {
  letter: 's',
  meaning: 'distance from the start of a stretch',
};

/** A function of the distance from a stretch's start, as it is printed. */
export interface LocalFunction {
  readonly symbol: Symbol;
  /** Coefficients of powers of s, SI. */
  readonly coefficients: readonly number[];
  /** The unit of its values. */
  readonly unit: Unit;
}

/** Coefficients that are only rounding over a stretch of a length are 0; none for a function that is 0 throughout. */
export function settled(
  coefficients: readonly number[],
  length: number,
  size: number,
): readonly number[] {
  const kept = coefficients.map((c, power_) =>
    Math.abs(c) * length ** power_ <= 1e-12 * size ? 0 : c,
  );
  return kept.every((c) => c === 0) ? [] : kept;
}

/** The polynomial `12.00 kN s − 3.000 kN/m s²`. */
export function polynomialOf(
  { printing }: CaseContext,
  { coefficients, unit }: Omit<LocalFunction, 'symbol'>,
): Expression {
  const length = displayUnit(printing.system, 'length');
  const terms = coefficients.flatMap((coefficient, degree): readonly Term[] => {
    if (coefficient === 0) return [];
    const figure = figureIn(
      printing.figures,
      degree === 0 ? unit : divideUnits(unit, powerOfUnit(length, degree)),
      Math.abs(coefficient),
    );
    const s = name(localStation);
    const isOne = figure.unit.factors.length === 0 && Math.abs(coefficient) === 1;
    const reach = degree === 1 ? s : power(s, degree);
    const of = degree === 0 ? figure : isOne ? reach : product(figure, reach);
    return [{ sign: coefficient < 0 ? -1 : 1, of }];
  });
  if (terms.length === 0) return exactly(0, unit);
  const [only] = terms;
  return terms.length === 1 && only?.sign === 1 ? only.of : { kind: 'sum', terms };
}

/** `M_0(s) = …` */
export function functionLine(context: CaseContext, of: LocalFunction): StatementLine {
  return {
    left: functionOf(of.symbol, name(localStation)),
    chain: [{ sign: '=', of: polynomialOf(context, of) }],
    recheck: 'none',
  };
}

/** `∫₀^{4 m} (…) (…) ds` over a stretch, times a bare ratio where there is one. */
export function integralOver(
  context: CaseContext,
  stretch: Pick<Stretch, 'from' | 'to'>,
  functions: readonly Expression[],
): Expression {
  return integral(product(...functions), {
    variable: localStation,
    from: exactly(0, pureUnit),
    to: tidy(context.printing, 'length', stretch.to - stretch.from),
  });
}
