import type { CombinationCase } from '../combination-case.ts';
import type { Combination } from '../combination.ts';

/** The named sets, as loads.yaml writes them. */
export type NamedSetName =
  'asce7-strength' | 'asce7-allowable' | 'en1990-uls' | 'en1990-sls';

/** One named set as asked for. */
export interface NamedSetRequest {
  readonly name: NamedSetName;
  /** EN 1990 strength only: which expression; 6.10 where absent. */
  readonly expression?: '6.10' | '6.10ab';
  /** EN 1990 only: nationally determined values by name, see `nationalValueNames`. */
  readonly national?: Readonly<Record<string, number>>;
}

/** What every set of a project is worked from. */
export interface CombinationContext {
  readonly cases: readonly CombinationCase[];
  /** Groups of cases that never act together. */
  readonly alternatives: readonly (readonly string[])[];
  /** The standards that the project names, in its own words. */
  readonly standards: readonly string[];
}

/** A sentence that belongs beside a set in the package: what was assumed, or what to beware of. */
export interface SetNote {
  readonly kind: 'assumption' | 'caution';
  /** A whole sentence with its full stop. */
  readonly text: string;
}

/** A case that was left out of a set, or of all of them, and why: a sentence with its full stop. */
export interface UntakenCase {
  readonly case: string;
  readonly why: string;
}

/** A mistake of the project's that keeps a request from being met. */
export interface CombinationProblem {
  readonly kind:
    | 'edition'
    | 'too-many'
    | 'national-value'
    | 'unknown-case'
    | 'mark-taken'
    | 'no-combination';
  /** The named set, or the mark of the project's own combination, that it concerns. */
  readonly subject: string;
  /** One sentence, lower case at the start, no full stop at the end. */
  readonly message: string;
}

/** Combinations, with all that the package must say about them. */
export interface CombinationList {
  readonly combinations: readonly Combination[];
  readonly notes: readonly SetNote[];
  readonly untaken: readonly UntakenCase[];
  readonly problems: readonly CombinationProblem[];
}

/** The list of a project that cannot be read. */
export const noCombinations: CombinationList = {
  combinations: [],
  notes: [],
  untaken: [],
  problems: [],
};

/** What a set is: one file each, gathered in `namedSets`. */
export interface NamedSet {
  readonly name: NamedSetName;
  /** Which envelope its combinations go to. */
  readonly for: 'strength' | 'service';
  readonly list: (
    request: NamedSetRequest,
    context: CombinationContext,
  ) => CombinationList;
}
