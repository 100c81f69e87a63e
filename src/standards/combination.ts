/** A combination of load cases: factors by case mark, and where it comes from. */
export interface Combination {
  /** As printed: `1.2D + 1.6L`; factor 1 left out. */
  readonly mark: string;
  readonly factors: readonly { readonly case: string; readonly factor: number }[];
  readonly for: 'strength' | 'service';
  /** Every clause that gives it (merged entries keep all), `ASCE/SEI 7-22 2.3.1 (2)`; `project` for the user's own. */
  readonly clauses: readonly string[];
}
