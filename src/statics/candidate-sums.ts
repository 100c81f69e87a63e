import { unknownActionsOn, type Action } from './actions.ts';
import { factorOf, type Sum } from './equilibrium.ts';
import { partsOf, wholeOf, type Part } from './parts.ts';
import type { BeamStructure } from './structure.ts';
import { directionTolerance } from './tolerances.ts';
import { keyOfUnknown, type Unknown } from './unknowns.ts';

/** A sum that one might work, and what each unknown on its part does in it. */
export interface CandidateSum {
  readonly part: Part;
  /** How many pieces the part covers: 1 for a piece between hinges. */
  readonly pieces: number;
  readonly sum: Sum;
  readonly entries: readonly SumEntry[];
  /** How many unknown forces act at the very point that moments are taken about; 0 for force sums. */
  readonly through: number;
}

/** An unknown in a sum. */
export interface SumEntry {
  readonly unknown: Unknown;
  readonly key: string;
  /** Its factor with lengths measured in the beam's length, so at most about 1; exactly 0 where it drops out. */
  readonly factor: number;
}

/**
 * Every sum that hand calculation considers: of forces along x and y, and of moments about every
 * named point, on each piece, on every run of neighbouring pieces, and on the whole beam; fewer
 * pieces first.
 */
export function candidateSums(structure: BeamStructure): readonly CandidateSum[] {
  const { from, to } = wholeOf(structure);
  return runsOf(partsOf(structure)).flatMap(({ part, pieces }) => {
    const actions = unknownActionsOn(structure, part);
    return sumsOn(structure, part).map((sum): CandidateSum => {
      const entries = actions.map((action) => entryOf(action, sum, to - from));
      const through = actions.filter(
        ({ effect, x }) =>
          sum.kind === 'moments' && effect.kind === 'force' && x === sum.about,
      ).length;
      return { part, pieces, sum, entries, through };
    });
  });
}

/** Runs of neighbouring pieces, the single ones first, the whole beam last. */
function runsOf(
  pieces: readonly Part[],
): readonly { readonly part: Part; readonly pieces: number }[] {
  return pieces.flatMap((_, index) => {
    const count = index + 1;
    return pieces.slice(0, pieces.length - index).map((first, start) => ({
      part: { from: first.from, to: pieces[start + index]?.to ?? first.to },
      pieces: count,
    }));
  });
}

function sumsOn(structure: BeamStructure, part: Part): readonly Sum[] {
  const moments = structure.points
    .filter(({ x }) => x >= part.from && x <= part.to)
    .map(({ x }): Sum => ({ kind: 'moments', about: x }));
  return [{ kind: 'forces', along: 'x' }, { kind: 'forces', along: 'y' }, ...moments];
}

function entryOf(action: Action, sum: Sum, length: number): SumEntry {
  const unknown = unknownOf(action);
  const unit = sum.kind === 'moments' && action.effect.kind === 'force' ? length : 1;
  const factor = factorOf(action, sum) / unit;
  const isNothing = Math.abs(factor) <= directionTolerance;
  return { unknown, key: keyOfUnknown(unknown), factor: isNothing ? 0 : factor };
}

function unknownOf({ source }: Action): Unknown {
  switch (source.kind) {
    case 'reaction':
      return source;
    case 'hinge':
      return { kind: 'hinge', point: source.point, component: source.component };
    case 'load':
      throw new RangeError(`load ${source.id} is no unknown`);
  }
}
