import type { Span } from '../../diagnostics/index.ts';
import type { GivenQuantity } from '../../units/index.ts';
import type { BeamPlace } from './beam-place.ts';
import type { LoadFactor } from './beam-load.ts';

/**
 * A temperature difference of one case over a stretch of one depth: a line that runs over several
 * cross-sections is spread out where their depths stand for its own.
 */
export interface BeamTemperature {
  /** Unique on the member, stable: order in the file, counted with the loads. */
  readonly id: string;
  readonly case: string;
  readonly start: BeamPlace;
  readonly end: BeamPlace;
  /** Top minus bottom over the whole depth, as given, before the factor; positive where the top is warmer. */
  readonly difference: GivenQuantity;
  readonly depth: GivenQuantity;
  /** Strain per temperature change. */
  readonly expansion: GivenQuantity;
  /** What the line leaves to the cross-section and to the material. */
  readonly taken: { readonly depth: boolean; readonly expansion: boolean };
  readonly factor?: LoadFactor;
  readonly note?: string;
  /** Ids of assumptions and references that it leans on. */
  readonly uses: readonly string[];
  readonly span: Span;
}
