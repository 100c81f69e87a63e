import type { Comparison } from '../comparison/index.ts';
import type { BeamDerivation, ProjectClosure } from '../derivation/index.ts';
import type { Expression } from '../equation/index.ts';
import type { Project, ProjectDefinition } from '../project/index.ts';
import type { MarkedFile } from '../review/index.ts';
import type { CombinationList } from '../standards/index.ts';
import type { Part } from './blocks.ts';

/** A reaction row: an entry of one member (case or combination), or several that come to the same; one value a component. */
export interface ReactionRow {
  /** Marks of the entries that come to this on the member: they differ in cases that it does not feel. */
  readonly entries: readonly string[];
  readonly isCombination: boolean;
  /** Of an entry without a single state the greatest of each. */
  readonly values: readonly Expression[];
  /** Of an entry without a single state the least of each: neither row is a concurrent set. */
  readonly least?: readonly Expression[];
}

/** The reactions of one member for the table of reactions; values in one row act together, unless there is a least of each. */
export interface ReactionTable {
  readonly mark: string;
  readonly columns: readonly { readonly symbol: Expression; readonly unit: string }[];
  /** Reactions that have no column, because they are 0 in every entry. */
  readonly zeros: readonly Expression[];
  readonly rows: readonly ReactionRow[];
  /** True where some rows are the greatest and the least of an entry without a single state. */
  readonly hasRanges: boolean;
  /** Greatest and least of each column, with the entry that each is from. */
  readonly envelope: readonly {
    readonly symbol: Expression;
    readonly max: string;
    readonly maxEntry: string;
    readonly min: string;
    readonly minEntry: string;
  }[];
}

/** Where a reaction goes, on one member at one place or several. */
export interface LoadPathEdge {
  readonly from: string;
  readonly point: string;
  readonly to: string;
  /** Places in words, in file order. */
  readonly at: readonly string[];
  /** How often it comes at each place. */
  readonly times: number;
  /** Whether its x component and its moment go along. */
  readonly isWhole: boolean;
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
  /** Worked files with their marks, bound as check prints; none in an issued package. */
  readonly worked: readonly MarkedFile[];
  /** Forces in and out over all members, as far as reactions are carried; none in a package of some members only. */
  readonly closures: readonly ProjectClosure[];
  readonly program: { readonly name: string; readonly version: string };
  /** Why the package is archived although it is not in order, a sentence each; empty for a package in order. */
  readonly asIs: readonly string[];
  /** What changed since the package that this one replaces, or why that cannot be told; absent where none is at hand. */
  readonly revision?: RevisionInput | UnknownChanges;
}

/** What a revision changed. */
export interface RevisionInput {
  /** Path of the superseded bag as project.yaml names it. */
  readonly bag: string;
  readonly sha256: string;
  readonly comparison: Comparison;
  readonly earlier: ProjectDefinition;
  /** The parts of the earlier package, composed by the templates of this one. */
  readonly earlierParts: readonly Part[];
}

/** Why the changes since the package that was replaced cannot be told. */
export interface UnknownChanges {
  readonly bag: string;
  /** A sentence without its full stop. */
  readonly why: string;
}
