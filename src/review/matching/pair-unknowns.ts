import type { Sum } from '../../statics/index.ts';
import type { Atom } from './atoms.ts';
import { isNear } from './closeness.ts';
import { conversionIn } from './conversions.ts';
import { costs, priceOfUnit, type Slip } from './slips.ts';
import type { WorkerTerm } from './worker-terms.ts';

/** The unknowns of a line, paired with those of the sum by their names. */
export interface PairedUnknowns {
  readonly slips: readonly Slip[];
  /** Ids of the atoms that stand in the line by name. */
  readonly used: ReadonlySet<string>;
}

/** Pairs the unknowns of a line, at a scale, with those that act; one that does not is extra. */
export function pairUnknowns(
  terms: readonly WorkerTerm[],
  atoms: readonly Atom[],
  { scale, sum }: { readonly scale: number; readonly sum: Sum },
): PairedUnknowns {
  const shares = new Map<string, { share: number; term: WorkerTerm }>();
  for (const term of terms) {
    if (term.unknown === undefined) continue;
    const { key, share } = term.unknown;
    const before = shares.get(key);
    shares.set(key, {
      share: (before?.share ?? 0) + share / scale,
      term: before?.term ?? term,
    });
  }
  const used = new Set<string>();
  const slips = [...shares].flatMap(([key, { share, term }]): readonly Slip[] => {
    const atom = atoms.find((one) => one.key === key);
    if (atom === undefined)
      return [{ kind: 'extra-term', cost: costs.extra, term, atoms: [] }];
    used.add(atom.id);
    return shareSlips(share, term, { atom, sum });
  });
  return { slips, used };
}

function shareSlips(
  share: number,
  term: WorkerTerm,
  { atom, sum }: { readonly atom: Atom; readonly sum: Sum },
): readonly Slip[] {
  const [taken, belongs] = [Math.abs(share), Math.abs(atom.factor)];
  const atoms = [atom];
  const isSize = isNear(taken, belongs) || (taken === 0 && belongs <= 1e-9);
  const turned = (cost: number): readonly Slip[] =>
    share * atom.factor < 0 ? [{ kind: 'sign', cost, term, atoms }] : [];
  if (isSize) return turned(costs.sign);
  const also = turned(costs.signToo);
  const ratio = belongs === 0 ? 0 : taken / belongs;
  const conversion = conversionIn(ratio);
  if (conversion !== undefined) {
    const cost = priceOfUnit(conversion);
    return [...also, { kind: 'unit', cost, term, atoms, taken: ratio }];
  }
  const hasArm = sum.kind === 'moments' && atom.quantity === 'force';
  // A force square to the sum has no part in it.
  if (!hasArm && belongs <= 1e-9)
    return [{ kind: 'extra-term', cost: costs.extra, term, atoms }];
  // Of a couple, and in a sum of forces, an unknown stands whole or with its share across.
  const of = { term, atoms, taken, belongs } as const;
  // What passes through the point has no term in the sum.
  const kind = belongs <= 1e-9 ? 'extra-term' : 'lever-arm';
  return hasArm
    ? [...also, { kind, cost: costs.arm, measure: 'arm', ...of }]
    : [...also, { kind: 'magnitude', cost: costs.magnitude, measure: 'share', ...of }];
}
