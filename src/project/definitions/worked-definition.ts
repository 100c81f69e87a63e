import type { Diagnostic, Span } from '../../diagnostics/index.ts';

/** A text of a worked file with its place. */
export interface WorkedText {
  readonly text: string;
  readonly span: Span;
}

/**
 * A file of somebody's hand-worked steps, as written. Nothing in it is judged here: what does not
 * fit is told at the step (or the file) that it spoils, and the others stand.
 */
export interface WorkedDefinition {
  readonly file: string;
  /** As it was read; empty where it could not be. */
  readonly text: string;
  /** SHA-256 of the bytes; absent where the file could not be read at all. */
  readonly sha256?: string;
  /** Why the file as a whole cannot be marked: not UTF-8, no YAML, no `member`. */
  readonly fault?: Diagnostic;
  /** The mark of the member that the steps are for. */
  readonly member?: WorkedText;
  /** What the work is for: a case, `all`, or a combination's mark. */
  readonly loads?: WorkedText;
  readonly prepared?: Worker;
  readonly signs: WorkedSigns;
  /** What each of the worker's symbols stands for, as written, in file order. */
  readonly names: readonly {
    readonly name: string;
    readonly means: string;
    readonly span: Span;
  }[];
  readonly steps: readonly WorkedStep[];
  readonly replies: readonly WorkedReply[];
  /** Remarks on the file: unknown keys, defaults taken. */
  readonly remarks: readonly Diagnostic[];
}

/** Who worked the steps. */
export interface Worker {
  readonly name?: string;
  readonly initials?: string;
  /** ISO date. */
  readonly date?: string;
}

/** The worker's own positive senses; the project's where left out. */
export interface WorkedSigns {
  readonly moments?: 'counterclockwise' | 'clockwise';
  readonly vertical?: 'up' | 'down';
  readonly horizontal?: 'right' | 'left';
}

/** One step as written; `faults` say what keeps it from being read, in words. */
export interface WorkedStep {
  readonly span: Span;
  /** `moments about A`, `forces up`. */
  readonly sum?: WorkedText;
  /** `moment at B`, `maximum moment`. */
  readonly value?: WorkedText;
  /** The part of the member: `A to H`. */
  readonly part?: WorkedText;
  /** Replaces the file's for this step. */
  readonly loads?: WorkedText;
  readonly write?: WorkedText;
  /** What the worker concludes, one text a conclusion. */
  readonly so: readonly WorkedText[];
  readonly note?: string;
  readonly faults: readonly { readonly message: string; readonly span: Span }[];
}

/** A reply to a comment on a step, or its closing by a named person. */
export interface WorkedReply {
  /** Number of the step, counted from 1. */
  readonly step: number;
  /** The line that is answered, as it was written then; another line now leaves the comment open. */
  readonly line: string;
  readonly reply?: string;
  readonly by: string;
  /** ISO date. */
  readonly date: string;
  /** True where `by` closes the comment. */
  readonly closes: boolean;
  readonly span: Span;
}
