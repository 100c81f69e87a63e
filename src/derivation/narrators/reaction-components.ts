import type { Symbol } from '../../equation/index.ts';
import type { EntryResult, Restraint } from '../../statics/index.ts';
import type { MemberContext } from '../case-context.ts';
import { reactionSymbol } from '../symbols.ts';

/** A reaction along one axis, or a moment, at one support. */
export interface Component {
  readonly point: string;
  readonly kind: 'x' | 'y' | 'moment';
  readonly symbol: Symbol;
}

/** The reaction components that a member's supports can give; slanted supports by their parts. */
export function componentsOf({
  structure,
}: Pick<MemberContext, 'structure'>): readonly Component[] {
  return structure.supports.flatMap(({ point, restraints }) => {
    const along = (axis: 0 | 1): boolean =>
      restraints.some((r) => r.kind === 'force' && Math.abs(r.direction[axis]) > 1e-12);
    const all: readonly (readonly [boolean, Component['kind'], Restraint])[] = [
      [along(0), 'x', { kind: 'force', direction: [1, 0] }],
      [along(1), 'y', { kind: 'force', direction: [0, 1] }],
      [restraints.some((r) => r.kind === 'moment'), 'moment', { kind: 'moment' }],
    ];
    return all.flatMap(([isGiven, kind, restraint]) =>
      isGiven ? [{ point, kind, symbol: reactionSymbol(point, restraint) }] : [],
    );
  });
}

/** What an entry gives for a component at most and at least, N or N·m; of a single state both are one. */
export function componentEnds(
  found: EntryResult,
  { point, kind }: Pick<Component, 'point' | 'kind'>,
): { readonly max: number; readonly min: number } {
  const value = found.reactions.find((one) => one.point === point)?.[kind] ?? 0;
  if (typeof value === 'number') return { max: value, min: value };
  return { max: value.max.value, min: value.min.value };
}
