import {
  exactly,
  figure,
  name,
  product,
  quotient,
  sum,
  type Expression,
  type Figure,
  type Statement,
  type Term,
} from '../../equation/index.ts';
import { displayUnit, pureUnit, quantity, type Unit } from '../../units/index.ts';
import { keyOfUnknown, valueOfUnknown, type SolvingStep, type Unknown } from '../../statics/index.ts';
import type { CaseContext, KnownValues } from '../case-context.ts';
import { entriesOf, type Entry } from '../entries.ts';
import { value } from '../printing.ts';
import type { EquationStep } from '../steps.ts';
import { bareZero, foundOf, isCouple, numeratorFigure, titleOf } from './narrate-sum.ts';
import { sumStatement } from './solve-for.ts';

/** One equation in SI: factors of the unknowns, and the known side. */
interface Row {
  /** Number of the equation as printed, from 1; a cleared row keeps it. */
  readonly number: number;
  readonly factors: readonly number[];
  readonly known: number;
  /** Whether the sum was one of moments (factors are lengths) or of forces. */
  readonly isMoments: boolean;
}

type Elimination = Extract<EquationStep, { kind: 'simultaneous' }>['elimination'];

/** Sums that have to be solved together: each written out, then eliminated one unknown at a time. */
export function narrateCoupled(
  context: CaseContext,
  step: Extract<SolvingStep, { kind: 'coupled' }>,
  known: KnownValues,
): EquationStep {
  const sums = step.sums.map((worked) => ({
    worked,
    entries: entriesOf(context, worked.part, worked.sum, known),
  }));
  const rows = sums.map(({ worked, entries }, index) => ({
    ...rowOf(step.finds, entries, worked.sum.kind === 'moments'),
    number: index + 1,
  }));
  return {
    kind: 'simultaneous',
    unknowns: step.finds.map((unknown) => context.symbols.unknown(unknown)),
    equations: sums.map(({ worked, entries }) => {
      const title = titleOf(context, worked.sum);
      return { title, statement: sumStatement(title, entries, bareZero) };
    }),
    elimination: eliminate(context, step.finds, rows),
    found: step.finds.map((unknown) => foundOf(context, unknown)),
  };
}

function rowOf(unknowns: readonly Unknown[], entries: readonly Entry[], isMoments: boolean): Omit<Row, 'number'> {
  const worthOf = (key: string): number =>
    entries.reduce(
      (all, entry) =>
        entry.unknown !== undefined && keyOfUnknown(entry.unknown) === key ? all + entry.worth : all,
      0,
    );
  return {
    factors: unknowns.map((unknown) => worthOf(keyOfUnknown(unknown))),
    known: entries.reduce((all, entry) => (entry.unknown === undefined ? all - entry.worth : all), 0),
    isMoments,
  };
}

/** Gauss: each pivot row clears its unknown from the rows below; then back from the last. */
function eliminate(context: CaseContext, unknowns: readonly Unknown[], given: readonly Row[]): Elimination {
  const steps: Elimination[number][] = [];
  const rows = [...given];
  for (let pivot = 0; pivot < rows.length; pivot += 1) {
    bringUp(rows, pivot);
    const above = rows[pivot];
    const head = above?.factors[pivot] ?? 0;
    if (above === undefined || head === 0) throw new RangeError('the sums are not independent');
    for (let below = pivot + 1; below < rows.length; below += 1) {
      const row = rows[below];
      const factor = (row?.factors[pivot] ?? 0) / head;
      if (row === undefined || factor === 0) continue;
      const cleared: Row = {
        factors: row.factors.map((f, i) => (i <= pivot ? 0 : f - factor * (above.factors[i] ?? 0))),
        known: row.known - factor * above.known,
        isMoments: row.isMoments,
        number: row.number,
      };
      rows[below] = cleared;
      steps.push({
        what: 'eliminate',
        symbol: symbolAt(context, unknowns, pivot),
        pivot: above.number,
        row: row.number,
        statement: reduced(context, unknowns, cleared),
      });
    }
  }
  return [...steps, ...backSubstitute(context, unknowns, rows)];
}

