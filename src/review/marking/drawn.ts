import type { NameMeaning } from '../names/name-meanings.ts';
import type { OwnEquation } from './solve-for.ts';
import type { OwnValue } from './worker.ts';

/** What conclusions are drawn from. */
export interface Drawn {
  /** The worker's equations so far, this step's last. */
  readonly equations: readonly OwnEquation[];
  /** True where the last of them holds for the member: its rounded figures are as good as unrounded ones. */
  readonly isLineRight: boolean;
  /** The unknown that a value without a symbol is for. */
  readonly target?: NameMeaning;
  /** What the line of a definition comes to. */
  readonly comesTo?: OwnValue;
  /** True where a plain magnitude is as good. */
  readonly takesMagnitude: boolean;
}
