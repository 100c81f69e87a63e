import type { ThreeMoment, ThreeMomentEquation } from '../../statics/index.ts';

/** The known side of an equation in SI: load terms, settlements, warmth, and moments that statics alone gives. */
export function knownSide(
  { equations, moments }: ThreeMoment,
  { support, before, after, right }: ThreeMomentEquation,
): number {
  const isUnknown = (of: number): boolean =>
    equations.some((one) => one.support === of);
  const share = (of: number, factor: number): number =>
    isUnknown(of) ? 0 : factor * (moments[of] ?? 0);
  return right - share(support - 1, before) - share(support + 1, after);
}
