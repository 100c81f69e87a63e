/** What a quantity measures, as powers of four base dimensions. A pure number has all four 0. */
export interface Dimension {
  readonly force: number;
  readonly length: number;
  /** Temperature differences only: 20 K = 36 °F, no offset. */
  readonly temperature: number;
  /** Angles count, so that `kip ft/rad` and `kip ft` are told apart. */
  readonly angle: number;
}
