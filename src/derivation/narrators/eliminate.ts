import {
  figure,
  name,
  product,
  quotient,
  sum,
  type Expression,
  type Statement,
  type Term,
} from '../../equation/index.ts';
import type { Unknown } from '../../statics/index.ts';
import {
  displayUnit,
  divideUnits,
  pureUnit,
  quantity,
  type Unit,
} from '../../units/index.ts';
import type { CaseContext } from '../case-context.ts';
import {
  factorFigure,
  gathered,
  knownSide,
  signedFactor,
  valueOf,
  type Row,
  type Elimination,
} from './coupled-rows.ts';
import { bareZero } from './narrate-sum.ts';

/** Gauss: each pivot row clears its unknown from the rows below; then back from the last. */
export function eliminate(
  context: CaseContext,
  unknowns: readonly Unknown[],
  given: readonly Row[],
): Elimination {
  const steps: Elimination[number][] = [];
  const rows = [...given];
  for (let pivot = 0; pivot < rows.length; pivot += 1) {
    bringUp(rows, pivot);
    const above = rows[pivot];
    const head = above?.factors[pivot] ?? 0;
    if (above === undefined || head === 0)
      throw new RangeError('the sums are not independent');
    for (let below = pivot + 1; below < rows.length; below += 1) {
      const row = rows[below];
      const factor = (row?.factors[pivot] ?? 0) / head;
      if (row === undefined || factor === 0) continue;
      const cleared: Row = {
        factors: row.factors.map((f, i) =>
          i <= pivot ? 0 : less(f, factor * (above.factors[i] ?? 0)),
        ),
        known: less(row.known, factor * above.known),
        isMoments: row.isMoments,
        number: row.number,
      };
      rows[below] = cleared;
      steps.push({
        what: 'eliminate',
        symbol: symbolAt(context, unknowns, pivot),
        pivot: above.number,
        row: row.number,
        ...multiplier(context, { from: row, by: above }, Math.abs(factor)),
        isAdded: factor < 0,
        statement: gathered(context, unknowns, cleared),
      });
    }
  }
  return [...steps, ...backSubstitute(context, unknowns, rows)];
}

/** A difference; what is left of two equal numbers by rounding alone is 0. */
function less(a: number, b: number): number {
  return Math.abs(a - b) <= 1e-12 * (Math.abs(a) + Math.abs(b)) ? 0 : a - b;
}

/** Brings the row with the greatest factor of the pivot's unknown, beside its other factors, to the pivot's place. */
function bringUp(rows: Row[], pivot: number): void {
  const weight = (row: Row): number =>
    Math.abs(row.factors[pivot] ?? 0) /
    Math.max(...row.factors.map(Math.abs), Number.MIN_VALUE);
  const rest = rows.splice(pivot);
  const best = rest.reduce((a, b) => (weight(b) > weight(a) + 1e-12 ? b : a));
  rows.push(best, ...rest.filter((row) => row !== best));
}

function symbolAt(
  context: CaseContext,
  unknowns: readonly Unknown[],
  index: number,
): ReturnType<CaseContext['symbols']['unknown']> {
  const unknown = unknowns[index];
  if (unknown === undefined) throw new RangeError('no such unknown');
  return context.symbols.unknown(unknown);
}

/** What a row is multiplied by: a pure number between sums of one kind, a length or its inverse between moments and forces; nothing where it is 1. */
function multiplier(
  { printing }: CaseContext,
  rows: { readonly from: Row; readonly by: Row },
  factor: number,
): Pick<Elimination[number], 'times'> {
  const length = displayUnit(printing.system, 'length');
  const { from, by } = rows;
  const isOneKind = from.isMoments === by.isMoments;
  if (isOneKind && Math.abs(factor - 1) < 1e-12) return {};
  const unit: Unit = isOneKind
    ? pureUnit
    : from.isMoments
      ? length
      : divideUnits(pureUnit, length);
  const times = figure(quantity(factor / unit.inSi, unit), unit, {
    kind: 'figures',
    count: printing.figures,
  });
  return { times };
}

function backSubstitute(
  context: CaseContext,
  unknowns: readonly Unknown[],
  rows: readonly Row[],
): Elimination {
  return rows
    .map((row, index): Elimination[number] => {
      const symbol = symbolAt(context, unknowns, index);
      const head = row.factors[index] ?? 0;
      const others = row.factors.flatMap((factor, other): readonly Term[] => {
        const unknown = unknowns[other];
        if (other <= index || factor === 0 || unknown === undefined) return [];
        const of: Expression = product(
          factorFigure(context, { row, unknown }, Math.abs(factor)),
          valueOf(context, unknown),
        );
        return [{ sign: factor < 0 ? 1 : -1, of }];
      });
      const over =
        row.known === 0 && others.length > 0
          ? sum(...others)
          : sum(knownSide(context, row), ...others);
      const target = unknowns[index];
      const found = target === undefined ? bareZero : valueOf(context, target);
      const isIdle = row.known === 0 && others.length === 0;
      const statement: Statement =
        isIdle || target === undefined
          ? {
              lines: [
                { left: name(symbol), chain: [{ sign: '=', of: found }], boxed: true },
              ],
            }
          : {
              lines: [
                {
                  left: name(symbol),
                  chain: [
                    {
                      sign: '=',
                      of: quotient(
                        over,
                        signedFactor(context, { row, unknown: target }, head),
                      ),
                    },
                  ],
                },
                { chain: [{ sign: '=', of: found }], boxed: true },
              ],
            };
      return {
        what: 'back-substitute',
        symbol,
        pivot: row.number,
        row: row.number,
        statement,
      };
    })
    .reverse();
}
