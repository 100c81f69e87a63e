import { powerFigure } from '../printing.ts';
import { exactly, figure, type Figure } from '../../equation/index.ts';
import {
  divideUnits,
  pureUnit,
  quantity,
  unitText,
  type Unit,
} from '../../units/index.ts';
import type { SystemStep } from '../steps/system-steps.ts';
import { eliminate } from './eliminate.ts';
import { gatheredRow, systemFigure, type LinearSystem } from './system.ts';

/** More unknowns than this are not eliminated on the page. */
const mostWorked = 4;
/** More than this make a table too wide for the page. */
const mostColumns = 7;

/**
 * Linear equations shown: up to four unknowns step by step, more of them whole, as a table or (where
 * it would be too wide) line by line, with the solution and the residual. The values of the
 * unknowns are those that the caller has found.
 *
 * @throws RangeError where up to four equations are not independent.
 */
export function narrateSystem(system: LinearSystem): SystemStep {
  const { unknowns, rows } = system;
  const count = unknowns.length;
  const form =
    count <= mostWorked ? 'worked' : count <= mostColumns ? 'table' : 'lines';
  return {
    kind: 'system',
    unknowns: unknowns.map(({ of }) => of),
    form,
    equations: form === 'table' ? [] : rows.map((row) => gatheredRow(system, row)),
    ...(form === 'table' ? { table: tableOf(system) } : {}),
    elimination: form === 'worked' ? eliminate(system) : [],
    solution:
      form === 'worked'
        ? []
        : unknowns.map(({ of, unit, value }) => ({
            of,
            value: systemFigure(system, unit, value),
          })),
    residual: powerFigure(residualOf(system)),
  };
}

/** The greatest residual of an equation, as a share of the sum of its absolute terms. */
export function residualOf({ unknowns, rows }: LinearSystem): number {
  return Math.max(
    0,
    ...rows.map(({ factors, known }) => {
      const terms = factors.map((factor, i) => factor * (unknowns[i]?.value ?? 0));
      const left = terms.reduce((all, term) => all + term, -known);
      const scale = terms.reduce((all, term) => all + Math.abs(term), Math.abs(known));
      return scale === 0 ? 0 : Math.abs(left) / scale;
    }),
  );
}

function tableOf({
  figures,
  unknowns,
  rows,
}: LinearSystem): NonNullable<SystemStep['table']> {
  const bare = (unit: Unit, si: number): Figure =>
    si === 0
      ? exactly(0, pureUnit)
      : figure(quantity(si / unit.inSi, pureUnit), pureUnit, {
          kind: 'figures',
          count: figures,
        });
  return {
    columns: unknowns.map(({ of, unit }) => ({ of, unit: unitText(unit) })),
    rows: rows.map(({ number, factors, known, unit }) => ({
      number,
      cells: unknowns.map((unknown, i) =>
        bare(divideUnits(unit, unknown.unit), factors[i] ?? 0),
      ),
      known: bare(unit, known),
      unit: unitText(unit),
    })),
  };
}
