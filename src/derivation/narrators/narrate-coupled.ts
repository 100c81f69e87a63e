import { name } from '../../equation/index.ts';
import {
  keyOfUnknown,
  valueOfUnknown,
  type SolvingStep,
  type Unknown,
} from '../../statics/index.ts';
import { displayUnit, multiplyUnits } from '../../units/index.ts';
import type { CaseContext, KnownValues } from '../case-context.ts';
import { entriesOf, type Entry } from '../entries.ts';
import { eliminate } from '../linear-system/eliminate.ts';
import {
  gatheredRow,
  type LinearSystem,
  type SystemRow,
} from '../linear-system/system.ts';
import type { EquationStep } from '../steps.ts';
import { bareZero, foundOf, isCouple, titleOf } from './narrate-sum.ts';
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
  const system = systemOf(
    context,
    step.finds,
    sums.map(({ worked, entries }, index) => ({
      ...rowOf(step.finds, entries),
      number: index + 1,
      unit: unitOfSum(context, worked.sum.kind === 'moments'),
    })),
  );
  return {
    kind: 'simultaneous',
    unknowns: step.finds.map((unknown) => context.symbols.unknown(unknown)),
    equations: sums.flatMap(({ worked, entries }, index) => {
      const row = system.rows[index];
      if (row === undefined) return [];
      const statement = sumStatement(titleOf(context, worked.sum), entries, bareZero);
      return [{ statement, gathered: gatheredRow(system, row) }];
    }),
    elimination: eliminate(system),
    found: step.finds.map((unknown) => foundOf(context, unknown)),
  };
}

function systemOf(
  context: CaseContext,
  unknowns: readonly Unknown[],
  rows: readonly SystemRow[],
): LinearSystem {
  return {
    figures: context.printing.figures,
    rows,
    unknowns: unknowns.map((unknown) => ({
      of: name(context.symbols.unknown(unknown)),
      unit: displayUnit(
        context.printing.system,
        isCouple(context, unknown) ? 'moment' : 'force',
      ),
      value: valueOfUnknown(context.result, unknown),
    })),
  };
}

/** Moments in the unit of a force times a length, in which their terms stand. */
function unitOfSum({ printing }: CaseContext, isMoments: boolean): SystemRow['unit'] {
  const force = displayUnit(printing.system, 'force');
  return isMoments
    ? multiplyUnits(force, displayUnit(printing.system, 'length'))
    : force;
}

function rowOf(
  unknowns: readonly Unknown[],
  entries: readonly Entry[],
): Pick<SystemRow, 'factors' | 'known'> {
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
  };
}
