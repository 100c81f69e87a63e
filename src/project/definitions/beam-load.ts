import type { Span } from '../../diagnostics/index.ts';
import type { GivenQuantity } from '../../units/index.ts';
import type { BeamPlace } from './beam-place.ts';

/**
 * One load of one case, as the sheet shows it: repeats (`at: [ … ]`) and several cases on a line
 * are spread out into single loads, area loads into loads per length with the product kept.
 */
export type BeamLoad = {
  /** Unique on the member, stable: order in the file. */
  readonly id: string;
  readonly case: string;
  readonly note?: string;
  /** Ids of assumptions and references that the load leans on. */
  readonly uses: readonly string[];
  readonly factor?: LoadFactor;
  readonly span: Span;
  /** Where the load comes from, when it is not written as such. */
  readonly from?: LoadOrigin;
} & (
  | {
      readonly kind: 'point';
      readonly at: BeamPlace;
      /** As given, before the factor. */
      readonly size: GivenQuantity;
      /** Where it points, degrees from +x, counterclockwise; down is 270. */
      readonly direction: LoadDirection;
    }
  | {
      readonly kind: 'distributed';
      readonly start: BeamPlace;
      readonly end: BeamPlace;
      /** Intensity at start and end, as given (equal for uniform loads), before the factor. */
      readonly sizes: readonly [GivenQuantity, GivenQuantity];
      readonly direction: LoadDirection;
      /** Force per length square to its direction, rather than per length of beam. */
      readonly per?: 'projection';
    }
  | {
      readonly kind: 'couple';
      readonly at: BeamPlace;
      readonly size: GivenQuantity;
      readonly turn: 'clockwise' | 'counterclockwise';
      readonly side?: 'left' | 'right';
    }
);

/** A factor on a load, with the reason that the file must give. */
export interface LoadFactor {
  readonly factor: number;
  readonly because: string;
}

/** Where a force points. */
export interface LoadDirection {
  /** Degrees from +x, counterclockwise. */
  readonly degrees: number;
  /** As written: `down`, `300 deg`; absent where it is the default. */
  readonly text?: string;
}

/** Where a load comes from, when it is not written as such. */
export type LoadOrigin =
  | {
      readonly kind: 'area';
      readonly area: string;
      readonly pressure: GivenQuantity;
      readonly widths: readonly [GivenQuantity, GivenQuantity];
    }
  | {
      readonly kind: 'self-weight';
      readonly weight: GivenQuantity;
      readonly how: 'section-weight' | 'area-times-density';
    };

/** A reaction of another member, carried at one or several places. Resolved case by case by the load path. */
export interface CarriedReaction {
  readonly id: string;
  readonly member: string;
  readonly point: string;
  readonly at: BeamPlace;
  readonly times: number;
  readonly carry: 'vertical' | 'all';
  readonly side?: 'left' | 'right';
  readonly because?: string;
  readonly note?: string;
  readonly uses: readonly string[];
  readonly span: Span;
}
