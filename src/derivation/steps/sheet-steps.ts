import type { FigureSpec } from '../../figure/index.ts';

/** A caution that matters to this sheet. */
export interface CautionStep {
  readonly kind: 'caution';
  readonly caution:
    | 'uplift'
    | 'nearly-unstable'
    | 'left-behind'
    | 'handed-on-in-part'
    | 'pattern'
    | 'given'
    | 'axial-shared'
    | 'upward-load';
  readonly facts: Readonly<Record<string, string>>;
}

/** A drawing, and what its caption speaks of. */
export interface FigureStep {
  readonly kind: 'figure';
  readonly shows:
    | 'as-loaded'
    | 'free-body'
    | 'pieces'
    | 'released'
    | 'diagrams'
    | 'envelope'
    | 'arrangements'
    | 'range'
    | 'elastic-curve';
  readonly case?: string;
  /** Of an envelope: the entries that it covers. */
  readonly for?: 'cases' | 'strength' | 'service';
  readonly figure: FigureSpec;
}
