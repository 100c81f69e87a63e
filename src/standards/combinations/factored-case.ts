/** A load case with its factor: one term of a combination. */
export interface FactoredCase {
  readonly case: string;
  readonly factor: number;
}

/** Factors nearer than this are one factor; the products of a clause carry rounding of 1e-16. */
const sameFactor = 1e-9;

/** A product of factors without the last digits' noise: 0.75 × 0.7 is 0.525, not 0.5249999…. */
export function tidyFactor(product: number): number {
  return Number(product.toPrecision(12));
}

/** The mark of a combination: `1.2D + 1.6L + 0.5Lr`, in the order given, factor 1 left out. */
export function writeMark(terms: readonly FactoredCase[]): string {
  return terms
    .map((term) => (term.factor === 1 ? term.case : `${term.factor}${term.case}`))
    .join(' + ');
}

/** True where two sums have the same terms, in whatever order; a factor of 0 is no term. */
export function sameTerms(
  a: readonly FactoredCase[],
  b: readonly FactoredCase[],
): boolean {
  const real = (terms: readonly FactoredCase[]): readonly FactoredCase[] =>
    terms.filter((term) => Math.abs(term.factor) > sameFactor);
  const left = real(a);
  const right = real(b);
  if (left.length !== right.length) return false;
  return left.every((term) =>
    right.some(
      (other) =>
        other.case === term.case && Math.abs(other.factor - term.factor) <= sameFactor,
    ),
  );
}
