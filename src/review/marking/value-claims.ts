import {
  dimension,
  dimensions,
  type Dimension,
  type Display,
} from '../../units/index.ts';
import { jumpsOf, valueAt, wholeOf, zerosOf } from '../../statics/index.ts';
import type { CutPart, Extreme, Piecewise, Sum } from '../../statics/index.ts';
import { stationOf, type MarkingContext } from '../marking-context.ts';
import { nameMeaning, type NameMeaning } from '../names/name-meanings.ts';
import { readLength } from '../names/read-length.ts';
import type { Candidate } from './mark-equation.ts';
import { cutMeaning } from './worker.ts';

/** One thing that a value step may be taken for: what it is with its truth, and the sums that could give it. */
export interface ValueReading {
  readonly meaning: NameMeaning;
  readonly candidates: readonly Candidate[];
  readonly takesMagnitude: boolean;
  /** The sense that a conclusion must name to be taken for this; absent where it need not. */
  readonly sense?: 'sagging' | 'hogging';
}

/**
 * Reads what a value step works: several readings where it can be taken several ways (both sides of
 * a jump, the greatest moment and the greatest sagging one), the likeliest first. A text says why
 * it is none.
 */
export function readValueClaim(
  context: MarkingContext,
  text: string,
): readonly ValueReading[] | string {
  for (const read of [cutForce, extreme, zeroShear, deflection, slope, named]) {
    const found = read(context, text);
    if (found !== undefined) return found;
  }
  return `\`${text}\` is no value that can be marked: write moment, shear or axial at a station, maximum moment, deflection or slope at a station, station of zero shear, reaction B up or resultant of D`;
}

type ClaimReader = (
  context: MarkingContext,
  text: string,
) => readonly ValueReading[] | string | undefined;

type Force = 'moment' | 'shear' | 'axial';

const cutForce: ClaimReader = (context, text) => {
  const found = /^(moment|shear|axial)(?: force)? (?:at|(left|right) of) (.+)$/u.exec(
    text,
  );
  if (found === null) return undefined;
  const [, force = 'moment', side, place = ''] = found;
  const x = stationOf(context, place, readLength);
  if (x === undefined) return noPlace(place);
  const sides = side === undefined ? sidesAt(context, x) : [side as Side];
  const of = force as Force;
  const readings = sides.map((one): ValueReading => ({
    meaning: cutMeaning(context, of, { x, side: one }),
    candidates: cutCandidates(context, of, { x, side: one }),
    takesMagnitude: true,
  }));
  const [left, right] = readings;
  // Where nothing jumps, what stands at the cut may be counted to either side of it.
  const isOne = left !== undefined && isSameUnknown(left.meaning, right?.meaning);
  if (!isOne) return readings;
  return [{ ...left, candidates: readings.flatMap(({ candidates }) => candidates) }];
};

type Side = 'left' | 'right';

/** The sides of a station that the member is on. */
function sidesAt({ structure }: MarkingContext, x: number): readonly Side[] {
  const { from, to } = wholeOf(structure);
  if (x <= from) return ['right'];
  return x >= to ? ['left'] : ['left', 'right'];
}

function isSameUnknown(one: NameMeaning, other: NameMeaning | undefined): boolean {
  return one.kind === 'unknown' && other?.kind === 'unknown' && one.key === other.key;
}

/** The sums of the part on the left and of the part on the right of a cut. */
function cutCandidates(
  { structure }: MarkingContext,
  force: Force,
  cut: { readonly x: number; readonly side: Side },
): readonly Candidate[] {
  const sum: Sum =
    force === 'moment'
      ? { kind: 'moments', about: cut.x }
      : { kind: 'forces', along: force === 'shear' ? 'y' : 'x' };
  const about = structure.points.find(({ x }) => x === cut.x)?.name ?? 'the cut';
  const claim = { sum, ...(force === 'moment' ? { about } : {}) };
  const { from, to } = wholeOf(structure);
  const parts: readonly CutPart[] = [
    ...(cut.x > from || cut.side === 'right' ? [{ to: cut }] : []),
    ...(cut.x < to || cut.side === 'left' ? [{ from: cut }] : []),
  ];
  // Signs at a cut: what turns clockwise on the left part bends it to sag.
  return parts.map((part) => ({
    claim,
    parts: [part],
    sense: part.to === undefined ? 1 : -1,
  }));
}

const couple = dimension({ force: 1, length: 1 });

