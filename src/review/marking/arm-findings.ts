import type { MarkingContext } from '../marking-context.ts';
import type { Atom } from '../matching/atoms.ts';
import { isNear } from '../matching/closeness.ts';
import type { Slip } from '../matching/slips.ts';
import type { Finding } from '../verdict.ts';
import { placeWords, words } from './phrases.ts';
import { aboutWords, capital, namesOf, orElse, type Speech } from './speech.ts';

/**
 * A wrong arm in words: the right one, and the point that it was measured from, where one explains
 * it. A resultant that stands wrongly on its own base may be either: both are said.
 */
export function armFindings(slip: Slip, speech: Speech): readonly Finding[] {
  const { context } = speech;
  const [atom] = slip.atoms;
  const { taken = 0 } = slip;
  if (atom === undefined)
    return [{ kind: 'lever-arm', message: 'The arm is another one.' }];
  const from = measuredFrom(context, atom, taken);
  const arm: Finding = { kind: 'lever-arm', message: armWords(slip, speech, from) };
  const resultant = atom.what.kind === 'load' ? atom.what.resultant : undefined;
  if (resultant === undefined) return [arm];
  const place: Finding = {
    kind: 'resultant',
    message: misplacedWords(slip, speech, atom),
  };
  if (from === undefined) return [place];
  return isOnBase(taken, resultant, speech) ? [place, orElse(arm)] : [arm];
}

/** True where a resultant at such a distance from the point would stand on its base. */
function isOnBase(
  taken: number,
  { from, to }: { readonly from: number; readonly to: number },
  { claim: { sum } }: Speech,
): boolean {
  if (sum.kind !== 'moments') return false;
  const room = 1e-6 * (to - from);
  return [sum.about - taken, sum.about + taken].some(
    (x) => x >= from - room && x <= to + room,
  );
}

function armWords(slip: Slip, speech: Speech, from: string | undefined): string {
  const { context, claim } = speech;
  const { taken = 0, belongs = 0 } = slip;
  const reads = words(context, 'length', taken);
  const why =
    from === undefined
      ? `${reads} is not its arm`
      : `${reads} is measured from ${from}`;
  return `${capital(why)}; about ${aboutWords(claim)} the arm of ${namesOf(slip, speech)} is ${words(context, 'length', belongs)}.`;
}

/** A moment of what passes through the point, in words. */
export function throughWords(slip: Slip, speech: Speech): string {
  const { context, claim } = speech;
  const [atom] = slip.atoms;
  const { taken = 0 } = slip;
  const from = atom === undefined ? undefined : measuredFrom(context, atom, taken);
  const why =
    from === undefined
      ? ''
      : `; ${words(context, 'length', taken)} is measured from ${from}`;
  return `${capital(namesOf(slip, speech))} passes through ${aboutWords(claim)} and has no moment there${why}.`;
}

/** The right resultant at the wrong place. */
function misplacedWords(
  { taken = 0, belongs = 0 }: Slip,
  { context, claim }: Speech,
  { what, x }: Atom,
): string {
  const resultant = what.kind === 'load' ? what.resultant : undefined;
  const shape = resultant?.shape ?? 'load';
  const stretch =
    resultant === undefined
      ? ''
      : ` from ${placeWords(context, resultant.from)} to ${placeWords(context, resultant.to)}`;
  const place = {
    rectangle: 'the middle of its base',
    triangle: 'a third of its base from the greater end',
    trapezoid: 'the centroid of its area',
    load: 'the centroid of its area',
  }[shape];
  const at = placeWords(context, x);
  const arm = words(context, 'length', belongs);
  return `The resultant of the ${shape}${stretch} has the right size but acts at ${place} (${at}): about ${aboutWords(claim)} its arm is ${arm}, not ${words(context, 'length', taken)}.`;
}

/** The point from which a distance was taken, where one explains it. */
function measuredFrom(
  { structure }: MarkingContext,
  { x }: Atom,
  taken: number,
): string | undefined {
  return structure.points.find((point) => isNear(Math.abs(x - point.x), taken))?.name;
}
