import type { Span } from '../../diagnostics/index.ts';
import type { GivenQuantity } from '../../units/index.ts';
import type { Stated } from './stated.ts';

/** Axles of one case that roll along the beam as one train. */
export interface BeamTrain {
  /** Unique on the member, stable: order in the file, counted with the loads. */
  readonly id: string;
  readonly case: string;
  /** As given, before the factor, front first; each presses down. */
  readonly axles: readonly GivenQuantity[];
  /** From each axle to the next; one and the same quantity twice where it does not vary. */
  readonly spacings: readonly {
    readonly least: GivenQuantity;
    readonly greatest: GivenQuantity;
  }[];
  readonly travel: Stated<'right' | 'left' | 'both'>;
  /** Lane load as given, before the factor. */
  readonly lane?: GivenQuantity;
  /** Factors on the axles and on the lane load, with the reason for both. */
  readonly factors?: {
    readonly axles?: number;
    readonly lane?: number;
    readonly because: string;
  };
  /** Whether axles that reduce the effect sought still count. */
  readonly relieving: Stated<'kept' | 'left out'>;
  readonly note?: string;
  /** Ids of assumptions and references that it leans on. */
  readonly uses: readonly string[];
  readonly span: Span;
}
