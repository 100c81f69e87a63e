import type { Expression, Figure, Statement } from '../../equation/index.ts';
import type { EliminationStep } from '../linear-system/eliminate.ts';

/** Linear equations and their solution. */
export interface SystemStep {
  readonly kind: 'system';
  readonly unknowns: readonly Expression[];
  /**
   * Worked step by step; too many for that, shown whole as a table; too wide for a table, as lines.
   */
  readonly form: 'worked' | 'table' | 'lines';
  /** The equations gathered by their unknowns; none where the table shows them. */
  readonly equations: readonly Statement[];
  readonly table?: {
    readonly columns: readonly { readonly of: Expression; readonly unit: string }[];
    readonly rows: readonly {
      readonly number: number;
      /** Pure numbers: the unit of the row over that of the column. */
      readonly cells: readonly Figure[];
      readonly known: Figure;
      readonly unit: string;
    }[];
  };
  readonly elimination: readonly EliminationStep[];
  /** The unknowns found, where no elimination is shown. */
  readonly solution: readonly { readonly of: Expression; readonly value: Figure }[];
  /** The greatest residual of an equation as a share of its terms, `3e-16`. */
  readonly residual: Figure;
}
