import type { BeamPlace } from './beam-place.ts';
import type { Span } from '../../diagnostics/index.ts';
import type { GivenQuantity } from '../../units/index.ts';
import type { BeamLoad, CarriedReaction } from './beam-load.ts';
import type { BeamTemperature } from './beam-temperature.ts';
import type { BeamTrain } from './beam-train.ts';
import type { DeflectionLimit } from './project-definition.ts';
import type { CrossSection, Material } from './properties.ts';

/** A beam, checked. */
export interface BeamDefinition {
  readonly kind: 'beam';
  readonly file: string;
  readonly mark: string;
  readonly markSpan: Span;
  readonly title?: string;
  readonly where?: {
    readonly level?: string;
    readonly grid?: string;
    readonly drawing?: string;
  };
  readonly typical?: { readonly count: number; readonly note?: string };
  readonly points: readonly BeamPoint[];
  readonly supports: readonly BeamSupport[];
  readonly supportsSpan: Span;
  readonly hinges: readonly {
    readonly point: string;
    readonly x: number;
    readonly span: Span;
  }[];
  readonly loads: readonly BeamLoad[];
  readonly temperatures: readonly BeamTemperature[];
  readonly carried: readonly CarriedReaction[];
  /** Moving loads. */
  readonly trains: readonly BeamTrain[];
  /** The case of the self-weight, where it is asked for. */
  readonly selfWeight?: string;
  /** One entry a stretch; a single entry for a prismatic beam, none where nothing is given. */
  readonly sections: readonly {
    readonly from: BeamPlace;
    readonly to: BeamPlace;
    readonly section: CrossSection;
  }[];
  readonly material?: Material;
  readonly deflectionLimits?: readonly DeflectionLimit[];
  /** Replaces the project's reading of cantilevers for this member. */
  readonly cantilevers?: 'doubled' | 'plain';
  readonly bracing?: { readonly top?: string; readonly bottom?: string };
  readonly cautions: readonly string[];
  readonly uses: readonly string[];
}

/** A named point of a beam. `written` is as the file gives it (`+4 ft`, `12'-6"`). */
export interface BeamPoint {
  readonly name: string;
  /** Station from the origin of the file's axis, in metres. */
  readonly x: number;
  readonly given: GivenQuantity;
  /** True where the file gives the distance from the point before. */
  readonly relative: boolean;
  readonly span: Span;
}

/** A support of a beam as defined. */
export interface BeamSupport {
  readonly point: string;
  readonly type: 'pin' | 'roller' | 'fixed' | 'guide' | 'spring';
  /** Direction of an inclined roller's reaction, degrees from +x, counterclockwise; 90 for an ordinary one. */
  readonly normal?: GivenQuantity;
  readonly stiffness?: GivenQuantity;
  readonly rotation?: GivenQuantity;
  readonly settlement?: { readonly value: GivenQuantity; readonly case: string };
  readonly span: Span;
}
