import type { GivenQuantity } from '../../units/index.ts';

/** A place on a beam: a named point, or a station. */
export interface BeamPlace {
  readonly x: number;
  /** The point's name where the place is one (also where a station falls on one). */
  readonly point?: string;
  /** The station as written; absent for a name. */
  readonly given?: GivenQuantity;
}
