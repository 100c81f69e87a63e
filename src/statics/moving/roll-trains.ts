import { extremesOf } from '../piecewise/extremes.ts';
import type { RangePart, RolledCase, TrainPlace, Unsolved } from '../solution.ts';
import type { BeamSolver } from '../solver-of.ts';
import { solverOf } from '../solver-of.ts';
import type { BeamStructure, Load } from '../structure.ts';
import { checkTrains } from './check-trains.ts';
import { influenceBasis } from './influence-basis.ts';
import { trainRange } from './train-range.ts';

/** The cases with trains, or why the beam has no results. */
export type RollingOutcome =
  | { readonly kind: 'rolled'; readonly cases: readonly RolledCase[] }
  | { readonly kind: 'unsolved'; readonly unsolved: Unsolved };

/**
 * Rolls the trains of every case along the beam; a structure without trains costs nothing.
 *
 * @throws RangeError where a train is none: see `checkTrains`.
 */
export function rollTrains(structure: BeamStructure): RollingOutcome {
  const { trains = [], cases } = structure;
  checkTrains(structure);
  if (trains.length === 0) return { kind: 'rolled', cases: [] };
  const solver = solverOf(structure);
  if (solver.kind === 'unsolved') return solver;
  const basis = influenceBasis(structure, solver);
  if (basis === undefined) return { kind: 'unsolved', unsolved: apart(solver, trains) };
  const marks = cases.filter((mark) => trains.some((train) => train.case === mark));
  return {
    kind: 'rolled',
    cases: marks.map((mark) => {
      const own = trains.filter((train) => train.case === mark);
      const part = trainRange(basis, own);
      const standing = own.flatMap((train) => loadsOf(train, mostBending(part)));
      return { mark, part, standing };
    }),
  };
}

/** The structure with trains as loads: where they stand for their cases on the sheet. */
export function standTrains(
  structure: BeamStructure,
  rolled: readonly RolledCase[],
): BeamStructure {
  if (structure.trains === undefined) return structure;
  const standing = rolled.flatMap((one) => one.standing);
  return { ...structure, trains: [], loads: [...structure.loads, ...standing] };
}

/** The place of the train that bends the beam most, whichever way. */
function mostBending({ moment, arrangementAt }: RangePart): TrainPlace | undefined {
  const [max, min] = [extremesOf(moment.max).max, extremesOf(moment.min).min];
  const sense = max.value >= -min.value * (1 - 1e-9) ? 'max' : 'min';
  const { x } = sense === 'max' ? max : min;
  return arrangementAt({ of: 'moment', sense, x, side: 'left' }).trains[0];
}

/** A train at a place as loads: `id 1` and so on for its axles, front first, and `id lane` for its lane load. */
function loadsOf(
  train: NonNullable<BeamStructure['trains']>[number],
  place: TrainPlace | undefined,
): readonly Load[] {
  if (place?.id !== train.id) return [];
  const { id, case: mark, lane = 0 } = train;
  const width = String(train.axles.length).length;
  const axles = place.axles.map(({ index, x }): Load => ({
    id: `${id} ${String(index + 1).padStart(width, '0')}`,
    case: mark,
    kind: 'point',
    x,
    fx: 0,
    fy: 0 - (train.axles[index] ?? 0),
  }));
  const spread = place.lane.map(({ from, to }, index): Load => ({
    id: `${id} lane${place.lane.length === 1 ? '' : ` ${index + 1}`}`,
    case: mark,
    kind: 'distributed',
    from,
    to,
    x1: 0,
    y1: -lane,
    x2: 0,
    y2: -lane,
  }));
  return [...axles, ...spread];
}

function apart(
  { determinacy }: BeamSolver,
  trains: NonNullable<BeamStructure['trains']>,
): Unsolved {
  return {
    reason: 'ways-disagree',
    determinacy,
    case: trains[0]?.case ?? '',
    agreement: { difference: Infinity, allowed: 1e-9, condition: Infinity },
  };
}
