import type { Train } from '../../statics/index.ts';
import type { BeamTrain } from '../definitions.ts';

/** A train as the solver sees it: SI numbers, factors applied. */
export function idealiseTrain(train: BeamTrain): Train {
  const { factors = { because: '' }, lane } = train;
  return {
    id: train.id,
    case: train.case,
    axles: train.axles.map(({ si }) => si * (factors.axles ?? 1)),
    spacings: train.spacings.map(({ least, greatest }) => ({
      least: least.si,
      greatest: greatest.si,
    })),
    travel: train.travel.value,
    ...(lane === undefined ? {} : { lane: lane.si * (factors.lane ?? 1) }),
    relieving: train.relieving.value,
  };
}
