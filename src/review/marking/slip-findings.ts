import { worthOf, type Atom } from '../matching/atoms.ts';
import type { Slip } from '../matching/slips.ts';
import type { Finding } from '../verdict.ts';
import { armFindings, throughWords } from './arm-findings.ts';
import { roundingFinding, sizeFinding } from './size-findings.ts';
import { aboutWords, capital, namesOf, partWords, type Speech } from './speech.ts';
import { placeWords, words } from './phrases.ts';
import type { SumClaim } from './read-claim.ts';
import { aboutSlip, type SlipFinding } from './same-slip.ts';

/** The slips of an explanation in words for whoever wrote the line: what was written, what belongs there, and why. */
export function slipFindings(
  slips: readonly Slip[],
  speech: Speech,
): readonly SlipFinding[] {
  return slips.flatMap((slip) => {
    const about = aboutSlip(slip, speech.claim);
    const term = slip.term === undefined ? {} : { term: slip.term.text };
    return findingsOf(slip, speech).map(({ kind, message }) => ({
      kind,
      ...term,
      message,
      about,
    }));
  });
}

function findingsOf(slip: Slip, speech: Speech): readonly Finding[] {
  switch (slip.kind) {
    case 'sign':
      return [signFinding(slip, speech)];
    case 'lever-arm':
      return armFindings(slip, speech);
    case 'resultant':
      return slip.measure === 'arm'
        ? armFindings(slip, speech)
        : [sizeFinding(slip, speech)];
    case 'magnitude':
      return [sizeFinding(slip, speech)];
    case 'rounding':
      return [roundingFinding(slip, speech)];
    case 'unit':
      return [unitFinding(slip, speech)];
    case 'missing-term':
      return [missingFinding(slip, speech)];
    case 'extra-term':
      return [extraFinding(slip, speech)];
  }
}

function signFinding(slip: Slip, speech: Speech): Finding {
  const { claim, sense } = speech;
  const { atoms, term } = slip;
  const worth = atoms.reduce((sum, atom) => sum + signedWorth(atom), 0);
  const acts = turnWords(claim, worth, atoms.length > 1);
  const onSide = term?.side === 'right' ? -1 : 1;
  const sign = worth * sense * onSide < 0 ? 'minus' : 'plus';
  const where =
    term?.side === 'right'
      ? 'on the right of the equals sign'
      : `with ${senseWords(claim, sense)} positive`;
  const whose = atoms.length > 1 ? 'their' : 'its';
  return {
    kind: 'sign',
    message: `${capital(namesOf(slip, speech))} ${acts}; ${where} ${whose} sign is ${sign}.`,
  };
}

/** An unknown is drawn in its positive sense: its sign is that of its arm. */
function signedWorth(atom: Atom): number {
  return atom.key === undefined ? worthOf(atom) : atom.factor;
}

/** The sense that a worker counts positive, in words. */
export function senseWords({ sum }: SumClaim, sense: 1 | -1): string {
  if (sum.kind === 'moments') return sense === 1 ? 'counterclockwise' : 'clockwise';
  if (sum.along === 'x') return sense === 1 ? 'right' : 'left';
  return sense === 1 ? 'up' : 'down';
}

function turnWords(claim: SumClaim, worth: number, areSeveral: boolean): string {
  const s = areSeveral ? '' : 's';
  const so = areSeveral ? 'together ' : '';
  const { sum } = claim;
  if (sum.kind === 'moments')
    return `${so}turn${s} ${worth < 0 ? 'clockwise' : 'counterclockwise'} about ${aboutWords(claim)}`;
  if (sum.along === 'x') return `${so}act${s} to the ${worth < 0 ? 'left' : 'right'}`;
  return `${so}act${s} ${worth < 0 ? 'down' : 'up'}`;
}

/** What a factor tells of the units that were mixed, where it does. */
const mixedUnits: readonly (readonly [factor: number, units: string])[] = [
  [12, 'feet and inches'],
  [144, 'square feet and square inches'],
  [1000, 'kip and lb, or kN and N'],
  [4.448222, 'pounds and newtons'],
  [0.3048, 'feet and metres'],
  [1.355818, 'foot-pounds and newton metres'],
];

function unitFinding(slip: Slip, speech: Speech): Finding {
  const { taken: ratio = 1 } = slip;
  const mixed = mixedUnits.find(([factor]) =>
    [factor, 1 / factor].some((one) => Math.abs(ratio / one - 1) < 2e-3),
  );
  const units = mixed === undefined ? 'a unit' : mixed[1];
  const was =
    mixed === undefined
      ? 'was not converted, or converted twice'
      : 'look as if they were mixed';
  return {
    kind: 'unit',
    message: `This is ${ratioWords(ratio)} what ${namesOf(slip, speech)} gives: ${units} ${was}.`,
  };
}

function ratioWords(ratio: number): string {
  const round = (value: number): string => String(Number(value.toPrecision(4)));
  return ratio >= 1 ? `${round(ratio)} times` : `1/${round(1 / ratio)} of`;
}

function missingFinding(slip: Slip, speech: Speech): Finding {
  const { context, claim } = speech;
  const [atom, ...others] = slip.atoms;
  const hasArm =
    atom !== undefined && claim.sum.kind === 'moments' && atom.quantity === 'force';
  const arm =
    hasArm && others.length === 0
      ? `, with an arm of ${words(context, 'length', Math.abs(atom.factor))} about ${aboutWords(claim)},`
      : '';
  return {
    kind: 'missing-term',
    message: `${capital(wholeName(slip, speech))} acts on ${partWords(speech)}${arm} and is left out.`,
  };
}

/** All shapes of one load are one load. */
function wholeName(slip: Slip, speech: Speech): string {
  const [first] = slip.atoms;
  const stretch = slip.atoms.flatMap(({ what }) =>
    what.kind === 'load' && what.resultant !== undefined ? [what.resultant] : [],
  );
  if (first === undefined || stretch.length < 2) return namesOf(slip, speech);
  const from = Math.min(...stretch.map((one) => one.from));
  const to = Math.max(...stretch.map((one) => one.to));
  return `the distributed load from ${placeWords(speech.context, from)} to ${placeWords(speech.context, to)}`;
}

function extraFinding(slip: Slip, speech: Speech): Finding {
  const { claim } = speech;
  const { atoms, term } = slip;
  const part = partWords(speech);
  if (slip.measure === 'arm')
    return { kind: 'extra-term', message: throughWords(slip, speech) };
  if (atoms.length > 0)
    return {
      kind: 'extra-term',
      message: `${capital(namesOf(slip, speech))} acts square to this sum and has no part in it.`,
    };
  return {
    kind: 'extra-term',
    message:
      term?.unknown === undefined
        ? `Nothing that acts on ${part} gives this term${claim.sum.kind === 'moments' ? ` about ${aboutWords(claim)}` : ''}.`
        : `This force does not act on ${part}, so it has no place in the sum.`,
  };
}
