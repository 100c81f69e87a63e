import type { Diagnostic } from '../diagnostics/index.ts';
import type { StatementLine } from '../equation/index.ts';
import type { Worker } from '../project/index.ts';
import type { Finding, Verdict } from './verdict.ts';

/** A step with its mark: what `check` prints and the check print shows. */
export interface MarkedStep {
  /** Counted from 1. */
  readonly step: number;
  /** The line of the file where the step begins, counted from 1. */
  readonly line: number;
  /** What the step says that it is, as written: `moments about A`, `moment at B`; absent for a definition or a note. */
  readonly claim?: string;
  /** The part that the sum is for, as written. */
  readonly part?: string;
  /** The case or combination that the step was judged under. */
  readonly loads: string;
  /** The line and the conclusions as text, as they were written. */
  readonly written?: string;
  readonly concluded: readonly string[];
  readonly note?: string;
  /** The same as equations, to be typeset; absent where they could not be read. */
  readonly lines: readonly StatementLine[];
  readonly verdict: Verdict;
  readonly findings: readonly Finding[];
  /** What is said of a right step: the sense that was meant, a coarse rounding, the reading taken. */
  readonly remarks: readonly string[];
  /** The right line in the worker's own symbols and signs, under a wrong one. */
  readonly expected?: {
    readonly line: StatementLine;
    /** The same as plain text. */
    readonly text: string;
    /** Which terms of its left side differ from what was written, by their place in the sum. */
    readonly differing: readonly number[];
  };
}

/** How many steps got which mark. */
export type MarkSummary = Readonly<Record<Verdict, number>>;

/** A comment of the register: one a step that is not right, and every one that was replied to. */
export interface Comment {
  readonly number: number;
  readonly step: number;
  /** What was found, as the finding says it. */
  readonly comment: string;
  readonly reply?: {
    readonly text: string;
    readonly by: string;
    readonly date: string;
  };
  readonly closed?: { readonly by: string; readonly date: string };
  /** `reworked`: the program now finds the step right. Only a named checker closes. */
  readonly status: 'open' | 'answered' | 'reworked' | 'closed';
}

/** A worked file, marked. */
export interface MarkedFile {
  readonly file: string;
  /** Mark of the member as the file names it; absent where it names none. */
  readonly member?: string;
  readonly prepared?: Worker;
  /** The loading that most of the file was judged under. */
  readonly loads?: string;
  /** True where the file did not say which, and the reading with the fewest slips was taken. */
  readonly isLoadsChosen: boolean;
  readonly steps: readonly MarkedStep[];
  readonly summary: MarkSummary;
  readonly comments: readonly Comment[];
  /** Path and SHA-256 of the definition that it was marked against. */
  readonly against?: { readonly file: string; readonly sha256: string };
  /** Why nothing of the file could be marked: no YAML, no such member, a member that could not be solved. */
  readonly fault?: Diagnostic;
  /** Unknown keys and the like. */
  readonly remarks: readonly Diagnostic[];
}
