import { factorLdl, solveLdl, type SymmetricBand } from '../linear/banded-ldl.ts';
import { conditionEstimate } from '../linear/condition-estimate.ts';
import {
  add,
  entryAt,
  exact,
  multiply,
  negative,
  subtract,
  times,
  zero,
  type DoubleDouble,
} from '../linear/double-double.ts';
import type { Acting } from './acting.ts';
import { forcesFor, loadsOn, stiffnessOf } from './bar-stiffness.ts';
import { four, nothing, type Four } from './four.ts';
import { isRigid, type ElasticModel, type Hold } from './elastic-model.ts';
import { drawnBy, prescribedLift, type JointState, type Way } from './elastic-state.ts';
import {
  springsOf,
  unknownMovements,
  type UnknownMovements,
} from './unknown-movements.ts';

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
  const unknowns = unknownMovements(model);
  const stiffnesses = model.bars.map(stiffnessOf);
  const matrix = assemble(model, unknowns, stiffnesses);
  const factors = factorLdl(matrix);
  const way: Way = (acting, slide) => {
    const known = knownMovements(model, acting, slide);
    const loads = model.bars.map((bar, place) => loadsOn(acting, place, bar));
    const barValues = (bar: number, x: readonly DoubleDouble[]): Four =>
      four((end) => {
        const index = unknowns.bars[bar]?.[end] ?? -1;
        return index < 0 ? entryAt(known[bar], end) : entryAt(x, index);
      });
    const rightHandSide = springPulls(model, unknowns, { acting, slide });
    for (const [bar, stiffness] of stiffnesses.entries()) {
      const held = forcesFor(stiffness, barValues(bar, []));
      for (const [end, index] of (unknowns.bars[bar] ?? []).entries()) {
        if (index < 0) continue;
        const given = subtract(entryAt(loads[bar], end), entryAt(held, end));
        rightHandSide[index] = add(entryAt(rightHandSide, index), given);
      }
    }
    const x = solveLdl(factors, rightHandSide);
    const movements = model.bars.map((_, place) => barValues(place, x));
    const ends = stiffnesses.map((stiffness, place) => {
      const forces = forcesFor(stiffness, movements[place] ?? nothing);
      return four((end) => subtract(entryAt(forces, end), entryAt(loads[place], end)));
    });
    return {
      slide,
      joints: model.joints.map((_, joint) => jointState(joint, movements, ends)),
    };
  };
  return { way, condition: conditionEstimate(matrix, factors) };
}

function assemble(
  model: ElasticModel,
  unknowns: UnknownMovements,
  stiffnesses: readonly (readonly Four[])[],
): SymmetricBand {
  const rows: DoubleDouble[][] = Array.from({ length: unknowns.count }, () => [zero]);
  const put = (row: number, column: number, value: DoubleDouble): void => {
    const entries = rows[row] ?? [];
    while (entries.length <= row - column) entries.push(zero);
    entries[row - column] = add(entryAt(entries, row - column), value);
  };
  for (const [bar, stiffness] of stiffnesses.entries()) {
    const places = [...(unknowns.bars[bar] ?? [])].entries();
    const free = [...places].filter(([, index]) => index >= 0);
    for (const [one, row] of free)
      for (const [other, column] of free)
        if (row >= column) put(row, column, entryAt(stiffness[one], other));
  }
  for (const { index, hold } of springsOf(model, unknowns)) {
    const part = partOf(hold);
    put(index, index, times(hold.stiffness ?? 0, multiply(part, part)));
  }
  return rows;
}

/** What a unit movement of the joint draws a restraint out by. */
function partOf({ dy }: Hold): DoubleDouble {
  return exact(dy === 0 ? 1 : dy);
}

/** What the movements of springs' feet do to the unknown movements. */
function springPulls(
  model: ElasticModel,
  unknowns: UnknownMovements,
  { acting, slide }: { readonly acting: Acting; readonly slide: DoubleDouble },
): DoubleDouble[] {
  const pulls = new Array<DoubleDouble>(unknowns.count).fill(zero);
  for (const { index, hold } of springsOf(model, unknowns)) {
    const drawn = drawnBy(hold, acting, slide);
    const pull = times(-(hold.stiffness ?? 0), multiply(partOf(hold), drawn));
    pulls[index] = add(entryAt(pulls, index), pull);
  }
  return pulls;
}

/** The end movements of each bar that rigid restraints prescribe, zero where they are unknown. */
function knownMovements(
  model: ElasticModel,
  acting: Acting,
  slide: DoubleDouble,
): readonly Four[] {
  const joints = model.joints.map(({ lifting, turning }) => {
    const lift = lifting.find(isRigid);
    const turn = turning.find(isRigid);
    return [
      lift === undefined ? zero : prescribedLift(lift, acting, slide),
      turn === undefined ? zero : exact(0 - acting.foot(turn)),
    ] as const;
  });
  return model.bars.map((_, bar) =>
    four((end) => entryAt(joints[end < 2 ? bar : bar + 1], end % 2)),
  );
}

/** Movements and internal forces on both sides of a joint, from the forces on the ends of its bars. */
function jointState(
  joint: number,
  movements: readonly Four[],
  ends: readonly Four[],
): JointState<DoubleDouble> {
  const [before, after] = [movements[joint - 1]?.slice(2), movements[joint]];
  const [left, right] = [ends[joint - 1], ends[joint]];
  return {
    v: entryAt(before ?? after, 0),
    turnLeft: entryAt(before ?? after, 1),
    turnRight: entryAt(after ?? before, 1),
    shearLeft: negative(entryAt(left, 2)),
    shearRight: entryAt(right, 0),
    momentLeft: entryAt(left, 3),
    momentRight: negative(entryAt(right, 1)),
  };
}
