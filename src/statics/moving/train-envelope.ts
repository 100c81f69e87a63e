import type { Piecewise } from '../piecewise.ts';
import { breakpointsOf, sizeOf } from '../piecewise.ts';
import { combine } from '../piecewise/combine.ts';
import { extremesOf } from '../piecewise/extremes.ts';
import { greatestOf, leastOf } from '../piecewise/greatest.ts';
import type { RangeQuery } from '../solution.ts';
import { criticalPlace, type RollingTrain } from './critical-place.ts';
import { fitCurve, polynomialsOver } from './fit-curve.ts';
import type { RigidGroup } from './formations.ts';
import type { InfluenceBasis } from './influence-basis.ts';
import { influenceLine } from './influence-line.ts';
import { sumAt } from './rolling-sum.ts';
import { signedLine, type SignedLine } from './signed-line.ts';

/** Which end of which quantity. */
type Sought = Pick<RangeQuery, 'of' | 'sense'>;

/**
 * The greatest or least of one quantity at every station under one train: of its axles, and of its lane load,
 * which do not depend on one another. See `fitCurve` for how exact it is; held against the curve of each
 * axle standing on the station itself, which is where the greatest moments and shears are found.
 */
export function envelopeOf(
  basis: InfluenceBasis,
  rolling: RollingTrain,
  sought: Sought,
): Piecewise {
  const { train } = rolling;
  const axles = axleEnvelope(basis, rolling, sought);
  const { lane = 0 } = train;
  if (lane === 0) return axles;
  const area = fitCurve(basis.bars, (x) => {
    const line = signedAt(basis, rolling, sought, x);
    return { value: line.worse.area, key: `${line.worse.stretches.length}` };
  });
  const sign = sought.sense === 'max' ? 1 : -1;
  return combine([
    { factor: 1, f: axles },
    { factor: sign * lane, f: area },
  ]);
}

function axleEnvelope(
  basis: InfluenceBasis,
  rolling: RollingTrain,
  sought: Sought,
): Piecewise {
  const alone: RollingTrain = { ...rolling, train: { ...rolling.train, lane: 0 } };
  const rigid = rolling.formations.flatMap(({ groups: [first, ...rest] }) =>
    first === undefined || rest.length > 0 ? [] : [first],
  );
  const events = eventsOf(basis, rigid);
  const found = fitCurve(stretchesBetween(basis, events), (x) =>
    criticalPlace(
      alone,
      influenceLine(basis, { kind: 'station', ...sought, x, side: 'right' }),
      sought.sense,
    ),
  );
  if (rolling.train.relieving === 'left out') return found;
  return rigid.reduce(
    (curve, group) =>
      group.axles.reduce(
        (higher, { offset }) =>
          raised(higher, sought, under(basis, alone, sought, { group, offset })),
        curve,
      ),
    found,
  );
}

/** The curve with another laid over it where that goes further by more than rounding. */
function raised(curve: Piecewise, { sense }: Sought, other: Piecewise): Piecewise {
  const sign = sense === 'max' ? 1 : -1;
  const beyond = combine([
    { factor: sign, f: other },
    { factor: -sign, f: curve },
  ]);
  if (extremesOf(beyond).max.value <= 1e-10 * sizeOf(curve)) return curve;
  return sense === 'max' ? greatestOf([curve, other]) : leastOf([curve, other]);
}

/** What the axles give while one of them stands on the station: between events one polynomial. */
function under(
  basis: InfluenceBasis,
  rolling: RollingTrain,
  sought: Sought,
  { group, offset }: { readonly group: RigidGroup; readonly offset: number },
): Piecewise {
  const sign = sought.sense === 'max' ? 1 : -1;
  const own = eventsOf(basis, [group]);
  return polynomialsOver(stretchesBetween(basis, own), (x) => {
    const line = signedAt(basis, rolling, sought, x);
    return sign * sumAt(line, group, x - offset, 0);
  });
}

function signedAt(
  basis: InfluenceBasis,
  { train }: RollingTrain,
  { of, sense }: Sought,
  x: number,
): SignedLine {
  const line = influenceLine(basis, { kind: 'station', of, x, side: 'right' });
  return signedLine(line, sense, train);
}

/** Stations at which one axle stands on the station while another passes an end, a support, a hinge or a step. */
function eventsOf(
  { bars }: InfluenceBasis,
  groups: readonly RigidGroup[],
): readonly number[] {
  const joints = breakpointsOf({
    pieces: bars.map(({ from, to }) => ({ start: from, end: to, coefficients: [0] })),
  });
  return groups.flatMap(({ axles }) =>
    axles.flatMap((one) =>
      axles.flatMap((other) => joints.map((x) => x + one.offset - other.offset)),
    ),
  );
}

/** The bars cut at some stations, those nearer than a millionth of the beam to another one left out. */
function stretchesBetween(
  { bars }: InfluenceBasis,
  stations: readonly number[],
): readonly { readonly from: number; readonly to: number }[] {
  const near = 1e-6 * ((bars.at(-1)?.to ?? 0) - (bars[0]?.from ?? 0));
  const inOrder = stations.toSorted((a, b) => a - b);
  return bars.flatMap(({ from, to }) => {
    const cuts = [from];
    for (const x of inOrder) {
      if (x > (cuts.at(-1) ?? from) + near && x < to - near) cuts.push(x);
    }
    return cuts.map((cut, index) => ({ from: cut, to: cuts[index + 1] ?? to }));
  });
}
