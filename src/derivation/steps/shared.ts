import type { Expression, Symbol } from '../../equation/index.ts';

/** A place on the member: its station, and the point's name where it is one. */
export interface Place {
  readonly station: Expression;
  readonly point?: string;
}

/** A reaction component as an unknown. */
export interface UnknownRow {
  readonly symbol: Symbol;
  readonly sense: Sense;
}

/** The way a force or couple acts, in words of the sheet. */
export type Sense =
  | 'up'
  | 'down'
  | 'right'
  | 'left'
  | 'counterclockwise'
  | 'clockwise'
  | 'along the normal'
  | 'against the normal';

/** What a sum found. */
export interface Found {
  readonly symbol: Symbol;
  readonly value: Expression;
  /** The way that it really acts; absent where it is 0. Of a force through a hinge: on the piece to its right. */
  readonly acts?: Sense;
  /** The way that it acts on the piece to the left of its hinge. */
  readonly actsLeft?: Sense;
  /** The hinge that it passes through. */
  readonly hinge?: string;
  readonly isNegative: boolean;
  readonly isZero: boolean;
}
