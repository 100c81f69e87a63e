import type { Span } from '../../diagnostics/index.ts';
import type { GivenQuantity } from '../../units/index.ts';

/** loads.yaml, checked; without the file the cases are those that the loads name. */
export interface LoadsDefinition {
  readonly given: boolean;
  readonly cases: readonly LoadCase[];
  readonly areas: Readonly<Record<string, AreaLoad>>;
  readonly combinations: readonly CombinationRequest[];
  readonly alternatives: readonly (readonly string[])[];
}

/** What a load case is, which decides how combinations take it. */
export type CaseKind =
  | 'dead'
  | 'live'
  | 'roof-live'
  | 'snow'
  | 'rain'
  | 'wind'
  | 'seismic'
  | 'earth'
  | 'fluid'
  | 'temperature'
  | 'settlement';

/** A load case of the project. */
export interface LoadCase {
  readonly mark: string;
  readonly title?: string;
  /** Absent where the file does not say (cases that only the loads name). */
  readonly kind?: CaseKind;
  readonly source?: string;
  readonly pattern: boolean;
  /** Category of EN 1990 Table A1.1. */
  readonly category?: string;
}

/** A load per area, by case. */
export interface AreaLoad {
  readonly name: string;
  readonly source?: string;
  readonly byCase: Readonly<Record<string, GivenQuantity>>;
}

/** What `combinations` lists: a named set, or a sum of the user's own. */
export type CombinationRequest =
  | {
      readonly kind: 'named-set';
      readonly name: 'asce7-strength' | 'asce7-allowable' | 'en1990-uls' | 'en1990-sls';
      /** EN 1990 only: `6.10` (default) or `6.10ab`, and nationally determined values by name. */
      readonly expression?: '6.10' | '6.10ab';
      readonly national?: Readonly<Record<string, number>>;
      readonly span: Span;
    }
  | {
      readonly kind: 'custom';
      readonly mark: string;
      readonly factors: Readonly<Record<string, number>>;
      readonly for: 'strength' | 'service';
      readonly span: Span;
    };
