import {
  solveBeam,
  valueAt,
  type BeamResult,
  type BeamStructure,
  type Side,
} from '../../src/statics/index.ts';

/** A solved beam of one case, asked by name and place. */
export interface Solved {
  readonly result: BeamResult;
  /** Vertical reaction at a support, up positive. */
  readonly up: (point: string) => number;
  /** Horizontal reaction, right positive. */
  readonly right: (point: string) => number;
  /** Moment that a support gives, counterclockwise positive. */
  readonly turn: (point: string) => number;
  readonly shear: (x: number, side?: Side) => number;
  readonly moment: (x: number, side?: Side) => number;
  readonly greatest: { readonly value: number; readonly x: number };
  readonly least: { readonly value: number; readonly x: number };
}

/** Solves a determinate beam; anything else fails the test. */
export function solved(structure: BeamStructure): Solved {
  const outcome = solveBeam(structure);
  if (outcome.kind !== 'beam') throw new Error(`unsolved: ${outcome.unsolved.reason}`);
  const result = outcome.results[0]!;
  const at = (point: string) => result.reactions.find((r) => r.point === point)!;
  return {
    result,
    up: (point) => at(point).y!,
    right: (point) => at(point).x!,
    turn: (point) => at(point).moment!,
    shear: (x, side = 'left') => valueAt(result.shear, x, side),
    moment: (x, side = 'left') => valueAt(result.moment, x, side),
    greatest: result.extremes.moment.max,
    least: result.extremes.moment.min,
  };
}
