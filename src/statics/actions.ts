import { loadsUnder, type CaseFactor, type FactoredLoad } from './loading.ts';
import { partsOf, pieceAt, piecesOn, wholeOf, type Part } from './parts.ts';
import { resultantsOf, type DistributedLoad, type Resultant } from './resultants.ts';
import type { BeamStructure, Load, Support } from './structure.ts';
import { unit } from './tidy-structure.ts';
import type { Unknown } from './unknowns.ts';

/** Where an action comes from: see `SumTerm`. */
type Source =
  | Extract<Unknown, { kind: 'reaction' }>
  | (Extract<Unknown, { kind: 'hinge' }> & { readonly side: 'left' | 'right' })
  | {
      readonly kind: 'load';
      readonly id: string;
      readonly case: string;
      readonly from?: number;
      readonly to?: number;
    };

/** One force or couple on a part, before any sum is chosen: what it does, without how much. */
export interface Action {
  readonly source: Source;
  readonly effect:
    | { readonly kind: 'force'; readonly direction: readonly [number, number] }
    | { readonly kind: 'couple'; readonly turn: 1 | -1 };
  readonly x: number;
  /** Factored size along the load's own sense, N or N·m; absent for unknowns. */
  readonly magnitude?: number;
  readonly resultant?: Resultant;
  readonly caseFactor?: number;
}

/** Which places belong to a part of the beam: spread loads between two stations, the rest one by one. */
export interface Extent {
  readonly from: number;
  readonly to: number;
  /** Whether what stands at a station is on the part; at a hinge a couple says on which side it stands. */
  readonly holds: (x: number, side?: 'left' | 'right') => boolean;
}

/** The extent of a part between ends and hinges: see `pieceAt` for what stands exactly at a hinge. */
export function extentOfPart(structure: BeamStructure, part: Part): Extent {
  const pieces = partsOf(structure);
  const [first, last] = piecesOn(pieces, part);
  const holds = (x: number, side?: 'left' | 'right'): boolean => {
    const piece = pieceAt(pieces, x, side);
    return piece >= first && piece <= last;
  };
  return { ...part, holds };
}

/**
 * Every action on a part of a tidy structure between ends and hinges, in the order of the terms of a sum.
 */
export function actionsOn(
  structure: BeamStructure,
  loading: string | readonly CaseFactor[],
  part: Part,
): readonly Action[] {
  const extent = extentOfPart(structure, part);
  return [
    ...reactionActionsOn(structure, extent),
    ...hingeActions(structure, part),
    ...loadActionsOn(structure, loading, extent),
  ];
}

/** The reactions and hinge forces on a part between ends and hinges: its actions under no load at all. */
export function unknownActionsOn(
  structure: BeamStructure,
  part: Part,
): readonly Action[] {
  const extent = extentOfPart(structure, part);
  return [...reactionActionsOn(structure, extent), ...hingeActions(structure, part)];
}

/** The reactions on a stretch of a tidy structure, from left to right. */
export function reactionActionsOn(
  structure: BeamStructure,
  { holds }: Extent,
): readonly Action[] {
  return [...structure.supports]
    .sort((a, b) => a.x - b.x)
    .filter((support) => holds(support.x))
    .flatMap(reactionActions);
}

/** The loads on a stretch of a tidy structure, in their order, spread ones as resultants. */
export function loadActionsOn(
  structure: BeamStructure,
  loading: string | readonly CaseFactor[],
  extent: Extent,
): readonly Action[] {
  return loadsUnder(structure, loading).flatMap(({ load, factor }) => {
    if (load.kind === 'distributed')
      return spreadActions({ load, factor }, load, extent);
    const side = load.kind === 'couple' ? load.side : undefined;
    return extent.holds(load.x, side) ? [pointAction({ load, factor }, load)] : [];
  });
}

function reactionActions(support: Support): readonly Action[] {
  return support.restraints.map((restraint, index) => ({
    source: { kind: 'reaction', point: support.point, index },
    effect:
      restraint.kind === 'moment'
        ? { kind: 'couple', turn: 1 }
        : { kind: 'force', direction: restraint.direction },
    x: support.x,
  }));
}

function hingeActions(structure: BeamStructure, part: Part): readonly Action[] {
  const whole = wholeOf(structure);
  const ends: Action[] = [];
  const add = (x: number, side: 'left' | 'right'): void => {
    const point = structure.hinges.find((hinge) => hinge.x === x)?.point ?? '';
    const sense = side === 'right' ? 1 : -1;
    for (const component of ['x', 'y'] as const) {
      const direction =
        component === 'x' ? ([sense, 0] as const) : ([0, sense] as const);
      const source = { kind: 'hinge', point, component, side } as const;
      ends.push({ source, effect: { kind: 'force', direction }, x });
    }
  };
  if (part.from !== whole.from) add(part.from, 'right');
  if (part.to !== whole.to) add(part.to, 'left');
  return ends;
}

function pointAction(
  { factor }: FactoredLoad,
  load: Exclude<Load, DistributedLoad>,
): Action {
  const source = { kind: 'load', id: load.id, case: load.case } as const;
  if (load.kind === 'couple') {
    const effect = { kind: 'couple', turn: load.m < 0 ? -1 : 1 } as const;
    const magnitude = factor * Math.abs(load.m) + 0;
    return { source, effect, x: load.x, magnitude, caseFactor: factor };
  }
  const direction = unit([load.fx, load.fy]);
  const magnitude = factor * Math.hypot(load.fx, load.fy) + 0;
  const effect = { kind: 'force', direction } as const;
  return { source, effect, x: load.x, magnitude, caseFactor: factor };
}

function spreadActions(
  { factor }: FactoredLoad,
  load: DistributedLoad,
  extent: Extent,
): readonly Action[] {
  return resultantsOf(load, extent.from, extent.to).map((resultant) => {
    const { from, to, direction, x } = resultant;
    const isWhole = from === load.from && to === load.to;
    const source = { kind: 'load', id: load.id, case: load.case } as const;
    return {
      source: isWhole ? source : { ...source, from, to },
      effect: { kind: 'force', direction },
      x,
      magnitude: factor * resultant.magnitude + 0,
      resultant,
      caseFactor: factor,
    };
  });
}
