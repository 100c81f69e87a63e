import type { ArchiveRecord, RecordedRatio } from '../record.ts';

/**
 * How the sheets of a row stand to its project: `bound`, and so of this very revision; `not bound`: a folder
 * without a package that can be read; `another revision` and `changed since`: a folder whose package is of an earlier state.
 */
export type BoundState = 'bound' | 'not bound' | 'another revision' | 'changed since';

/** A package of the register: a project folder, a bag, or a bound PDF. Null where it does not say. */
export interface RegisterRow {
  readonly path: string;
  readonly kind: 'folder' | 'bag' | 'pdf';
  readonly number: string | null;
  readonly title: string;
  readonly revision: string | null;
  readonly status: string;
  /** ISO date of the revision. */
  readonly date: string | null;
  readonly prepared: RegisteredPerson | null;
  readonly checked: RegisteredPerson | null;
  readonly approved: RegisteredPerson | null;
  readonly bound: BoundState;
  /** Sheets of the package as bound. */
  readonly sheets: number | null;
  /** The check that comes nearest to its limit, or goes farthest beyond it. */
  readonly governing: RecordedRatio | null;
  /** SHA-256 of the bag or PDF; null for a folder. */
  readonly sha256: string | null;
  readonly supersedes: ArchiveRecord['supersedes'];
  /** Number and revision of each package of the register that supersedes this one. */
  readonly supersededBy: readonly string[];
  /** Whether the register holds another bag, or another PDF, of this number and revision with other bytes. */
  readonly hasTwin: boolean;
  /** What a reader must not miss, a phrase each. */
  readonly remarks: readonly string[];
}

/** A person as a register names one. */
export interface RegisteredPerson {
  readonly name: string;
  readonly initials: string;
}

/** A row as it was read, before it is held against the others. */
export interface ReadRow {
  readonly row: RegisterRow;
  /** Marks of its record of revisions, oldest first. */
  readonly marks: readonly string[];
}
