import type { Lever } from './atoms.ts';
import type { TermPart, WorkerTerm } from './worker-terms.ts';

/** A way to see a written moment as a force with an arm; units are those in which the two were written, where they were. */
export interface WrittenLever extends Lever {
  readonly forceUnit?: number;
  readonly armUnit?: number;
  /** True where the intensity of a load is among the factors, so that the force is a resultant worked here. */
  readonly intensity?: number;
}

/** Pure factors beyond these are not tried in every combination. */
const mostPure = 4;

/**
 * Every way to see a written moment of so much as a force times an arm: a length among its factors
 * is the arm, or with some of the pure numbers (2/3 · 12 ft); or a force among them is the force,
 * or an intensity with a length, and the arm is the rest.
 */
export function writtenLevers(
  { parts }: WorkerTerm,
  written: number,
): readonly WrittenLever[] {
  const size = Math.abs(written);
  const shares = sharesOf(parts.filter((part) => measures(part, 0, 0)));
  const upper = parts.filter(({ power, size: own }) => power > 0 && own > 0);
  const lengths = upper.filter((part) => measures(part, 0, 1));
  const intensities = upper.filter((part) => measures(part, 1, -1));
  const [spread] = intensities;
  const own = spread === undefined ? {} : { intensity: spread.size };
  const found: WrittenLever[] = [];
  for (const share of shares) {
    for (const { size: length, unit } of lengths) {
      const arm = length * share;
      const units = share === 1 && unit !== undefined ? { armUnit: unit } : {};
      found.push({ arm, force: size / arm, ...units, ...own });
      for (const { size: intensity } of intensities) {
        const force = intensity * length * share;
        found.push({ force, arm: size / force, ...own });
      }
    }
    for (const part of upper.filter((one) => measures(one, 1, 0))) {
      const force = part.size * share;
      const units =
        share === 1 && part.unit !== undefined ? { forceUnit: part.unit } : {};
      found.push({ force, arm: size / force, ...units });
    }
  }
  return found.filter(
    ({ force, arm }) => force > 0 && arm > 0 && Number.isFinite(force * arm),
  );
}

function measures({ dimension }: TermPart, force: number, length: number): boolean {
  return dimension?.force === force && dimension.length === length;
}

/** The products of any of some pure factors, 1 among them. */
function sharesOf(pure: readonly TermPart[]): readonly number[] {
  const some = pure.slice(0, mostPure);
  const rest = pure.slice(mostPure).reduce((all, one) => all * valueOf(one), 1);
  let shares = rest === 1 ? [1] : [1, rest];
  for (const part of some)
    shares = shares.flatMap((share) => [share, share * valueOf(part)]);
  return [...new Set(shares)].filter((share) => share > 0 && Number.isFinite(share));
}

function valueOf({ size, power }: TermPart): number {
  return size ** power;
}
