import { sizeOf, valueAt } from '../piecewise.ts';
import type { BeamResult, Displacement, Residual } from '../solution.ts';
import type { BeamStructure, Restraint, Support } from '../structure.ts';
import { wholeOf } from '../parts.ts';

/**
 * Whether the reported elastic curve fits every support: each restraint's movement, read from the
 * curve, against that of its foot and of its spring under the reported reaction. A residual is in m, rad or,
 * where a soft spring makes that the sharper question, N or N·m; `isClosed` judges it. None without a displacement.
 */
export function compatibilityOf(
  structure: BeamStructure,
  result: BeamResult,
  movementsOf: string | undefined,
): readonly Residual[] {
  const { displacement } = result;
  if (displacement === undefined) return [];
  const { from, to } = wholeOf(structure);
  const turn = sizeOf(displacement.slope);
  const read: Reading = {
    structure,
    result,
    displacement,
    movementsOf,
    sizes: {
      lift: Math.max(sizeOf(displacement.deflection), turn * (to - from)),
      turn,
      shear: sizeOf(result.shear),
      moment: sizeOf(result.moment),
    },
  };
  const slide = slideOf(read);
  return structure.supports.flatMap((support, place) =>
    support.restraints.flatMap((restraint, index): readonly Residual[] => {
      if (restraint.kind === 'force' && restraint.direction[1] === 0) return [];
      const moved = movementOf(read, support, restraint, slide);
      const value = result.reactions[place]?.components[index] ?? NaN;
      const equation = `movement of ${support.point}, restraint ${index + 1}`;
      return [residualOf(read, restraint, { equation, moved, value })];
    }),
  );
}

interface Reading {
  readonly structure: BeamStructure;
  readonly result: BeamResult;
  readonly displacement: Displacement;
  readonly movementsOf: string | undefined;
  /** The greatest sizes on the beam, which residuals are judged by. */
  readonly sizes: Readonly<Record<'lift' | 'turn' | 'shear' | 'moment', number>>;
}

/** How far a restraint's movement along its direction is from that of its foot. */
function movementOf(
  { displacement, movementsOf }: Reading,
  { x }: Support,
  restraint: Restraint,
  slide: number,
): number {
  const foot = footOf(restraint, movementsOf);
  // What stands at a hinge belongs to the piece on its left.
  if (restraint.kind === 'moment') return valueAt(displacement.slope, x, 'left') + foot;
  const [dx, dy] = restraint.direction;
  return dx * slide + dy * valueAt(displacement.deflection, x, 'left') + foot;
}

function footOf(
  { settlements = [] }: Restraint,
  movementsOf: string | undefined,
): number {
  return settlements
    .filter((settlement) => settlement.case === movementsOf)
    .reduce((sum, { value }) => sum + value, 0);
}

/**
 * The movement of the beam along x, which no result tells: that of the restraint along x, else what
 * the first inclined restraint asks for; the others then have to agree with it.
 */
function slideOf(read: Reading): number {
  const { structure, result, movementsOf } = read;
  const all = structure.supports.flatMap((support, place) =>
    support.restraints.map((restraint, index) => ({
      support,
      restraint,
      place,
      index,
    })),
  );
  const dxOf = (restraint: Restraint): number =>
    restraint.kind === 'force' ? restraint.direction[0] : 0;
  const along = all.find(
    ({ restraint }) =>
      restraint.kind === 'force' &&
      restraint.direction[1] === 0 &&
      restraint.stiffness === undefined,
  );
  if (along !== undefined)
    return 0 - dxOf(along.restraint) * footOf(along.restraint, movementsOf);
  const first = all.find(({ restraint }) => dxOf(restraint) !== 0);
  if (first === undefined) return 0;
  const { support, restraint, place, index } = first;
  const value = result.reactions[place]?.components[index] ?? NaN;
  const drawn = restraint.stiffness === undefined ? 0 : value / restraint.stiffness;
  return -(movementOf(read, support, restraint, 0) + drawn) / dxOf(restraint);
}

function residualOf(
  { sizes }: Reading,
  { kind, stiffness }: Restraint,
  found: { readonly equation: string; readonly moved: number; readonly value: number },
): Residual {
  const { equation, moved, value } = found;
  const size = kind === 'moment' ? sizes.turn : sizes.lift;
  const scale = size + Math.abs(moved);
  if (stiffness === undefined) return { equation, residual: moved, scale };
  const force = kind === 'moment' ? sizes.moment : sizes.shear;
  const byMovement = { equation, residual: moved + value / stiffness, scale };
  const byForce = {
    equation,
    residual: value + stiffness * moved,
    scale: force + Math.abs(value),
  };
  return Math.abs(byMovement.residual) * byForce.scale <=
    Math.abs(byForce.residual) * byMovement.scale
    ? byMovement
    : byForce;
}
