import type { Finding } from '../verdict.ts';
import type { MarkingContext } from '../marking-context.ts';
import { worthOf, type Atom } from '../matching/atoms.ts';
import { isSame } from '../matching/closeness.ts';
import type { Slip } from '../matching/slips.ts';
import type { SumClaim } from './read-claim.ts';
import { atomWords, placeWords, words } from './phrases.ts';
import type { Conclusion } from './worker.ts';

/** What findings speak of besides the slips. */
export interface Speech {
  readonly context: MarkingContext;
  readonly claim: SumClaim;
  /** 1 where the worker counts as the solver does. */
  readonly sense: 1 | -1;
  readonly concluded: ReadonlyMap<string, Conclusion>;
}

/** The slips of an explanation in words for whoever wrote the line: what was written, what belongs there, and why. */
export function slipFindings(
  slips: readonly Slip[],
  speech: Speech,
): readonly Finding[] {
  return slips.map((slip) => {
    const term = slip.term === undefined ? {} : { term: slip.term.text };
    return { ...findingOf(slip, speech), ...term };
  });
}

function findingOf(slip: Slip, speech: Speech): Finding {
  switch (slip.kind) {
    case 'sign':
      return signFinding(slip, speech);
    case 'lever-arm':
      return armFinding(slip, speech);
    case 'resultant':
      return resultantFinding(slip, speech);
    case 'magnitude':
      return magnitudeFinding(slip, speech);
    case 'unit':
      return {
        kind: 'unit',
        message: `This is ${ratioWords(slip.taken ?? 0)} what ${nameOf(slip, speech)} gives: a unit was not converted, or converted twice.`,
      };
    case 'missing-term':
      return missingFinding(slip, speech);
    case 'extra-term':
      return {
        kind: 'extra-term',
        message: `Nothing on this part gives this term${slip.term?.unknown === undefined ? '' : '; that force acts elsewhere'}.`,
      };
  }
}

function nameOf({ atoms }: Slip, { context }: Speech): string {
  const [first, ...others] = atoms.map((atom) => atomWords(context, atom));
  return others.length === 0 ? (first ?? 'it') : [first, ...others].join(' and ');
}

function signFinding(slip: Slip, speech: Speech): Finding {
  const { claim, sense } = speech;
  const [atom] = slip.atoms;
  const positive = senseWords(claim, sense);
  const truly = atom === undefined ? '' : turnWords(claim, atom);
  return {
    kind: 'sign',
    message: `${capital(nameOf(slip, speech))} ${truly}; with ${positive} positive its sign is ${signOf(atom, sense)}.`,
  };
}

function signOf(atom: Atom | undefined, sense: 1 | -1): string {
  // An unknown is drawn in its positive sense: its sign is that of its arm.
  const worth =
    atom === undefined ? 0 : atom.key === undefined ? worthOf(atom) : atom.factor;
  return worth * sense < 0 ? 'minus' : 'plus';
}

/** The sense that a worker counts positive, in words. */
export function senseWords({ sum }: SumClaim, sense: 1 | -1): string {
  if (sum.kind === 'moments') return sense === 1 ? 'counterclockwise' : 'clockwise';
  if (sum.along === 'x') return sense === 1 ? 'right' : 'left';
  return sense === 1 ? 'up' : 'down';
}

function turnWords({ sum, about }: SumClaim, atom: Atom): string {
  const worth = atom.key === undefined ? worthOf(atom) : atom.factor;
  if (sum.kind === 'moments')
    return `turns ${worth < 0 ? 'clockwise' : 'counterclockwise'} about ${about ?? 'this point'}`;
  if (sum.along === 'x') return `acts to the ${worth < 0 ? 'left' : 'right'}`;
  return `acts ${worth < 0 ? 'down' : 'up'}`;
}

function armFinding(slip: Slip, speech: Speech): Finding {
  const { context, claim } = speech;
  const [atom] = slip.atoms;
  const taken = slip.taken ?? 0;
  if (atom === undefined) return { kind: 'lever-arm', message: 'The arm is another.' };
  const about = claim.about ?? 'the point';
  const right = Math.abs(atom.factor);
  const reads = words(context, 'length', taken);
  const from = measuredFrom(context, atom, taken);
  const why =
    from === undefined
      ? `${reads} is not its arm`
      : `${reads} is measured from ${from}`;
  const belongs =
    right === 0
      ? `${capital(nameOf(slip, speech))} passes through ${about} and has no moment there`
      : `about ${about} the arm of ${nameOf(slip, speech)} is ${words(context, 'length', right)}`;
  return { kind: 'lever-arm', message: `${capital(why)}; ${belongs}.` };
}

