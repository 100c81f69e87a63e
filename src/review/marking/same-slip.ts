import type { Atom } from '../matching/atoms.ts';
import type { Slip } from '../matching/slips.ts';
import type { Finding } from '../verdict.ts';
import type { SumClaim } from './read-claim.ts';

/** A finding with what its slip is, apart from the sum that it was made in. */
export interface SlipFinding extends Finding {
  /** Two slips that share one of these are one slip made again: the same load forgotten, taken at the same wrong place, out by the same factor. */
  readonly about?: readonly string[];
}

/** What a slip is, in texts to compare with those of a slip in another sum. */
export function aboutSlip(slip: Slip, { sum }: SumClaim): readonly string[] {
  const { kind, measure, atoms, taken = 0 } = slip;
  if (atoms.length === 0) return [`${kind} ${writtenIn(slip)}`];
  const what = `${kind} ${[...new Set(atoms.map(thingOf))].sort().join(' and ')}`;
  if (measure !== 'arm' || sum.kind !== 'moments') return [`${what} ${outBy(slip)}`];
  // The arm differs from point to point; the place where the force was taken to act does not.
  return [sum.about - taken, sum.about + taken].map(
    (x) => `${what} at ${(x + 0).toFixed(3)}`,
  );
}

/** What a term is that nothing gives. */
function writtenIn({ term }: Slip): string {
  return term?.unknown?.key ?? term?.text ?? '';
}

/** The factor that a size is out by, which is the same in every sum. */
function outBy({ kind, taken, belongs }: Slip): string {
  if (taken === undefined) return '';
  if (kind === 'unit') return taken.toPrecision(3);
  return belongs === undefined || belongs === 0 ? '' : (taken / belongs).toPrecision(3);
}

function thingOf({ what, id }: Atom): string {
  return what.kind === 'load' ? `load ${what.id}` : id;
}

/** True where two findings tell of one slip made twice. */
export function isSameSlip(one: SlipFinding, other: SlipFinding): boolean {
  const { about = [] } = other;
  return one.kind === other.kind && (one.about ?? []).some((of) => about.includes(of));
}
