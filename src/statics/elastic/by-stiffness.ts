import { factorLdl, solveLdl, type SymmetricBand } from '../linear/banded-ldl.ts';
import { conditionEstimate } from '../linear/condition-estimate.ts';
import {
  add,
  divide,
  exact,
  multiply,
  negative,
  rounded,
  subtract,
  sumOf,
  times,
  zero,
  type DoubleDouble,
} from '../linear/double-double.ts';
import type { Acting } from './acting.ts';
import { isRigid, type Bar, type ElasticModel, type Hold } from './elastic-model.ts';
import { prescribedLift, type JointState, type Way } from './elastic-state.ts';
import { equivalentForces } from './fixed-end-forces.ts';

/**
 * The first way: joint movements as unknowns, bars as exact beam elements. Two unknowns a joint,
 * deflection and rotation, a hinge giving two rotations; a movement that a rigid restraint holds is
 * no unknown but known, and a spring adds to the diagonal. In figures of 32 digits throughout, so
 * that neither short bars nor stiff springs cost accuracy.
 * — Przemieniecki, Theory of Matrix Structural Analysis, chapter 4 (from memory).
 */
export interface StiffnessWay {
  readonly way: Way;
  /** Estimated condition number of the matrix, scaled to a unit diagonal. */
  readonly condition: number;
}

/** Assembles and factors the stiffness matrix once, for any number of states. */
export function byStiffness(model: ElasticModel): StiffnessWay {
  const places = placesOf(model);
  const stiffnesses = model.bars.map(stiffnessOf);
  const matrix = assemble(model, places, stiffnesses);
  const factors = factorLdl(matrix);
  const way: Way = (acting, slide) => {
    const known = knownMovements(model, acting, slide);
    const loads = model.bars.map((bar, place) => loadsOn(acting, place, bar));
    const barValues = (place: number, x: readonly DoubleDouble[]): Four =>
      four((end) => {
        const index = places[place]?.[end] ?? -1;
        return index < 0 ? (known[place]?.[end] ?? zero) : (x[index] ?? zero);
      });
    const rightHandSide = springPulls(model, places, {
      acting,
      slide,
      count: matrix.length,
    });
    for (const [place, stiffness] of stiffnesses.entries()) {
      const held = times4(stiffness, barValues(place, []));
      for (const [end, index] of (places[place] ?? []).entries()) {
        if (index < 0) continue;
        const load = loads[place]?.[end] ?? zero;
        rightHandSide[index] = add(
          rightHandSide[index] ?? zero,
          subtract(load, held[end] ?? zero),
        );
      }
    }
    const x = solveLdl(factors, rightHandSide);
    const movements = model.bars.map((_, place) => barValues(place, x));
    const ends = stiffnesses.map((stiffness, place) => {
      const forces = times4(stiffness, movements[place] ?? nothing);
      return four((end) => subtract(forces[end] ?? zero, loads[place]?.[end] ?? zero));
    });
    return {
      slide,
      joints: model.joints.map((_, joint) => jointState(joint, movements, ends)),
    };
  };
  return { way, condition: conditionEstimate(matrix, factors) };
}

/** The four movements of a bar's ends, or what goes with them: up and turn at the left, up and turn at the right. */
type Four = readonly [DoubleDouble, DoubleDouble, DoubleDouble, DoubleDouble];

const nothing: Four = [zero, zero, zero, zero];

function four(of: (end: number) => DoubleDouble): Four {
  return [of(0), of(1), of(2), of(3)];
}

/** For each bar, which unknown each of its four end movements is; −1 where it is known. */
function placesOf(model: ElasticModel): readonly (readonly number[])[] {
  let count = 0;
  const unknown = (holds: readonly Hold[]): number =>
    holds.some(isRigid) ? -1 : count++;
  const last = model.joints.length - 1;
  const joints = model.joints.map(({ hinged, lifting, turning }, place) => {
    const v = unknown(lifting);
    const turnLeft = unknown(turning);
    return { v, turnLeft, turnRight: hinged && place < last ? count++ : turnLeft };
  });
  return model.bars.map((_, bar) => {
    const [left, right] = [joints[bar], joints[bar + 1]];
    return [left?.v, left?.turnRight, right?.v, right?.turnLeft].map(
      (one) => one ?? -1,
    );
  });
}

/** The 4 × 4 stiffness matrix of a bar, row by row. */
function stiffnessOf({ EI, length }: Bar): readonly Four[] {
  const square = multiply(length, length);
  const turn = divide(exact(2 * EI), length);
  const mixed = divide(exact(6 * EI), square);
  const lift = divide(exact(12 * EI), multiply(square, length));
  const [down, against] = [negative(lift), negative(mixed)];
  return [
    [lift, mixed, down, mixed],
    [mixed, times(2, turn), against, turn],
    [down, against, lift, against],
    [mixed, turn, against, times(2, turn)],
  ];
}

function times4(matrix: readonly Four[], values: Four): Four {
  const isMoved = values.map((value) => value[0] !== 0);
  return four((row) =>
    sumOf(
      values.flatMap((value, column) =>
        isMoved[column] === true
          ? [multiply(matrix[row]?.[column] ?? zero, value)]
          : [],
      ),
    ),
  );
}