/** The named point that a wrong arm was measured from, where one explains it. */
function measuredFrom(
  { structure }: MarkingContext,
  atom: Atom,
  taken: number,
): string | undefined {
  return structure.points.find(({ x }) => isSame(Math.abs(atom.x - x), taken))?.name;
}

function resultantFinding(slip: Slip, speech: Speech): Finding {
  const { context, claim } = speech;
  const [atom] = slip.atoms;
  const resultant = atom?.what.kind === 'load' ? atom.what.resultant : undefined;
  if (atom === undefined || resultant === undefined)
    return { kind: 'resultant', message: 'The resultant is another.' };
  const { shape, from, to } = resultant;
  const stretch = `the ${shape} from ${placeWords(context, from)} to ${placeWords(context, to)}`;
  const isPlace = claim.sum.kind === 'moments' && !hasRightArm(slip, atom);
  return isPlace
    ? placeFinding(slip, speech, { atom, shape, stretch })
    : {
        kind: 'resultant',
        message: `The resultant of ${stretch} is its area, ${words(context, 'force', Math.abs(atom.size))}, not ${words(context, 'force', slip.taken ?? 0)}.`,
      };
}

/** The right resultant at the wrong place; the point that its arm was measured from, where one explains it. */
function placeFinding(
  { taken = 0 }: Slip,
  { context, claim }: Speech,
  of: { readonly atom: Atom; readonly shape: string; readonly stretch: string },
): Finding {
  const arm = words(context, 'length', Math.abs(of.atom.factor));
  const place =
    of.shape === 'rectangle'
      ? 'the middle of its base'
      : 'a third of its base from the greater end';
  const other = measuredFrom(context, of.atom, taken);
  const why =
    other === undefined
      ? ''
      : ` ${words(context, 'length', taken)} is measured from ${other}.`;
  return {
    kind: other === undefined ? 'resultant' : 'lever-arm',
    message: `The resultant of ${of.stretch} has the right size but acts at ${place}: about ${claim.about ?? 'the point'} its arm is ${arm}.${why}`,
  };
}

// A slip of size carries a force, a slip of place a length: the taken value fits one of them.
function hasRightArm({ taken = 0, term, cost }: Slip, atom: Atom): boolean {
  const ratio = taken / Math.abs(atom.size);
  return cost > 0 && term !== undefined && (isSame(ratio, 2) || isSame(ratio, 0.5));
}

function magnitudeFinding(slip: Slip, speech: Speech): Finding {
  const { context, concluded } = speech;
  const [atom] = slip.atoms;
  if (atom === undefined) return { kind: 'magnitude', message: 'The size is another.' };
  const what = atom.quantity === 'couple' ? 'moment' : 'force';
  const taken = words(context, what, slip.taken ?? 0);
  const own = atom.key === undefined ? undefined : concluded.get(atom.key);
  if (own !== undefined)
    return {
      kind: 'carried',
      message: `Step ${own.step} concluded ${words(context, what, own.value)} for ${nameOf(slip, speech)}; here it is ${taken}.`,
    };
  const right = words(context, what, Math.abs(atom.size));
  return {
    kind: 'magnitude',
    message: `${capital(nameOf(slip, speech))} is ${right}, not ${taken}.`,
  };
}

function missingFinding(slip: Slip, speech: Speech): Finding {
  const { context, claim } = speech;
  const [atom] = slip.atoms;
  const arm =
    atom === undefined || claim.sum.kind === 'forces' || atom.quantity === 'couple'
      ? ''
      : ` with an arm of ${words(context, 'length', Math.abs(atom.factor))} about ${claim.about ?? 'the point'}`;
  return {
    kind: 'missing-term',
    message: `${capital(nameOf(slip, speech))} acts on this part${arm} and is left out.`,
  };
}

function ratioWords(ratio: number): string {
  const round = (value: number): string => String(Number(value.toPrecision(4)));
  return ratio >= 1 ? `${round(ratio)} times` : `1/${round(1 / ratio)} of`;
}

/** A sentence begins with a capital. */
export function capital(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
}
