import {
  product,
  quotient,
  sum,
  type Expression,
  type Statement,
  type Term,
} from '../../equation/index.ts';
import { divideUnits } from '../../units/index.ts';
import {
  factorFigure,
  gatheredRow,
  knownFigure,
  systemFigure,
  type LinearSystem,
  type SystemRow,
} from './system.ts';

/** One step of Gauss's elimination. */
export interface EliminationStep {
  readonly what: 'eliminate' | 'back-substitute';
  /** Which unknown is cleared or found, from 0, and as it is written. */
  readonly index: number;
  readonly unknown: Expression;
  /** Number of the equation that clears, or from which the unknown follows. */
  readonly pivot: number;
  readonly row: number;
  /** What equation `pivot` is multiplied by before it is added to or taken from equation `row`; absent where it is 1. */
  readonly times?: Expression;
  readonly isAdded?: boolean;
  readonly statement: Statement;
}

/**
 * Gauss: each pivot row clears its unknown from the rows below; then back from the last. The row with
 * the greatest factor of the unknown, beside its other factors, clears.
 *
 * @throws RangeError where the equations are not independent.
 */
export function eliminate(system: LinearSystem): readonly EliminationStep[] {
  const steps: EliminationStep[] = [];
  const rows = [...system.rows];
  for (let pivot = 0; pivot < rows.length; pivot += 1) {
    bringUp(rows, pivot);
    const above = rows[pivot];
    const head = above?.factors[pivot] ?? 0;
    if (above === undefined || head === 0)
      throw new RangeError('the equations are not independent');
    for (let below = pivot + 1; below < rows.length; below += 1) {
      const row = rows[below];
      const factor = (row?.factors[pivot] ?? 0) / head;
      if (row === undefined || factor === 0) continue;
      const cleared: SystemRow = {
        ...row,
        factors: row.factors.map((f, i) =>
          i <= pivot ? 0 : less(f, factor * (above.factors[i] ?? 0)),
        ),
        known: less(row.known, factor * above.known),
      };
      rows[below] = cleared;
      steps.push({
        what: 'eliminate',
        ...unknownAt(system, pivot),
        pivot: above.number,
        row: row.number,
        ...multiplier(system, { from: row, by: above }, Math.abs(factor)),
        isAdded: factor < 0,
        statement: gatheredRow(system, cleared),
      });
    }
  }
  return [...steps, ...backSubstitute(system, rows)];
}

/** A difference; what is left of two equal numbers by rounding alone is 0. */
function less(a: number, b: number): number {
  return Math.abs(a - b) <= 1e-12 * (Math.abs(a) + Math.abs(b)) ? 0 : a - b;
}

function bringUp(rows: SystemRow[], pivot: number): void {
  const weight = (row: SystemRow): number =>
    Math.abs(row.factors[pivot] ?? 0) /
    Math.max(...row.factors.map(Math.abs), Number.MIN_VALUE);
  const rest = rows.splice(pivot);
  const best = rest.reduce((a, b) => (weight(b) > weight(a) + 1e-12 ? b : a));
  rows.push(best, ...rest.filter((row) => row !== best));
}

function unknownAt(
  { unknowns }: LinearSystem,
  index: number,
): Pick<EliminationStep, 'index' | 'unknown'> {
  const unknown = unknowns[index];
  if (unknown === undefined) throw new RangeError('no such unknown');
  return { index, unknown: unknown.of };
}

/** What a row is multiplied by, in the unit that brings it to the other row's; nothing where it is a plain 1. */
function multiplier(
  system: LinearSystem,
  rows: { readonly from: SystemRow; readonly by: SystemRow },
  factor: number,
): Pick<EliminationStep, 'times'> {
  const unit = divideUnits(rows.from.unit, rows.by.unit);
  if (unit.factors.length === 0 && Math.abs(factor - 1) < 1e-12) return {};
  return { times: systemFigure(system, unit, factor) };
}

function backSubstitute(
  system: LinearSystem,
  rows: readonly SystemRow[],
): readonly EliminationStep[] {
  return rows
    .map((row, index): EliminationStep => ({
      what: 'back-substitute',
      ...unknownAt(system, index),
      pivot: row.number,
      row: row.number,
      statement: foundFrom(system, row, index),
    }))
    .reverse();
}

/** The unknown of a cleared row, the later ones in it known already. */
function foundFrom(system: LinearSystem, row: SystemRow, index: number): Statement {
  const target = system.unknowns[index];
  if (target === undefined) throw new RangeError('no such unknown');
  const found = systemFigure(system, target.unit, target.value);
  const others = row.factors.flatMap((factor, other): readonly Term[] => {
    const unknown = system.unknowns[other];
    if (other <= index || factor === 0 || unknown === undefined) return [];
    const of = product(
      factorFigure(system, row, unknown, Math.abs(factor)),
      systemFigure(system, unknown.unit, unknown.value),
    );
    return [{ sign: factor < 0 ? 1 : -1, of }];
  });
  const boxed = { chain: [{ sign: '=' as const, of: found }], boxed: true };
  if (row.known === 0 && others.length === 0)
    return { lines: [{ left: target.of, ...boxed }] };
  const over =
    row.known === 0 ? sum(...others) : sum(knownFigure(system, row), ...others);
  const under = factorFigure(system, row, target, row.factors[index] ?? 0);
  return {
    lines: [
      { left: target.of, chain: [{ sign: '=', of: quotient(over, under) }] },
      boxed,
    ],
  };
}
