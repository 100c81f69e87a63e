import {
  extremesOf,
  influenceBasis,
  influenceLine,
  neighbouringPlaces,
  rollingTrain,
  solverOf,
  valueAt,
  worstOf,
  type CriticalPlace,
  type Effect,
  type InfluenceBasis,
  type NeighbouringPlace,
  type Piecewise,
  type RolledCase,
  type Side,
  type Train,
} from '../../statics/index.ts';
import type { CaseContext } from '../case-context.ts';

/** An effect of the trains of a case that is worked on the sheet: its line and where the train stands worst. */
export interface GoverningEffect {
  readonly of: 'reaction' | 'shear' | 'moment';
  readonly sense: 'max' | 'min';
  readonly effect: Effect;
  readonly line: Piecewise;
  readonly train: Train;
  readonly critical: CriticalPlace;
  readonly near: readonly NeighbouringPlace[];
}

/** Places of the train told beside the worst. */
const mostPlaces = 5;

/**
 * The effects that a sheet works: each support's reaction, and shear and moment where they are greatest
 * and least along the member (shear at an end is the reaction there); those that a train does not
 * cause left out.
 */
export function governingEffects(
  { arranged, mark }: CaseContext,
  rolled: RolledCase,
): readonly GoverningEffect[] {
  const trains = (arranged.trains ?? []).filter((train) => train.case === mark);
  const solver = solverOf(arranged);
  const basis = solver.kind === 'solver' ? influenceBasis(arranged, solver) : undefined;
  if (basis === undefined) return [];
  const { points } = arranged;
  const ends = [points[0]?.x ?? 0, points.at(-1)?.x ?? 0] as const;
  return sought(rolled, ends).flatMap((one) => worked(basis, trains, one));
}

type Sought = Pick<GoverningEffect, 'of' | 'sense' | 'effect'> & {
  readonly value: number;
};

function isAtEnd(ends: readonly number[], effect: Effect): boolean {
  if (effect.kind === 'reaction') return false;
  const [first = 0, last = 0] = ends;
  const near = 1e-9 * (last - first);
  return effect.x - first <= near || last - effect.x <= near;
}

function sought(
  { part }: RolledCase,
  ends: readonly [number, number],
): readonly Sought[] {
  const reactions = part.reactions.flatMap(({ point, y, moment }): readonly Sought[] =>
    (['y', 'moment'] as const).flatMap((component) => {
      const range = component === 'y' ? y : moment;
      if (range === null) return [];
      return (['max', 'min'] as const).map((sense) => ({
        of: 'reaction' as const,
        sense,
        effect: { kind: 'reaction' as const, point, component },
        value: range[sense].value,
      }));
    }),
  );
  const along = (['shear', 'moment'] as const).flatMap((of) =>
    (['max', 'min'] as const).map((sense): Sought => {
      const { value, x, side } = extremeAlong(part, of, sense);
      return { of, sense, effect: { kind: 'station', of, x, side }, value };
    }),
  );
  const size = (of: string): number =>
    Math.max(
      ...[...reactions, ...along]
        .filter((one) => one.of === of)
        .map(({ value }) => Math.abs(value)),
    );
  // At an end of the member the shear is what the support there gives, or nothing.
  const inside = along.filter(
    ({ of, effect }) => of === 'moment' || !isAtEnd(ends, effect),
  );
  return [...reactions, ...inside].filter(
    ({ of, value }) => Math.abs(value) > 1e-9 * size(of),
  );
}

/** Where a curve of the range has its extreme, and on which side of that station. */
function extremeAlong(
  part: RolledCase['part'],
  of: 'shear' | 'moment',
  sense: 'max' | 'min',
): { readonly value: number; readonly x: number; readonly side: Side } {
  const curve = part[of][sense];
  const { value, x } = extremesOf(curve)[sense];
  const apart = (side: Side): number => Math.abs(valueAt(curve, x, side) - value);
  return { value, x, side: apart('left') <= apart('right') ? 'left' : 'right' };
}

function worked(
  basis: InfluenceBasis,
  trains: readonly Train[],
  { of, sense, effect }: Sought,
): readonly GoverningEffect[] {
  const line = influenceLine(basis, effect);
  const critical = worstOf(trains.map(rollingTrain), line, sense);
  const train = trains.find(({ id }) => id === critical.place.id);
  if (train === undefined) return [];
  const near = neighbouringPlaces(
    rollingTrain(train),
    line,
    { sense, critical },
    mostPlaces,
  );
  return [{ of, sense, effect, line, train, critical, near }];
}
