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
import {
  displayUnit,
  divideUnits,
  pureUnit,
  quantity,
  type Unit,
} from '../../units/index.ts';
import {
  keyOfUnknown,
  valueOfUnknown,
  type SolvingStep,
  type Unknown,
} from '../../statics/index.ts';
import type { CaseContext, KnownValues } from '../case-context.ts';
import { entriesOf, type Entry } from '../entries.ts';
import { value } from '../printing.ts';
import type { EquationStep } from '../steps.ts';
import {
  bareZero,
  foundOf,
  isCouple,
  numeratorFigure,
  titleOf,
} from './narrate-sum.ts';
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
    equations: sums.flatMap(({ worked, entries }, index) => {
      const row = rows[index];
      if (row === undefined) return [];
      const statement = sumStatement(titleOf(context, worked.sum), entries, bareZero);
      return [{ statement, gathered: gathered(context, step.finds, row) }];
    }),
    elimination: eliminate(context, step.finds, rows),
    found: step.finds.map((unknown) => foundOf(context, unknown)),
  };
}

function rowOf(
  unknowns: readonly Unknown[],
  entries: readonly Entry[],
  isMoments: boolean,
): Omit<Row, 'number'> {
  const worthOf = (key: string): number =>
    entries.reduce(
      (all, entry) =>
        entry.unknown !== undefined && keyOfUnknown(entry.unknown) === key
          ? all + entry.worth
          : all,
      0,
    );
  return {
    factors: unknowns.map((unknown) => worthOf(keyOfUnknown(unknown))),
    known: entries.reduce(
      (all, entry) => (entry.unknown === undefined ? all - entry.worth : all),
      0,
    ),
    isMoments,
  };
}

/** Gauss: each pivot row clears its unknown from the rows below; then back from the last. */
function eliminate(
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

/** A row as `0.5 N_A + 0.866 N_B = 8.4 kip`, moments with lengths before the unknowns. */
function gathered(
  context: CaseContext,
  unknowns: readonly Unknown[],
  row: Row,
): Statement {
  const terms = row.factors.flatMap((factor, index): readonly Term[] => {
    const unknown = unknowns[index];
    if (factor === 0 || unknown === undefined) return [];
    const letter = name(context.symbols.unknown(unknown));
    const of = product(
      factorFigure(context, { row, unknown }, Math.abs(factor)),
      letter,
    );
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

/** The factor of an unknown in a row: a length before a force in a sum of moments, else a pure number. */
function factorFigure(
  context: CaseContext,
  { row, unknown }: { readonly row: Row; readonly unknown: Unknown },
  factor: number,
): Figure {
  const { system, figures } = context.printing;
  const unit: Unit =
    row.isMoments && !isCouple(context, unknown)
      ? displayUnit(system, 'length')
      : pureUnit;
  return figure(quantity(factor / unit.inSi, unit), unit, {
    kind: 'figures',
    count: figures,
  });
}

function knownSide(context: CaseContext, row: Row): Figure {
  const sumKind = row.isMoments
    ? ({ kind: 'moments', about: 0 } as const)
    : ({ kind: 'forces', along: 'y' } as const);
  return row.known === 0
    ? exactly(0, pureUnit)
    : numeratorFigure(context, sumKind, row.known);
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

function signedFactor(
  context: CaseContext,
  of: { readonly row: Row; readonly unknown: Unknown },
  factor: number,
): Figure {
  const size = factorFigure(context, of, Math.abs(factor));
  return factor < 0
    ? { ...size, quantity: { ...size.quantity, si: -size.quantity.si } }
    : size;
}

function valueOf(context: CaseContext, unknown: Unknown): Figure {
  return value(
    context.printing,
    isCouple(context, unknown) ? 'moment' : 'force',
    valueOfUnknown(context.result, unknown),
  );
}
