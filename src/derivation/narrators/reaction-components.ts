import type { Symbol } from '../../equation/index.ts';
import type { BeamResult, Restraint } from '../../statics/index.ts';
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

/** What a result gives for a component, N or N·m. */
export function componentValue(result: BeamResult, { point, kind }: Component): number {
  return result.reactions.find((reaction) => reaction.point === point)?.[kind] ?? 0;
}
