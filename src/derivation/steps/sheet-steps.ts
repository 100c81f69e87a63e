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
    | 'moving'
    | 'given'
    | 'axial-shared'
    | 'upward-load';
  readonly facts: Readonly<Record<string, string>>;
}

/** An extreme that one arrangement of loads gives. */
export type ArrangedExtreme = 'moment-max' | 'moment-min' | 'shear-max' | 'shear-min';

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
    | 'arrangement'
    | 'range'
    | 'influence-line'
    | 'moving-envelope'
    | 'elastic-curve';
  readonly case?: string;
  /** Of an arrangement: how the loads stand, and the extremes that it gives. */
  readonly arrangement?: string;
  readonly gives?: readonly ArrangedExtreme[];
  /** Of an elastic curve: the limit's entry that it shows, where it is no case. */
  readonly entry?: string;
  /** Of an envelope: the entries that it covers. */
  readonly for?: 'cases' | 'strength' | 'service';
  readonly figure: FigureSpec;
}
