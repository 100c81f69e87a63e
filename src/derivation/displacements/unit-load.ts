import type { BeamStructure } from '../../statics/index.ts';
import { independentRows, solveRows } from './condition-rows.ts';
import { reactionsIn, type SupportRestraint } from './restraints.ts';

/** What a restraint gives against the unit load: a pure number, or metres for a moment. */
export interface UnitReaction extends SupportRestraint {
  readonly value: number;
}

/** The member under one unit load, which points up where the deflection is sought. */
export interface UnitLoad {
  readonly x: number;
  /** Of the restraints kept; those of an indeterminate member that are let go give nothing. */
  readonly reactions: readonly UnitReaction[];
  readonly released: readonly SupportRestraint[];
}

/** One equilibrium sum of a unit load: the sums of forces, of moments about the left end, and about each hinge of what is right of it. */
export interface UnitSum {
  readonly what: 'forces-x' | 'forces-y' | 'moments';
  readonly about: number;
  /** A hinge's name where only the part right of it counts. */
  readonly hinge?: string;
}

/**
 * Reactions to a unit load by statics. Of an indeterminate member any set of supports that holds it will do,
 * because forces in equilibrium do no work on movements that fit together (reduction theorem: Pestel and
 * Leckie, Matrix Methods in Elastomechanics; from memory); those nearest to the load are kept.
 *
 * @throws RangeError where the supports hold no unit load.
 */
export function unitLoadAt(structure: BeamStructure, x: number): UnitLoad {
  const sums = unitSums(structure);
  const [start = 0, end = 1] = [structure.points[0]?.x, structure.points.at(-1)?.x];
  const reach = end - start;
  const all = reactionsIn(structure.supports)
    .map((one) => ({
      one,
      factors: sums.map((sum) => scaled(armOf(sum, one), one, { sum, reach })),
    }))
    .filter(({ factors }) => factors.some((factor) => factor !== 0))
    .sort((a, b) => Math.abs(a.one.support.x - x) - Math.abs(b.one.support.x - x));
  const chosen = independentRows(
    all.map(({ factors }) => ({ factors, known: 0 })),
    sums.length,
  );
  if (chosen.length < sums.length)
    throw new RangeError('the supports hold no unit load');
  const kept = chosen.flatMap((index) => all[index] ?? []);
  const found = solveRows(
    sums.map((sum, i) => ({
      factors: kept.map(({ factors }) => factors[i] ?? 0),
      known: -unitArm(sum, x) / (sum.what === 'moments' ? reach : 1),
    })),
  );
  return {
    x,
    reactions: kept
      .map(({ one }, i): UnitReaction => {
        const value = found[i] ?? 0;
        const isNoise = Math.abs(value) <= 1e-12 * Math.max(...found.map(Math.abs));
        return {
          ...one,
          value: isNoise ? 0 : value * (one.restraint.kind === 'moment' ? reach : 1),
        };
      })
      .sort((a, b) => a.support.x - b.support.x),
    released: all
      .filter(({ one }) => !kept.some((other) => other.one === one))
      .map(({ one }) => one)
      .sort((a, b) => a.support.x - b.support.x),
  };
}

/** The sums that find the reactions; that of forces along the member only where inclined supports tie it to the others. */
export function unitSums(structure: BeamStructure): readonly UnitSum[] {
  const start = structure.points[0]?.x ?? 0;
  const isInclined = reactionsIn(structure.supports).some(
    ({ restraint: r }) =>
      r.kind === 'force' && r.direction[0] !== 0 && r.direction[1] !== 0,
  );
  return [
    ...(isInclined ? [{ what: 'forces-x', about: start } as const] : []),
    { what: 'forces-y', about: start },
    { what: 'moments', about: start },
    ...structure.hinges.map(({ point, x }) => ({
      what: 'moments' as const,
      about: x,
      hinge: point,
    })),
  ];
}

/** What a restraint of value 1 adds to a sum; counterclockwise positive, lengths in metres. */
export function armOf(
  { what, about, hinge }: UnitSum,
  { support, restraint }: SupportRestraint,
): number {
  if (what !== 'moments') {
    if (restraint.kind === 'moment') return 0;
    return restraint.direction[what === 'forces-x' ? 0 : 1];
  }
  if (hinge !== undefined && support.x <= about) return 0;
  return restraint.kind === 'moment' ? 1 : restraint.direction[1] * (support.x - about);
}

/** What the unit load itself adds to a sum. */
export function unitArm({ what, about, hinge }: UnitSum, x: number): number {
  if (what === 'forces-x') return 0;
  if (what === 'forces-y') return 1;
  return hinge !== undefined && x <= about ? 0 : x - about;
}

/** Moments are counted over the length of the member, so that all factors are pure numbers. */
function scaled(
  arm: number,
  { restraint }: SupportRestraint,
  { sum, reach }: { readonly sum: UnitSum; readonly reach: number },
): number {
  const over = sum.what === 'moments' ? reach : 1;
  return (arm * (restraint.kind === 'moment' ? reach : 1)) / over;
}

/** The moment of the unit load just left or right of a station, in metres, sagging positive. */
export function unitMoment(of: UnitLoad, x: number, side: 'left' | 'right'): number {
  const passed = (at: number): boolean => (side === 'right' ? at <= x : at < x);
  return of.reactions.reduce(
    (all, { support, restraint, value }) => {
      if (!passed(support.x)) return all;
      return restraint.kind === 'moment'
        ? all - value
        : all + value * restraint.direction[1] * (x - support.x);
    },
    Math.max(0, x - of.x),
  );
}
