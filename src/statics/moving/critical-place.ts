import type { Piecewise } from '../piecewise.ts';
import type { TrainPlace } from '../solution.ts';
import type { Train } from '../structure.ts';
import { formationsOf, type Formation } from './formations.ts';
import { standsOf, type Stand } from './rolling-sum.ts';
import {
  isOnBeam,
  ordinateAt,
  placeOf,
  signedLine,
  type Approach,
  type SignedLine,
} from './signed-line.ts';

/** Where a train stands worst for one effect. */
export interface CriticalPlace {
  /** The effect, lane load included, with its own sign; never on the other side of zero from the end sought, since the train may also be off the beam. */
  readonly value: number;
  readonly place: TrainPlace;
  /** Every axle with its station, on the beam or off it, counted or not; none where the train is off the beam. */
  readonly axles: TrainPlace['axles'];
  /** The side from which axles come that stand where the line leaps. */
  readonly approach: Approach;
  /** Says which axle stands on what, and between what the others are: the same over a stretch of stations where one rule places the train. */
  readonly key: string;
}

/** A train made ready to be placed: its formations are the same for every effect. */
export interface RollingTrain {
  readonly train: Train;
  readonly formations: readonly Formation[];
}

/** Makes a train ready. */
export function rollingTrain(train: Train): RollingTrain {
  return { train, formations: formationsOf(train) };
}

/**
 * Finds the worst place of a train for the effect whose influence line is given: the greatest (`max`)
 * or the least (`min`) of Σ P η, every way it may travel, every spacing it may have; the lane load
 * stands on every stretch where it makes things worse. Of places that come to the same the first tried
 * counts, travelling right before left and short before long.
 */
export function criticalPlace(
  { train, formations }: RollingTrain,
  line: Piecewise,
  sense: 'max' | 'min',
): CriticalPlace {
  const signed = signedLine(line, sense, train);
  const size = train.axles.reduce((sum, axle) => sum + axle, 0) * signed.size;
  let best: Best = { value: 0, key: 'off', stands: [], formation: undefined };
  for (const [index, formation] of formations.entries()) {
    const found = bestOf(signed, formation);
    if (found.value > best.value + tie * size)
      best = { ...found, key: `${index} ${found.key}`, formation };
  }
  const lane = train.lane ?? 0;
  const worst = best.value + lane * signed.worse.area;
  const approach = best.stands[0]?.approach ?? 0;
  return {
    value: sense === 'max' ? worst : 0 - worst,
    approach,
    axles: allAxles(best),
    key: `${best.key} ${occupancyOf(signed, best)}`,
    place: {
      id: train.id,
      direction:
        best.formation?.direction ?? (train.travel === 'left' ? 'left' : 'right'),
      axles: axlesAt(signed, best, train.relieving),
      lane: lane > 0 ? signed.worse.stretches : [],
    },
  };
}

/** Sums nearer than this part of the greatest that could be are one. */
const tie = 1e-12;

interface Best {
  readonly value: number;
  readonly key: string;
  readonly stands: readonly Stand[];
  readonly formation: Formation | undefined;
}

/** The best stands of the groups of a formation, one behind the other within their gaps. */
function bestOf(line: SignedLine, formation: Formation): Omit<Best, 'formation'> {
  // From the last group to the first: what stands behind adds, the best of what the gap allows.
  let behind: readonly Chain[] = [];
  for (const [index, group] of [...formation.groups.entries()].toReversed()) {
    const gap = formation.gaps[index];
    const reach = group.axles.at(-1)?.offset ?? 0;
    const stands = standsOf(line, group);
    const places = formation.gaps.length === 0 ? stands : peaksOf(stands);
    behind = places.flatMap((stand): readonly Chain[] => {
      if (gap === undefined) return [{ value: stand.value, stands: [stand] }];
      const tail = stand.position + reach;
      const next = bestWithin(behind, (head) => {
        const distance = formation.direction === 'right' ? tail - head : head - tail;
        return (
          distance >= gap.least - line.margin && distance <= gap.greatest + line.margin
        );
      });
      return next === undefined
        ? []
        : [{ value: stand.value + next.value, stands: [stand, ...next.stands] }];
    });
  }
  const chain = bestWithin(behind, () => true);
  if (chain === undefined) return { value: 0, key: 'off', stands: [] };
  return { ...chain, key: chain.stands.map(({ key }) => key).join(' ') };
}

/**
 * Stands that no neighbour outdoes. Where spacings are free each group stands on one of these: from any other
 * place it could roll on and give more, until a spacing came to its bound, and that is another formation.
 */
function peaksOf(stands: readonly Stand[]): readonly Stand[] {
  return stands.filter(({ value }, index) => {
    const beside = [stands[index - 1]?.value ?? 0, stands[index + 1]?.value ?? 0];
    return beside.every((other) => value >= other - tie * Math.abs(other));
  });
}

/** Stands of some groups, first to last, and what they come to together. */
interface Chain {
  readonly value: number;
  readonly stands: readonly Stand[];
}

function bestWithin(
  chains: readonly Chain[],
  isWithin: (head: number) => boolean,
): Chain | undefined {
  let best: Chain | undefined;
  for (const chain of chains) {
    if (best !== undefined && chain.value <= best.value + tie * Math.abs(best.value))
      continue;
    if (isWithin(chain.stands[0]?.position ?? NaN)) best = chain;
  }
  return best;
}

function allAxles({ formation, stands }: Best): TrainPlace['axles'] {
  return (formation?.groups ?? []).flatMap(({ axles }, index) =>
    axles.map((axle) => ({
      index: axle.index,
      x: (stands[index]?.position ?? NaN) + axle.offset,
    })),
  );
}

/** Which piece of the line each axle stands on: while that stays the same, the sum is one polynomial. */
function occupancyOf(line: SignedLine, { formation, stands }: Best): string {
  const places = (formation?.groups ?? []).flatMap(({ axles }, index) => {
    const { position = NaN, approach = 0 } = stands[index] ?? {};
    return axles.map(({ offset }) => {
      const x = position + offset;
      return isOnBeam(line, x, approach) ? placeOf(line, x) : '-';
    });
  });
  return places.join('');
}

/** The axles that count: on the beam, and not left out as relieving. */
function axlesAt(
  line: SignedLine,
  { formation, stands }: Best,
  relieving: Train['relieving'],
): TrainPlace['axles'] {
  return (formation?.groups ?? []).flatMap(({ axles }, index) => {
    const { position = NaN, approach = 0 } = stands[index] ?? {};
    return axles.flatMap(({ index: axle, offset }) => {
      const x = position + offset;
      if (!isOnBeam(line, x, approach)) return [];
      if (relieving === 'left out' && ordinateAt(line, x, approach) <= 0) return [];
      return [{ index: axle, x: Math.min(Math.max(x, line.start), line.end) }];
    });
  });
}
