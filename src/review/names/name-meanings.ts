import {
  dimension,
  dimensions,
  type Dimension,
  type Display,
} from '../../units/index.ts';
import {
  intensityAt,
  resultantsOf,
  type DistributedLoad,
} from '../../statics/index.ts';
import { cutForceAt, type CutForceName } from '../cut-keys.ts';
import { reactionKey } from '../reaction-key.ts';
import { stationOf, type MarkingContext } from '../marking-context.ts';
import type { Meaning } from '../reading/linear-form.ts';
import { findLoad } from './find-load.ts';
import { placeWords, words } from '../marking/phrases.ts';
import { factorOf, type FoundLoad } from './loads-at.ts';
import { readLength } from './read-length.ts';

/** A name's meaning, with the true value in SI of one of it. */
export type NameMeaning = Exclude<Meaning, { readonly kind: 'unclear' }> & {
  readonly truth: number;
  /** What it is shown as, where its dimension does not say: a deflection is no span. */
  readonly shownAs?: Display;
};

/** What a declared name stands for, or why that cannot be told, in words. */
export type ReadName =
  | { readonly meaning: NameMeaning; readonly problem?: undefined }
  | { readonly problem: string; readonly meaning?: undefined };

const couple = dimension({ force: 1, length: 1 });

/**
 * Reads what a worker's symbol stands for: `reaction A up`, `shear left of H`, `load L at B`,
 * `resultant of D from A to B`, `intensity D at A`, `length A to B`, `modulus`, `inertia`, `area`.
 */
export function nameMeaning(context: MarkingContext, means: string): ReadName {
  const text = means.trim().replace(/\s+/gu, ' ');
  for (const read of [
    reaction,
    cutForce,
    load,
    resultant,
    intensity,
    length,
    property,
  ]) {
    const found = read(context, text);
    if (found !== undefined) return found;
  }
  return { problem: `\`${text}\` names nothing of this member` };
}

type Reader = (context: MarkingContext, text: string) => ReadName | undefined;

function known(si: number, of: Dimension): ReadName {
  return { meaning: { kind: 'known', si, dimension: of, truth: si } };
}

const senses: Readonly<Record<string, readonly [number, number]>> = {
  up: [0, 1],
  down: [0, -1],
  right: [1, 0],
  left: [-1, 0],
};

const reaction: Reader = ({ structure, result }, text) => {
  const found =
    /^reaction(?: at| of)? (\S+) (up|down|left|right|normal|counterclockwise|clockwise)$/u.exec(
      text,
    );
  if (found === null) return undefined;
  const [, point = '', sense = ''] = found;
  const at = structure.supports.findIndex((support) => support.point === point);
  const support = structure.supports[at];
  if (support === undefined) return { problem: `there is no support at ${point}` };
  const turns = sense === 'clockwise' || sense === 'counterclockwise';
  for (const [index, restraint] of support.restraints.entries()) {
    const share = shareOf(restraint, sense);
    if (share === 0) continue;
    const value = result.reactions[at]?.components[index] ?? 0;
    // The symbol is so much of the unknown: an inclined reaction's part along y is its sine.
    const of = turns ? couple : dimensions.force;
    const key = reactionKey(point, index);
    return {
      meaning: { kind: 'unknown', key, dimension: of, share, truth: share * value },
    };
  }
  // A support that gives nothing in this sense gives 0: a true statement, and easily meant.
  return known(0, turns ? couple : dimensions.force);
};

function shareOf(
  restraint: MarkingContext['structure']['supports'][number]['restraints'][number],
  sense: string,
): number {
  if (restraint.kind === 'moment')
    return sense === 'counterclockwise' ? 1 : sense === 'clockwise' ? -1 : 0;
  const [dx, dy] = restraint.direction;
  if (sense === 'normal') return dx !== 0 && dy !== 0 ? 1 : 0;
  const [sx, sy] = senses[sense] ?? [0, 0];
  return dx * sx + dy * sy;
}

const cutForce: Reader = (context, text) => {
  const found = /^(shear|moment|axial)(?: force)? (?:at|(left|right) of) (.+)$/u.exec(
    text,
  );
  if (found === null) return undefined;
  const [, force = 'shear', side = 'left', place = ''] = found;
  const x = stationOf(context, place, readLength);
  if (x === undefined) return { problem: `there is no place ${place} on this member` };
  const cut = { x, side: side as 'left' | 'right' };
  const { key, truth } = cutForceAt(context, cut, force as CutForceName);
  const of = force === 'moment' ? couple : dimensions.force;
  return { meaning: { kind: 'unknown', key, dimension: of, share: 1, truth } };
};