const extreme: ClaimReader = (context, text) => {
  const found =
    /^(maximum|greatest|minimum|least) (?:(sagging|hogging) )?(moment|shear)$/u.exec(
      text,
    );
  if (found === null) return undefined;
  const [, word = '', sense, what = 'moment'] = found;
  const force = what as 'moment' | 'shear';
  const { max, min } = context.result.extremes[force];
  const isLeast = word === 'minimum' || word === 'least';
  const reading = ({ value, x }: Extreme, name: string): ValueReading => ({
    meaning: {
      kind: 'unknown',
      key: `extreme ${name}${force}`,
      dimension: force === 'moment' ? couple : dimensions.force,
      share: 1,
      truth: value,
    },
    candidates: (['left', 'right'] as const).flatMap((side) =>
      cutCandidates(context, force, { x, side }),
    ),
    takesMagnitude: true,
  });
  if (sense !== undefined) return [reading(sense === 'sagging' ? max : min, sense)];
  const isMin = isLeast || Math.abs(min.value) > max.value + 1e-12;
  const greatest = reading(isMin ? min : max, '');
  if (force === 'shear' || isLeast) return [greatest];
  return [
    greatest,
    { ...reading(max, 'sagging '), sense: 'sagging' },
    { ...reading(min, 'hogging '), sense: 'hogging' },
  ];
};

const zeroShear: ClaimReader = ({ result }, text) => {
  if (!/^(?:station|place|point) of zero shear$/u.test(text)) return undefined;
  const stations = zerosOf(result.shear).map((zero) =>
    'x' in zero ? zero.x : zero.from,
  );
  if (stations.length === 0) return 'the shear of this member is nowhere 0';
  return stations.map((x) => plain(text, dimensions.length, x));
};

const unknownShape = 'this member has no E or I, so how it bends is not known';

const deflection: ClaimReader = (context, text) => {
  const found = /^(?:deflection at (.+)|maximum deflection)$/u.exec(text);
  if (found === null) return undefined;
  const { displacement } = context.result;
  if (displacement === undefined) return unknownShape;
  const [, place] = found;
  if (place === undefined) {
    const { max, min } = displacement.extremes;
    const greatest = Math.abs(min.value) > max.value ? min.value : max.value;
    return [plain(text, dimensions.length, greatest, 'deflection')];
  }
  const x = stationOf(context, place, readLength);
  if (x === undefined) return noPlace(place);
  return [
    plain(
      text,
      dimensions.length,
      valueAt(displacement.deflection, x, 'left'),
      'deflection',
    ),
  ];
};

const slope: ClaimReader = (context, text) => {
  const found = /^(?:slope|rotation) (?:at|(left|right) of) (.+)$/u.exec(text);
  if (found === null) return undefined;
  const { displacement } = context.result;
  if (displacement === undefined) return unknownShape;
  const [, side, place = ''] = found;
  const x = stationOf(context, place, readLength);
  if (x === undefined) return noPlace(place);
  const sides =
    side !== undefined
      ? [side as Side]
      : hasJump(displacement.slope, x)
        ? sidesAt(context, x)
        : sidesAt(context, x).slice(0, 1);
  return sides.map((one) =>
    plain(text, dimensions.pure, valueAt(displacement.slope, x, one), 'direction'),
  );
};

function hasJump(of: Piecewise, x: number): boolean {
  return jumpsOf(of).some((jump) => jump.x === x);
}

const named: ClaimReader = (context, text) => {
  const { meaning } = nameMeaning(context, text);
  if (meaning === undefined) return undefined;
  if (meaning.kind === 'known')
    return [{ ...plain(text, meaning.dimension, meaning.si), takesMagnitude: true }];
  const { structure } = context;
  const about = [...structure.supports, ...structure.points].map(({ x }) => x);
  const ofForces = (along: 'x' | 'y'): Candidate => ({
    claim: { sum: { kind: 'forces', along }, sense: 1 },
    parts: [{}],
    sense: 1,
  });
  const ofMoments = (x: number): Candidate => ({
    claim: {
      sum: { kind: 'moments', about: x },
      about: structure.points.find((point) => point.x === x)?.name ?? 'the point',
    },
    parts: [{}],
    sense: 1,
  });
  const candidates = [...about.map(ofMoments), ofForces('y'), ofForces('x')];
  return [{ meaning, candidates, takesMagnitude: false }];
};

function noPlace(place: string): string {
  return `there is no place ${place} on this member`;
}

/** A value that no sum of forces gives: judged as a number alone. */
function plain(
  text: string,
  of: Dimension,
  truth: number,
  shownAs?: Display,
): ValueReading {
  const shown = shownAs === undefined ? {} : { shownAs };
  const key = `value ${text}`;
  return {
    meaning: { kind: 'unknown', key, dimension: of, share: 1, truth, ...shown },
    candidates: [],
    takesMagnitude: true,
  };
}
