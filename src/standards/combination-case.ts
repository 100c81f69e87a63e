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

/** A load case as far as combinations look at it. */
export interface CombinationCase {
  readonly mark: string;
  /** Absent where the project does not say; no named set takes such a case. */
  readonly kind?: CaseKind;
  /** Category of EN 1990 Table A1.1, `A` to `H`; only the EN sets look at it. */
  readonly category?: string;
}