const load: Reader = (context, text) => {
  const found = findLoad(context, text);
  if (found === undefined) return undefined;
  const [one, ...others] = found;
  if (one === undefined) return { problem: `no point load or couple is ${text}` };
  if (others.length > 0)
    return { problem: `\`${text}\` could be ${formsOf(context, found).join(' or ')}` };
  const { load: of, factor } = one;
  return of.kind === 'couple'
    ? known(Math.abs(of.m) * factor, couple)
    : known(Math.hypot(of.fx, of.fy) * factor, dimensions.force);
};

/** How each of several loads would be named by itself, with its size: `force Q at B (9 kip)`. */
function formsOf(
  context: MarkingContext,
  loads: readonly FoundLoad[],
): readonly string[] {
  const isMixed =
    new Set(loads.map(({ load: { kind } }) => kind === 'couple')).size > 1;
  return loads.map(({ load: of, factor }) => {
    const place = placeWords(context, of.x);
    const isCouple = of.kind === 'couple';
    const size = isCouple
      ? words(context, 'moment', Math.abs(of.m) * factor)
      : words(context, 'force', Math.hypot(of.fx, of.fy) * factor);
    const word = !isMixed ? 'load' : isCouple ? 'couple' : 'force';
    return `\`${word} ${of.case} at ${place}\` (${size})`;
  });
}

function spreadLoads(
  { structure, loading }: MarkingContext,
  mark: string,
): readonly {
  readonly load: DistributedLoad;
  readonly factor: number;
}[] {
  const factor = factorOf(loading, mark);
  return factor === 0
    ? []
    : structure.loads.flatMap((one) =>
        one.kind === 'distributed' && one.case === mark ? [{ load: one, factor }] : [],
      );
}

const resultant: Reader = (context, text) => {
  const found = /^resultant of (\S+)(?: from (.+) to (.+))?$/u.exec(text);
  if (found === null) return undefined;
  const [, mark = '', from, to] = found;
  const start = from === undefined ? undefined : stationOf(context, from, readLength);
  const end = to === undefined ? undefined : stationOf(context, to, readLength);
  const isMissing =
    (from !== undefined && start === undefined) ||
    (to !== undefined && end === undefined);
  if (isMissing) return { problem: `${from} to ${to} is no stretch of this member` };
  const loads = spreadLoads(context, mark);
  if (loads.length === 0)
    return { problem: `no distributed load of ${mark} acts here` };
  const sum = loads
    .flatMap(({ load: one, factor }) =>
      resultantsOf(one, start, end).map(({ magnitude, direction }) => ({
        x: factor * magnitude * direction[0],
        y: factor * magnitude * direction[1],
      })),
    )
    .reduce((all, one) => ({ x: all.x + one.x, y: all.y + one.y }), { x: 0, y: 0 });
  return known(Math.hypot(sum.x, sum.y), dimensions.force);
};

const intensity: Reader = (context, text) => {
  const found = /^intensity(?: of)? (\S+)(?: at (.+))?$/u.exec(text);
  if (found === null) return undefined;
  const [, mark = '', place] = found;
  const x = place === undefined ? undefined : stationOf(context, place, readLength);
  if (place !== undefined && x === undefined)
    return { problem: `there is no place ${place} on this member` };
  const sizes = spreadLoads(context, mark).flatMap(({ load: one, factor }) => {
    if (x !== undefined && (x < one.from || x > one.to)) return [];
    const [qx, qy] = intensityAt(one, x ?? one.from);
    return [factor * Math.hypot(qx, qy)];
  });
  return sizes.length === 0
    ? {
        problem: `no distributed load of ${mark} acts ${place === undefined ? 'here' : `at ${place}`}`,
      }
    : known(
        sizes.reduce((all, one) => all + one, 0),
        dimension({ force: 1, length: -1 }),
      );
};

const length: Reader = (context, text) => {
  const found = /^(?:length|distance)(?: from)? (.+) to (.+)$/u.exec(text);
  if (found === null) return undefined;
  const [, from = '', to = ''] = found;
  const [a, b] = [from, to].map((place) => stationOf(context, place, readLength));
  if (a === undefined || b === undefined)
    return { problem: `${from} to ${to} is no stretch of this member` };
  return known(Math.abs(b - a), dimensions.length);
};

const property: Reader = ({ definition }, text) => {
  const section = definition.sections[0]?.section;
  const of = {
    modulus: definition.material?.E,
    inertia: section?.I,
    area: section?.A,
  };
  if (!Object.hasOwn(of, text)) return undefined;
  const value = of[text as keyof typeof of];
  return value === undefined
    ? { problem: `this member gives no ${text}` }
    : known(value.si, value.dimension);
};
