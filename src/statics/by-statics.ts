import { shareAxially } from './axial-sharing.ts';
import { actsAlongBeam } from './determinacy.ts';
import {
  addWork,
  type EquilibriumSystem,
  type PieceForce,
} from './equilibrium-system.ts';
import { factorLu, solveLu, type LuFactors } from './linear/lu.ts';
import { loadsUnder } from './loading.ts';
import { pieceOfLoad, type Part } from './parts.ts';
import { intensityAt, type DistributedLoad } from './resultants.ts';
import type { Determinacy } from './solution.ts';
import type { BeamStructure, Load } from './structure.ts';
import { closureTolerance, dropNoise, noiseTolerance } from './tolerances.ts';

/** The square system, factored once for all cases. */
export interface StaticsSolver {
  readonly system: EquilibriumSystem;
  /** Which column of the square system each unknown has; undefined for those along x beyond the first. */
  readonly columns: readonly (number | undefined)[];
  readonly factors: LuFactors;
}

/** Keeps one of the restraints along x, whose columns are all the same: it stands for their sum. */
export function staticsSolver(
  structure: BeamStructure,
  system: EquilibriumSystem,
): StaticsSolver {
  const restraints = structure.supports.flatMap((support) => support.restraints);
  const first = restraints.findIndex(actsAlongBeam);
  const kept = restraints.flatMap((restraint, column) =>
    actsAlongBeam(restraint) && column !== first ? [] : [column],
  );
  const columns = restraints.map((_, column) => {
    const index = kept.indexOf(column);
    return index < 0 ? undefined : index;
  });
  const rows = system.rows.map((row) => kept.map((column) => row[column] ?? 0));
  return { system, columns, factors: factorLu(rows) };
}

/** The components of every support under one case, exactly 0 where only rounding is left. */
export function componentsByStatics(
  structure: BeamStructure,
  { system, columns, factors }: StaticsSolver,
  { mark, determinacy }: { readonly mark: string; readonly determinacy: Determinacy },
): readonly (readonly number[])[] {
  const work = new Array<number>(system.rows.length).fill(0);
  let size = 0;
  for (const { load } of loadsUnder(structure, mark)) {
    for (const { piece, force } of pieceForces(load, system.pieces)) {
      const { from, to } = system.pieces[piece] ?? { from: 0, to: 1 };
      addWork(work, system.pieces, piece, force);
      size += Math.abs(force.fx) + Math.abs(force.fy) + Math.abs(force.m) / (to - from);
    }
  }
  const solution = solveLu(
    factors,
    work.map((value) => -value),
  );
  // Rounding grows with the condition number. What is dropped must stay below what a residual shows.
  const grown = 8 * Number.EPSILON * determinacy.condition;
  const noise = Math.min(Math.max(noiseTolerance, grown), closureTolerance / 10);
  const values = system.units.map((unit, column) => {
    const index = columns[column];
    return index === undefined
      ? 0
      : dropNoise(solution[index] ?? 0, size, noise) * unit + 0;
  });
  let next = 0;
  const components = structure.supports.map(({ restraints }) =>
    restraints.map(() => values[next++] ?? 0),
  );
  return determinacy.axialOnly ? shareAxially(structure, mark, components) : components;
}

/** A load as forces brought to the left ends of the pieces that carry it. */
function pieceForces(
  load: Load,
  pieces: readonly Part[],
): readonly { readonly piece: number; readonly force: PieceForce }[] {
  switch (load.kind) {
    case 'distributed':
      return pieces.flatMap((part, piece) =>
        load.from < part.to && load.to > part.from
          ? [{ piece, force: spreadForce(load, part) }]
          : [],
      );
    case 'couple':
      return [{ piece: pieceOfLoad(pieces, load), force: { fx: 0, fy: 0, m: load.m } }];
    case 'point': {
      const piece = pieceOfLoad(pieces, load);
      const arm = load.x - (pieces[piece]?.from ?? 0);
      return [{ piece, force: { fx: load.fx, fy: load.fy, m: arm * load.fy } }];
    }
  }
}

/** ∫q and ∫(x − left end) q of a straight line of load over its stretch on a piece. */
function spreadForce(load: DistributedLoad, part: Part): PieceForce {
  const from = Math.max(load.from, part.from);
  const to = Math.min(load.to, part.to);
  const [x1, y1] = intensityAt(load, from);
  const [x2, y2] = intensityAt(load, to);
  const base = to - from;
  const fy = ((y1 + y2) * base) / 2;
  const m = ((y1 + 2 * y2) * base * base) / 6 + (from - part.from) * fy;
  return { fx: ((x1 + x2) * base) / 2, fy, m };
}
