import type { BeamDerivation } from '../derivation/index.ts';
import type { Expression } from '../equation/index.ts';
import type { Project } from '../project/index.ts';
import type { CombinationList } from '../standards/index.ts';

/** A reaction row: one entry (case or combination) of one member, one value a component. */
export interface ReactionRow {
  readonly entry: string;
  readonly isCombination: boolean;
  readonly values: readonly Expression[];
}

/** The reactions of one member for the table of reactions; values in one row act together. */
export interface ReactionTable {
  readonly mark: string;
  readonly columns: readonly { readonly symbol: Expression; readonly unit: string }[];
  readonly rows: readonly ReactionRow[];
  /** Greatest and least of each column, with the entry that each is from. */
  readonly envelope: readonly {
    readonly symbol: Expression;
    readonly max: string;
    readonly maxEntry: string;
    readonly min: string;
    readonly minEntry: string;
  }[];
}

/** Where a reaction goes. */
export interface LoadPathEdge {
  readonly from: string;
  readonly point: string;
  readonly to: string;
  readonly at: string;
}

/** A member of the package: narrated, or named with the reason that it has no results. */
export type MemberReport =
  | {
      readonly kind: 'derived';
      readonly derivation: BeamDerivation;
      readonly reactions: ReactionTable;
      /** Greatest residual as a share of its scale, over all sums of all results. */
      readonly closure: number;
    }
  | {
      readonly kind: 'failed';
      readonly mark: string;
      readonly title?: string;
      readonly findings: readonly {
        readonly code: string;
        readonly place: string;
        readonly message: string;
        readonly hints: readonly string[];
      }[];
    };

/** Everything that the package is composed from. */
export interface ReportInput {
  readonly project: Project;
  readonly members: readonly MemberReport[];
  readonly combinations: CombinationList;
  readonly loadPath: readonly LoadPathEdge[];
  readonly program: { readonly name: string; readonly version: string };
}
