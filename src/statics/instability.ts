import type { EquilibriumSystem } from './equilibrium-system.ts';
import { whereAllVanish } from './linear/subspace.ts';
import { combineVectors, dot, type Vector } from './linear/vector.ts';
import type { Instability } from './solution.ts';
import type { BeamStructure } from './structure.ts';
import { movementTolerance } from './tolerances.ts';
import { wholeOf } from './parts.ts';

/**
 * Names the movement that the supports leave free, from the left null space of the equilibrium
 * system (`movements`, at least one). What the beam could do as one rigid body is named before
 * what its pieces do at hinges, since that is the order in which one would mend it: a slide, else
 * a turn about the point where all reactions meet. Only where two or more such movements are
 * free for want of reactions (a single roller) is none of them named: whoever mends one would
 * still have the others.
 */
export function nameInstability(
  structure: BeamStructure,
  system: EquilibriumSystem,
  movements: readonly Vector[],
): Instability {
  const slopes = slopesOf(system);
  const kinks = slopes.slice(1).map((slope, i) => subtract(slope, slopes[i] ?? []));
  const rigid = whereAllVanish(movements, kinks);
  if (rigid.length === 0) return mechanismAt(structure, kinks, movements);
  const equations = system.rows.length;
  const unknowns = system.units.length;
  if (rigid.length > 1 && unknowns < equations) {
    return { kind: 'too-few-reactions', unknowns, equations };
  }
  const slides = whereAllVanish(rigid, slopes.slice(0, 1));
  return slides.length > 0
    ? nameSlide(slides)
    : nameTurn(structure, rigid[0] ?? [], slopes[0] ?? []);
}

/** For each piece, the functional that reads its rotation from a movement, in turns per length of the beam. */
function slopesOf(system: EquilibriumSystem): readonly Vector[] {
  const { pieces, rows } = system;
  const start = pieces[0]?.from ?? 0;
  const length = (pieces.at(-1)?.to ?? 1) - start;
  return pieces.map(({ from, to }, piece) => {
    const slope = new Array<number>(rows.length).fill(0);
    slope[1 + piece] = -length / (to - from);
    slope[2 + piece] = length / (to - from);
    return slope;
  });
}

function subtract(a: Vector, b: Vector): Vector {
  return combineVectors([1, -1], [a, b], a.length);
}

/** Every hinge at which some free movement turns the pieces against one another. */
function mechanismAt(
  structure: BeamStructure,
  kinks: readonly Vector[],
  movements: readonly Vector[],
): Instability {
  const hinges = [...structure.hinges].sort((a, b) => a.x - b.x);
  const sizes = kinks.map((kink) =>
    Math.max(...movements.map((movement) => Math.abs(dot(kink, movement)))),
  );
  const limit = movementTolerance * Math.max(...sizes);
  const turning = hinges.filter((_, index) => (sizes[index] ?? 0) > limit);
  return { kind: 'mechanism', hinges: turning.map((hinge) => hinge.point) };
}

/** A shift without rotation: along the beam, or square to reactions that all run one way. */
function nameSlide(slides: readonly Vector[]): Instability {
  const [movement = []] = slides;
  const along = movement[0] ?? 0;
  const across = movement[1] ?? 0;
  const isAlong = Math.abs(across) <= movementTolerance * Math.abs(along);
  if (slides.length > 1 || isAlong) return { kind: 'no-x-restraint' };
  // The reactions stand square to the movement; of the two ways, the upward one is named (right where level).
  const size = Math.hypot(along, across);
  const level = Math.abs(along) <= movementTolerance * Math.abs(across);
  if (level) return { kind: 'parallel', direction: [1, 0] };
  const sense = along > 0 ? 1 : -1;
  return {
    kind: 'parallel',
    direction: [(-sense * across) / size, (sense * along) / size],
  };
}

/** A rotation of the whole beam: its centre is the point at which every reaction line meets. */
function nameTurn(
  structure: BeamStructure,
  movement: Vector,
  slope: Vector,
): Instability {
  const { from, to } = wholeOf(structure);
  const length = to - from;
  const turn = dot(slope, movement);
  const x = from - (length * (movement[1] ?? 0)) / turn;
  const y = (length * (movement[0] ?? 0)) / turn;
  const snap = (value: number): number =>
    Math.abs(value) <= movementTolerance * length ? 0 : value;
  const point = structure.points.find(
    (candidate) => Math.abs(candidate.x - x) <= movementTolerance * length,
  );
  return { kind: 'concurrent', x: point?.x ?? x, y: snap(y) };
}
