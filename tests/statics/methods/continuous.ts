import type { BeamStructure, Load, Support } from '../../../src/statics/index.ts';

/** A load without its id and case. */
type Laid = Load extends infer One
  ? One extends Load
    ? Omit<One, 'id' | 'case'>
    : never
  : never;

/** A downward force. */
export const down = (force: number, x: number): Laid => ({
  kind: 'point',
  x,
  fx: 0,
  fy: -force,
});

/** A downward load, straight from w1 to w2. */
export const spread = (w1: number, w2: number, from: number, to: number): Laid => ({
  kind: 'distributed',
  from,
  to,
  x1: 0,
  x2: 0,
  y1: -w1,
  y2: -w2,
});

/** A continuous beam with points A, B, C … at the stations, held at those that `supports` names. */
export function continuous(of: {
  readonly stations: readonly number[];
  /** `p` pin, `r` roller, `f` built in, `-` none; one letter a station. */
  readonly supports: string;
  readonly loads: readonly Laid[];
  readonly sinks?: readonly number[];
  readonly stiffness?: BeamStructure['stiffness'];
  readonly curvatures?: BeamStructure['curvatures'];
}): BeamStructure {
  const { stations, supports, loads, sinks = [], stiffness, curvatures } = of;
  const names = stations.map((_, index) => String.fromCharCode(65 + index));
  return {
    kind: 'beam',
    points: stations.map((x, index) => ({ name: names[index] ?? '', x })),
    supports: stations.flatMap((x, index): readonly Support[] => {
      const letter = supports[index];
      if (letter === undefined || letter === '-') return [];
      const sink = sinks[index] ?? 0;
      const y = {
        kind: 'force' as const,
        direction: [0, 1] as const,
        ...(sink === 0 ? {} : { settlements: [{ case: 'L', value: sink }] }),
      };
      const x_ = { kind: 'force' as const, direction: [1, 0] as const };
      const point = names[index] ?? '';
      if (letter === 'f')
        return [{ point, x, type: 'fixed', restraints: [x_, y, { kind: 'moment' }] }];
      return letter === 'p'
        ? [{ point, x, type: 'pin', restraints: [x_, y] }]
        : [{ point, x, type: 'roller', restraints: [y] }];
    }),
    hinges: [],
    cases: ['L'],
    loads: loads.map((load, index): Load => ({
      ...load,
      id: `${index + 1}`,
      case: 'L',
    })),
    ...(stiffness === undefined ? {} : { stiffness }),
    ...(curvatures === undefined ? {} : { curvatures }),
  };
}
