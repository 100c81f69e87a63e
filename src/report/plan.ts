import type { Part } from './blocks.ts';
import type { Initials } from './contexts/foot.ts';

/** One part of the package before its template is filled. */
export interface Plan {
  readonly anchor: string;
  readonly title: string;
  readonly template: string;
  readonly facts: object;
  readonly look: Part['look'];
  /** Whose work the part is, where it is not the package's own people's. */
  readonly initials?: Initials;
}
