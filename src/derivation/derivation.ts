import type { Symbol } from '../equation/index.ts';
import type { JudgedLimit } from './limits/judge-limits.ts';
import type { Step } from './steps.ts';

/** A run of steps under one heading of the sheet; `case` where it is worked for one case. */
export interface Section {
  readonly kind:
    | 'given'
    | 'supports'
    | 'determinacy'
    /** The redundants of an indeterminate member, by the hand method chosen. */
    | 'redundants'
    | 'equations'
    /** Cases in which nothing acts on the member, all together. */
    | 'idle'
    | 'reasonable'
    | 'internal-forces'
    | 'displacements'
    /** Whole spans loaded or not, and carried ranges. */
    | 'arrangements'
    | 'moving-loads'
    | 'combinations'
    | 'limits'
    | 'results';
  readonly case?: { readonly mark: string; readonly title?: string };
  readonly steps: readonly Step[];
}

/** What the index and the terminal say of a member in one line. */
export interface Summary {
  /** Greatest moment by size and its entry, in the project's unit; signed. */
  readonly moment: {
    readonly text: string;
    readonly si: number;
    readonly entry: string;
  };
  readonly shear: {
    readonly text: string;
    readonly si: number;
    readonly entry: string;
  };
  readonly reaction: {
    readonly text: string;
    readonly si: number;
    readonly entry: string;
    readonly point: string;
  };
  /** The limit that comes out worst; absent where none is judged. */
  readonly limit?: {
    readonly entry: string;
    readonly span: string;
    readonly demand: string;
    readonly limit: string;
    /** As the file states it. */
    readonly text: string;
    readonly ratio: string;
    readonly passes: boolean;
  };
  /** How many limits fail, and how many are stated and not judged. */
  readonly failing: number;
  readonly unjudged: number;
}

/** The worked steps of a beam as facts: what is printed, in order, with no sentence in it. */
export interface BeamDerivation {
  readonly kind: 'beam';
  readonly mark: string;
  readonly title?: string;
  readonly where?: {
    readonly level?: string;
    readonly grid?: string;
    readonly drawing?: string;
  };
  readonly typical?: { readonly count: number; readonly note?: string };
  readonly sections: readonly Section[];
  /** Every symbol that the sheet uses, for the notation list. */
  readonly symbols: readonly Symbol[];
  /** Ids of assumptions and references that the member leans on. */
  readonly uses: readonly string[];
  readonly summary: Summary;
  /** Every limit judged, unrounded. */
  readonly checks: readonly JudgedLimit[];
}
