import type { Sum } from '../../statics/index.ts';
import { leversOf, worthOf, type Atom, type Lever } from './atoms.ts';
import { isNear, isRounded } from './closeness.ts';
import { conversionIn, isOfSystems } from './conversions.ts';
import type { WorkerTerm } from './worker-terms.ts';
import { writtenLevers, type WrittenLever } from './written-levers.ts';

/** One slip that explains how a term differs from what belongs there. */
export interface Slip {
  readonly kind:
    | 'sign'
    | 'lever-arm'
    | 'missing-term'
    | 'extra-term'
    | 'magnitude'
    | 'resultant'
    | 'unit'
    | 'rounding';
  /** How unlikely it is: the search takes the cheapest explanation. */
  readonly cost: number;
  readonly term?: WorkerTerm;
  /** What the term stands for, or what is missing. */
  readonly atoms: readonly Atom[];
  /** What `taken` and `belongs` are: a length, a force, a moment, or how much of an unknown. */
  readonly measure?: 'arm' | 'force' | 'moment' | 'share';
  /** What was taken, SI, no sign; of a unit slip the factor that it is out by. */
  readonly taken?: number;
  /** What belongs in its place, SI, no sign. */
  readonly belongs?: number;
}

// What experience says: a turned sign happens most, a term that nothing gives least.
export const costs = {
  sign: 1,
  /** A turned sign on a term that has another slip. */
  signToo: 0.9,
  unit: 1.1,
  /** A factor between systems of units: less likely, and near enough to 1 to be met by chance. */
  system: 1.3,
  arm: 1.2,
  resultant: 1.25,
  /** The wrong part of a slanting force. */
  part: 1.15,
  magnitude: 1.4,
  /** Each time that a size is twice or half of what it is to be. */
  perDoubling: 0.4,
  missing: 1.5,
  extra: 2.5,
  /** Each further thing that one number stands for. */
  lump: 0.05,
  /** Each further number that stands for one thing. */
  split: 0.3,
  /** Rightly rounded to fewer figures than asked: no slip, yet worth a word. */
  rounding: 0.3,
} as const;

/** The slips that turn what an atom adds into what a term says; undefined where none does. */
export function slipsOf(
  term: WorkerTerm,
  written: number,
  atom: Atom,
  sum: Sum,
): readonly Slip[] | undefined {
  const worth = worthOf(atom);
  const isTurned = worth !== 0 && Math.sign(written) !== Math.sign(worth);
  const own = ownSlip(term, Math.abs(written), atom, sum);
  if (own === undefined) return undefined;
  const atoms = [atom];
  return isTurned ? [{ kind: 'sign', cost: costs.signToo, term, atoms }, own] : [own];
}

function ownSlip(
  term: WorkerTerm,
  written: number,
  atom: Atom,
  sum: Sum,
): Slip | undefined {
  const worth = Math.abs(worthOf(atom));
  const atoms = [atom];
  const ratio = worth === 0 ? 0 : written / worth;
  const conversion = conversionIn(ratio);
  if (conversion !== undefined)
    return { kind: 'unit', cost: priceOfUnit(conversion), term, atoms, taken: ratio };
  return sum.kind === 'moments' && atom.quantity === 'force'
    ? momentSlip(term, written, atom)
    : sizeSlip(term, atom, {
        measure: atom.quantity === 'couple' ? 'moment' : 'force',
        taken: written,
        belongs: worth,
        unit: unitOf(term),
      });
}

/** What a factor of units costs. */
export function priceOfUnit(conversion: number): number {
  return isOfSystems(conversion) ? costs.system : costs.unit;
}

/** The unit in which a term that is one number was written; undefined for a product. */
function unitOf({ parts }: WorkerTerm): number | undefined {
  const [only, ...others] = parts;
  return others.length === 0 ? only?.unit : undefined;
}

/** A moment of a force: the arm is another, or the force. */
function momentSlip(term: WorkerTerm, written: number, atom: Atom): Slip | undefined {
  const found = leversOf(atom).flatMap((lever) =>
    writtenLevers(term, written).flatMap(
      (own) => leverSlip(term, atom, { own, lever }) ?? [],
    ),
  );
  if (isPlainMoment(term))
    found.push(
      sizeSlip(term, atom, {
        measure: 'moment',
        taken: written,
        belongs: Math.abs(worthOf(atom)),
        unit: unitOf(term),
      }),
    );
  return cheapest(found);
}

function cheapest(slips: readonly Slip[]): Slip | undefined {
  return slips.reduce<Slip | undefined>(
    (best, one) => (best === undefined || one.cost < best.cost - 1e-9 ? one : best),
    undefined,
  );
}

