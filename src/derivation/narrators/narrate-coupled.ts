import {} from '../../equation/index.ts';
import { keyOfUnknown, type SolvingStep, type Unknown } from '../../statics/index.ts';
import type { CaseContext, KnownValues } from '../case-context.ts';
import { entriesOf, type Entry } from '../entries.ts';
import type { EquationStep } from '../steps.ts';
import { gathered, type Row } from './coupled-rows.ts';
import { eliminate } from './eliminate.ts';
import { bareZero, foundOf, titleOf } from './narrate-sum.ts';
import { sumStatement } from './solve-for.ts';

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
