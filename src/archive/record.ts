/** Who did what and when, as the record of a package names them. */
export interface RecordedPerson {
  readonly name: string;
  readonly initials: string;
  /** ISO date; null where no date of that person's own stands. */
  readonly date: string | null;
  readonly licence: string | null;
}

/** A row of the record of revisions; null for what was not given. */
export interface RecordedRevision {
  readonly mark: string;
  readonly date: string | null;
  readonly note: string | null;
  readonly reason: string | null;
  readonly prepared: string | null;
  readonly checked: string | null;
  readonly sheets: string | null;
}

/** The check or limit that comes nearest to its limit, or goes farthest beyond it. */
export interface RecordedRatio {
  readonly member: string;
  /** The check and the entry that it was judged on, a phrase. */
  readonly check: string;
  /** Demand over capacity. */
  readonly ratio: number;
  readonly passes: boolean;
}

/**
 * What a machine can read of an issued package: `data/record.json`, format 1. Its keys stand in this
 * order, and equal packages give equal bytes.
 */
export interface ArchiveRecord {
  readonly format: 1;
  readonly program: { readonly name: string; readonly version: string };
  readonly project: {
    readonly number: string | null;
    readonly title: string;
    readonly discipline: string;
    readonly client: string | null;
    readonly location: string | null;
    readonly office: string | null;
    readonly stage: string | null;
  };
  readonly status: string;
  /** The revision that is archived, the last of `revisions`; null where there is none (only with `asIs`). */
  readonly revision: RecordedRevision | null;
  readonly revisions: readonly RecordedRevision[];
  readonly people: {
    readonly prepared: RecordedPerson | null;
    readonly checked: RecordedPerson | null;
    readonly approved: RecordedPerson | null;
  };
  /** The package that this one replaces; `sha256` of its bag where that was at hand. */
  readonly supersedes: {
    readonly number: string | null;
    readonly revision: string | null;
    readonly bag: string | null;
    readonly sha256: string | null;
  } | null;
  readonly totals: {
    readonly members: number;
    /** Members without results. */
    readonly unsolved: number;
    readonly sheets: number;
    readonly checks: number;
    readonly failing: number;
    readonly governing: RecordedRatio | null;
  };
  /** Greatest residual of any equation of equilibrium as a share of its scale; null where nothing was solved. */
  readonly closure: {
    readonly member: string;
    readonly result: string;
    readonly equation: string;
    readonly share: number;
  } | null;
  /** Why the package was archived although it is not in order, a sentence each; empty for a package in order. */
  readonly asIs: readonly string[];
  /** The signed PDF, where there is one. `same start`: it is the bound PDF with something added at its end. */
  readonly signed: {
    readonly path: string;
    readonly comparison: 'same start' | 'not compared';
  } | null;
}
