import type { FigureSetting } from '../figure-setting.ts';
import type { Magnitudes } from './magnitudes.ts';
import type { Stations } from './stations.ts';

/** Where a member begins and ends on the drawing, x in points. */
export interface Ends {
  readonly left: number;
  readonly right: number;
}

/** What drawing one member with what stands on it depends on. */
export interface StripSetting extends FigureSetting {
  readonly stations: Stations;
  readonly magnitudes: Magnitudes;
  readonly ends: Ends;
  /** Bounds of labels, x. */
  readonly bounds: { readonly left: number; readonly right: number };
  /** From the axis to where arrows touch at a place: half the member's line and a hair, more at a hinge. */
  readonly surfaceAt: (x: number) => number;
}