/** A force with an arm beside what belongs there: undefined where neither fits, or both do. */
function leverSlip(
  term: WorkerTerm,
  atom: Atom,
  { own, lever }: { readonly own: WrittenLever; readonly lever: Lever },
): Slip | undefined {
  const isForce = isNear(own.force, lever.force);
  const isArm = isNear(own.arm, lever.arm);
  // Along the member a force has no part across it that could be another size.
  const isAlong = atom.factor === 0 && atom.reach !== 0;
  if (isForce === isArm || isAlong) return undefined;
  const isSlanting = lever.arm === atom.reach && leversOf(atom).length > 1;
  if (isArm && isSlanting)
    return {
      kind: 'magnitude',
      cost: costs.part,
      term,
      atoms: [atom],
      measure: 'force',
      taken: own.force,
      belongs: lever.force,
    };
  if (isArm)
    return sizeSlip(term, atom, {
      measure: 'force',
      taken: own.force,
      belongs: lever.force,
      unit: own.forceUnit,
      intensity: own.intensity,
    });
  // A whole slanting force with the distance along the member: its part across was meant.
  if (atom.reach !== undefined && isNear(own.arm, atom.reach))
    return {
      kind: 'magnitude',
      cost: costs.part,
      term,
      atoms: [atom],
      measure: 'force',
      taken: own.force,
      belongs: Math.abs(worthOf(atom)) / atom.reach,
    };
  return armSlip(term, atom, { own, lever });
}

function armSlip(
  term: WorkerTerm,
  atom: Atom,
  { own, lever }: { readonly own: WrittenLever; readonly lever: Lever },
): Slip {
  const of = {
    term,
    atoms: [atom],
    measure: 'arm',
    taken: own.arm,
    belongs: lever.arm,
  } as const;
  // What passes through the point has no term in the sum.
  if (lever.arm <= 1e-9) return { kind: 'extra-term', cost: costs.arm, ...of };
  if (isRounded(own.arm, lever.arm, own.armUnit))
    return { kind: 'rounding', cost: costs.rounding, ...of };
  return isSpread(atom)
    ? { kind: 'resultant', cost: costs.resultant, ...of }
    : { kind: 'lever-arm', cost: costs.arm, ...of };
}

/** A size beside the one that belongs there. */
interface Sizes {
  readonly measure: 'force' | 'moment';
  readonly taken: number;
  readonly belongs: number;
  /** One of the unit in which it was written, where it was. */
  readonly unit: number | undefined;
  /** The intensity from which the worker made it a resultant. */
  readonly intensity?: number | undefined;
}

/** Half or twice a resultant, or one from the right intensity, is a slip of its shape; any other size is another load. */
function sizeSlip(
  term: WorkerTerm,
  atom: Atom,
  { measure, taken, belongs, unit, intensity }: Sizes,
): Slip {
  const of = { term, atoms: [atom], measure, taken, belongs } as const;
  if (isRounded(taken, belongs, unit))
    return { kind: 'rounding', cost: costs.rounding, ...of };
  const ratio = belongs === 0 ? Infinity : taken / belongs;
  const isShape =
    isSpread(atom) &&
    measure === 'force' &&
    ([2, 0.5].some((factor) => isNear(ratio, factor)) || hasIntensity(atom, intensity));
  return isShape
    ? { kind: 'resultant', cost: costs.resultant, ...of }
    : { kind: 'magnitude', cost: priceOfSize(ratio), ...of };
}

/** What a size out by so much costs: far from what belongs there it hardly stands for it. */
export function priceOfSize(ratio: number): number {
  const doublings = ratio > 0 ? Math.abs(Math.log2(ratio)) : Infinity;
  return costs.magnitude + costs.perDoubling * Math.min(doublings, 20);
}

function isSpread({ what }: Atom): boolean {
  return what.kind === 'load' && what.resultant !== undefined;
}

/** True where an intensity is that of a resultant, factored as it is. */
function hasIntensity({ what, size }: Atom, intensity: number | undefined): boolean {
  const resultant = what.kind === 'load' ? what.resultant : undefined;
  if (intensity === undefined || resultant === undefined) return false;
  const factor = Math.abs(size) / resultant.magnitude;
  return isNear(intensity, Math.max(resultant.start, resultant.end) * factor);
}

/** True where a term of a sum of moments is a moment by itself, with no force and arm in it to look at. */
export function isPlainMoment({ parts }: WorkerTerm): boolean {
  return parts.every(
    ({ dimension }) =>
      dimension === undefined ||
      (dimension.force === 0 && dimension.length === 0) ||
      (dimension.force === 1 && dimension.length === 1),
  );
}