/** Brings the row with the greatest factor of the pivot's unknown, beside its other factors, to the pivot's place. */
function bringUp(rows: Row[], pivot: number): void {
  const weight = (row: Row): number =>
    Math.abs(row.factors[pivot] ?? 0) / Math.max(...row.factors.map(Math.abs), Number.MIN_VALUE);
  const rest = rows.splice(pivot);
  const best = rest.reduce((a, b) => (weight(b) > weight(a) + 1e-12 ? b : a));
  rows.push(best, ...rest.filter((row) => row !== best));
}

function symbolAt(context: CaseContext, unknowns: readonly Unknown[], index: number): ReturnType<CaseContext['symbols']['unknown']> {
  const unknown = unknowns[index];
  if (unknown === undefined) throw new RangeError('no such unknown');
  return context.symbols.unknown(unknown);
}

/** A row as `0.5 N_A + 0.866 N_B = 8.4 kip`, moments with lengths before the unknowns. */
function reduced(context: CaseContext, unknowns: readonly Unknown[], row: Row): Statement {
  const terms = row.factors.flatMap((factor, index): readonly Term[] => {
    if (Math.abs(factor) < 1e-12) return [];
    const of = product(factorFigure(context, row, Math.abs(factor)), name(symbolAt(context, unknowns, index)));
    return [{ sign: factor < 0 ? -1 : 1, of }];
  });
  return {
    lines: [
      {
        left: terms.length === 0 ? bareZero : sum(...terms),
        chain: [{ sign: '=', of: knownSide(context, row) }],
        recheck: 'none',
      },
    ],
  };
}

function factorFigure({ printing }: CaseContext, row: Row, factor: number): Figure {
  const unit: Unit = row.isMoments ? displayUnit(printing.system, 'length') : pureUnit;
  return figure(quantity(factor / unit.inSi, unit), unit, { kind: 'figures', count: printing.figures });
}

function knownSide(context: CaseContext, row: Row): Figure {
  const sumKind = row.isMoments ? ({ kind: 'moments', about: 0 } as const) : ({ kind: 'forces', along: 'y' } as const);
  return row.known === 0 ? exactly(0, pureUnit) : numeratorFigure(context, sumKind, row.known);
}

function backSubstitute(context: CaseContext, unknowns: readonly Unknown[], rows: readonly Row[]): Elimination {
  return rows
    .map((row, index): Elimination[number] => {
      const symbol = symbolAt(context, unknowns, index);
      const head = row.factors[index] ?? 0;
      const others = row.factors.flatMap((factor, other): readonly Term[] => {
        const unknown = unknowns[other];
        if (other <= index || factor === 0 || unknown === undefined) return [];
        const of: Expression = product(
          factorFigure(context, row, Math.abs(factor)),
          valueOf(context, unknown),
        );
        return [{ sign: factor < 0 ? 1 : -1, of }];
      });
      const over = sum(knownSide(context, row), ...others);
      const target = unknowns[index];
      const statement: Statement = {
        lines: [
          { left: name(symbol), chain: [{ sign: '=', of: quotient(over, signedFactor(context, row, head)) }] },
          { chain: [{ sign: '=', of: target === undefined ? bareZero : valueOf(context, target) }], boxed: true },
        ],
      };
      return { what: 'back-substitute', symbol, pivot: row.number, row: row.number, statement };
    })
    .reverse();
}

function signedFactor(context: CaseContext, row: Row, factor: number): Figure {
  const size = factorFigure(context, row, Math.abs(factor));
  return factor < 0 ? { ...size, quantity: { ...size.quantity, si: -size.quantity.si } } : size;
}

function valueOf(context: CaseContext, unknown: Unknown): Figure {
  return value(
    context.printing,
    isCouple(context, unknown) ? 'moment' : 'force',
    valueOfUnknown(context.result, unknown),
  );
}
