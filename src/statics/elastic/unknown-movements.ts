import { isRigid, type ElasticModel, type Hold } from './elastic-model.ts';

/** Which unknown each movement is; −1 where a rigid restraint holds it, so that it is known. */
export interface UnknownMovements {
  readonly joints: readonly {
    readonly v: number;
    readonly turnLeft: number;
    readonly turnRight: number;
  }[];
  /** By bar: up and turn at its left end, up and turn at its right end. */
  readonly bars: readonly (readonly [number, number, number, number])[];
  readonly count: number;
}

/** Numbers the unknown movements from left to right, so that those of one bar stand together. */
export function unknownMovements(model: ElasticModel): UnknownMovements {
  let count = 0;
  const unknown = (holds: readonly Hold[]): number =>
    holds.some(isRigid) ? -1 : count++;
  const joints = model.joints.map(({ hinged, lifting, turning }) => {
    const v = unknown(lifting);
    const turnLeft = unknown(turning);
    return { v, turnLeft, turnRight: hinged ? count++ : turnLeft };
  });
  const bars = joints.slice(1).map((right, bar) => {
    const left = joints[bar] ?? right;
    return [left.v, left.turnRight, right.v, right.turnLeft] as const;
  });
  return { joints, bars, count };
}

/** Every spring that holds an unknown movement, with that movement. */
export function springsOf(
  model: ElasticModel,
  { joints }: UnknownMovements,
): readonly { readonly index: number; readonly hold: Hold }[] {
  return model.joints.flatMap(({ lifting, turning }, joint) => {
    const { v, turnLeft } = joints[joint] ?? { v: -1, turnLeft: -1 };
    return [
      ...lifting.map((hold) => ({ index: v, hold })),
      ...turning.map((hold) => ({ index: turnLeft, hold })),
    ].filter(({ index, hold }) => index >= 0 && !isRigid(hold));
  });
}
