import type { Sum } from '../../statics/index.ts';
import { worthOf, type Atom } from './atoms.ts';
import { isClose, isNear } from './closeness.ts';
import type { WorkerTerm } from './worker-terms.ts';

/** One slip that explains how a term differs from what belongs there. */
export interface Slip {
  readonly kind:
    | 'sign'
    | 'lever-arm'
    | 'missing-term'
    | 'extra-term'
    | 'magnitude'
    | 'resultant'
    | 'unit';
  /** How unlikely it is: the search takes the cheapest explanation. */
  readonly cost: number;
  readonly term?: WorkerTerm;
  /** What the term stands for, or what is missing. */
  readonly atoms: readonly Atom[];
  /** The arm that was taken, m; the factor of a unit slip; the size that was taken, N or N·m. */
  readonly taken?: number;
}

// What experience says: a turned sign happens most, a term that nothing gives least.
export const costs = {
  sign: 1,
  unit: 1.1,
  arm: 1.2,
  resultant: 1.25,
  magnitude: 1.4,
  missing: 1.5,
  extra: 2.5,
  /** Each further thing that one number stands for. */
  lump: 0.02,
} as const;

/** Factors that slip in when units are converted, or are not. */
const conversions = [12, 144, 1000, 1e6, 100, 4.448222, 0.3048, 1.355818];

/** The slips that turn what an atom adds into what a term says; undefined where none does. */
export function slipsOf(
  term: WorkerTerm,
  written: number,
  atom: Atom,
  sum: Sum,
): readonly Slip[] | undefined {
  const worth = worthOf(atom);
  const atoms = [atom];
  const turned = worth !== 0 && Math.sign(written) !== Math.sign(worth);
  const sign: readonly Slip[] = turned
    ? [{ kind: 'sign', cost: costs.sign - 0.1, term, atoms }]
    : [];
  const ratio = worth === 0 ? 0 : Math.abs(written / worth);
  const conversion = conversions.find(
    (factor) => isNear(ratio, factor) || isNear(ratio, 1 / factor),
  );
  if (conversion !== undefined)
    return [...sign, { kind: 'unit', cost: costs.unit, term, atoms, taken: ratio }];
  const own =
    sum.kind === 'moments' && atom.quantity === 'force'
      ? armSlip(term, written, atom)
      : sizeSlip(term, written, atom);
  return own === undefined ? undefined : [...sign, own];
}

/** A moment of a force: the arm is another, or the force. */
function armSlip(term: WorkerTerm, written: number, atom: Atom): Slip | undefined {
  const { size, factor, what } = atom;
  const isSpread = what.kind === 'load' && what.resultant !== undefined;
  for (const arm of armsOf(term)) {
    const force = Math.abs(written) / arm;
    if (isClose(force, Math.abs(size)) && !isNear(arm, Math.abs(factor))) {
      const kind = isSpread ? 'resultant' : 'lever-arm';
      const cost = isSpread ? costs.resultant : costs.arm;
      return { kind, cost, term, atoms: [atom], taken: arm };
    }
  }
  for (const arm of armsOf(term)) {
    if (!isNear(arm, Math.abs(factor))) continue;
    return magnitudeSlip(term, Math.abs(written) / arm, atom);
  }
  return undefined;
}

function sizeSlip(term: WorkerTerm, written: number, atom: Atom): Slip | undefined {
  const factor = Math.abs(atom.factor);
  return factor < 1e-9
    ? undefined
    : magnitudeSlip(term, Math.abs(written) / factor, atom);
}

/** Half or twice a resultant is a slip of its shape; any other size is another load. */
function magnitudeSlip(term: WorkerTerm, taken: number, atom: Atom): Slip {
  const ratio = taken / Math.abs(atom.size);
  const isShape =
    atom.what.kind === 'load' &&
    atom.what.resultant !== undefined &&
    [2, 0.5].some((factor) => isNear(ratio, factor));
  return isShape
    ? { kind: 'resultant', cost: costs.resultant, term, atoms: [atom], taken }
    : { kind: 'magnitude', cost: costs.magnitude, term, atoms: [atom], taken };
}

/** Every length that a term may mean as its arm: a length as written, or a share of one. */
export function armsOf({ parts }: WorkerTerm): readonly number[] {
  const lengths = parts.filter(
    ({ dimension, power }) =>
      power > 0 && dimension?.length === 1 && dimension.force === 0,
  );
  const share = parts
    .filter(({ dimension }) => dimension?.length === 0 && dimension.force === 0)
    .reduce((product, { size, power }) => product * size ** power, 1);
  const arms = lengths.flatMap(({ size }) => [size, size * share]);
  return [...new Set(arms)].filter((arm) => arm > 0);
}
