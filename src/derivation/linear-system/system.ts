import {
  exactly,
  figure,
  product,
  sum,
  type Expression,
  type Figure,
  type Statement,
  type Term,
} from '../../equation/index.ts';
import { divideUnits, pureUnit, quantity, type Unit } from '../../units/index.ts';

/** An unknown of linear equations. */
export interface SystemUnknown {
  /** How it is written: `R_A`, `E I θ_B`. */
  readonly of: Expression;
  /** The unit that it prints in. */
  readonly unit: Unit;
  /** Its value in SI, found by whoever asks for the equations to be shown. */
  readonly value: number;
}

/** One equation: Σ factor · unknown = known. */
export interface SystemRow {
  /** Its number as printed, from 1; a row that elimination has changed keeps it. */
  readonly number: number;
  /** In SI, one an unknown. */
  readonly factors: readonly number[];
  readonly known: number;
  /** The unit of both sides; a factor prints in this unit over that of its unknown. */
  readonly unit: Unit;
}

/** Equations as they are printed. */
export interface LinearSystem {
  /** Significant figures printed. */
  readonly figures: number;
  readonly unknowns: readonly SystemUnknown[];
  readonly rows: readonly SystemRow[];
}

/** A value in a unit, to the figures of the system; an exact 0 as such. */
export function systemFigure(
  { figures }: Pick<LinearSystem, 'figures'>,
  unit: Unit,
  si: number,
): Figure {
  if (si === 0) return exactly(0, unit);
  return figure(quantity(si / unit.inSi, unit), unit, {
    kind: 'figures',
    count: figures,
  });
}

/** The factor before an unknown; signed. */
export function factorFigure(
  system: LinearSystem,
  row: SystemRow,
  unknown: SystemUnknown,
  factor: number,
): Figure {
  return systemFigure(system, divideUnits(row.unit, unknown.unit), factor);
}

/** The known side of a row, a bare 0 where it is nothing. */
export function knownFigure(system: LinearSystem, row: SystemRow): Figure {
  return row.known === 0
    ? exactly(0, pureUnit)
    : systemFigure(system, row.unit, row.known);
}

/** A row as `0.5 N_A + 0.866 N_B = 8.4 kip`, its unknowns gathered on the left. */
export function gatheredRow(system: LinearSystem, row: SystemRow): Statement {
  const terms = row.factors.flatMap((factor, index): readonly Term[] => {
    const unknown = system.unknowns[index];
    if (factor === 0 || unknown === undefined) return [];
    const of = product(
      factorFigure(system, row, unknown, Math.abs(factor)),
      unknown.of,
    );
    return [{ sign: factor < 0 ? -1 : 1, of }];
  });
  return {
    lines: [
      {
        left: terms.length === 0 ? exactly(0, pureUnit) : sum(...terms),
        chain: [{ sign: '=', of: knownFigure(system, row) }],
        recheck: 'none',
      },
    ],
  };
}