function assemble(
  model: ElasticModel,
  places: readonly (readonly number[])[],
  stiffnesses: readonly (readonly Four[])[],
): SymmetricBand {
  const rows: DoubleDouble[][] = [];
  const put = (row: number, column: number, value: DoubleDouble): void => {
    const entries = (rows[row] ??= [zero]);
    while (entries.length <= row - column) entries.push(zero);
    entries[row - column] = add(entries[row - column] ?? zero, value);
  };
  for (const [place, stiffness] of stiffnesses.entries()) {
    for (const [one, row] of (places[place] ?? []).entries())
      for (const [other, column] of (places[place] ?? []).entries())
        if (row >= column && column >= 0)
          put(row, column, stiffness[one]?.[other] ?? zero);
  }
  for (const { index, hold } of springsOf(model, places)) {
    const part = hold.dy === 0 ? exact(1) : multiply(exact(hold.dy), exact(hold.dy));
    put(index, index, times(hold.stiffness ?? 0, part));
  }
  return rows;
}

/** Every spring that holds an unknown movement. */
function springsOf(
  model: ElasticModel,
  places: readonly (readonly number[])[],
): readonly { readonly index: number; readonly hold: Hold }[] {
  return model.joints.flatMap(({ lifting, turning }, joint) => {
    const [v, turn] = unknownsAt(places, joint);
    const at = (holds: readonly Hold[], index: number) =>
      holds.flatMap((hold) => (isRigid(hold) || index < 0 ? [] : [{ index, hold }]));
    return [...at(lifting, v), ...at(turning, turn)];
  });
}

/** The unknown deflection and rotation (left of a hinge) of a joint. */
function unknownsAt(
  places: readonly (readonly number[])[],
  joint: number,
): readonly [v: number, turn: number] {
  const before = places[joint - 1];
  if (before !== undefined) return [before[2] ?? -1, before[3] ?? -1];
  return [places[joint]?.[0] ?? -1, places[joint]?.[1] ?? -1];
}

/** What the movements of springs' feet do to the unknown movements. */
function springPulls(
  model: ElasticModel,
  places: readonly (readonly number[])[],
  {
    acting,
    slide,
    count,
  }: { readonly acting: Acting; readonly slide: number; readonly count: number },
): DoubleDouble[] {
  const pulls = new Array<DoubleDouble>(count).fill(zero);
  for (const { index, hold } of springsOf(model, places)) {
    const part = hold.dy === 0 ? 1 : hold.dy;
    const drawn = hold.dx * slide + acting.foot(hold);
    if (drawn === 0) continue;
    const pull = multiply(exact(-(hold.stiffness ?? 0)), times(part, exact(drawn)));
    pulls[index] = add(pulls[index] ?? zero, pull);
  }
  return pulls;
}

/** The end movements of each bar that rigid restraints prescribe, zero where they are unknown. */
function knownMovements(
  model: ElasticModel,
  acting: Acting,
  slide: number,
): readonly Four[] {
  const joints = model.joints.map(({ lifting, turning }) => {
    const lift = lifting.find(isRigid);
    const turn = turning.find(isRigid);
    return {
      v: lift === undefined ? zero : prescribedLift(lift, acting, slide),
      turn: turn === undefined ? zero : exact(0 - acting.foot(turn)),
    };
  });
  return model.bars.map((_, bar) => {
    const [left, right] = [joints[bar], joints[bar + 1]];
    return [left?.v ?? zero, left?.turn ?? zero, right?.v ?? zero, right?.turn ?? zero];
  });
}

function loadsOn(acting: Acting, place: number, bar: Bar): Four {
  let sum: Four = nothing;
  for (const load of acting.bars[place] ?? []) {
    const forces = equivalentForces(load, bar);
    const before = sum;
    sum = four((end) => add(before[end] ?? zero, exact(forces[end] ?? 0)));
  }
  return sum;
}

/** Movements and internal forces on both sides of a joint, from the forces on the ends of its bars. */
function jointState(
  joint: number,
  movements: readonly Four[],
  ends: readonly Four[],
): JointState {
  const [before, after] = [movements[joint - 1], movements[joint]];
  const shearLeft = negative(ends[joint - 1]?.[2] ?? zero);
  const shearRight = ends[joint]?.[0] ?? zero;
  const momentLeft = ends[joint - 1]?.[3] ?? zero;
  const momentRight = negative(ends[joint]?.[1] ?? zero);
  return {
    v: rounded(before?.[2] ?? after?.[0] ?? zero),
    turnLeft: rounded(before?.[3] ?? after?.[1] ?? zero),
    turnRight: rounded(after?.[1] ?? before?.[3] ?? zero),
    shearLeft: rounded(shearLeft),
    shearRight: rounded(shearRight),
    momentLeft: rounded(momentLeft),
    momentRight: rounded(momentRight),
    force: rounded(subtract(shearRight, shearLeft)),
    couple: rounded(subtract(momentLeft, momentRight)),
  };
}
