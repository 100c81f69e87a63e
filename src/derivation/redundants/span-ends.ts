import type { SpanState } from '../../statics/index.ts';

/** Which ends of a span turn with their joints. */
export type TurningEnds = 'both' | 0 | 1 | 'none';

/** The ends of a span that turn as unknowns or with what holds them. */
export function turningEnds({ ends: [a, b] }: SpanState): TurningEnds {
  if (a.kind === 'turns') return b.kind === 'turns' ? 'both' : 0;
  return b.kind === 'turns' ? 1 : 'none';
}

/** True where loads or warmth leave moments on held ends. */
export function isLoaded({ stiffness }: SpanState): boolean {
  return stiffness.turns.a !== 0 || stiffness.turns.b !== 0;
}

/** The moment known beforehand on an end, 0 on one that turns. */
export function knownMoment({ ends }: SpanState, end: 0 | 1): number {
  const one = ends[end];
  return one.kind === 'known' ? one.moment : 0;
}

/** Stiffness of the one held end while the other turns freely, the share of a moment that arrives there, and the moment held. */
export function oneHeldValues(
  { stiffness }: SpanState,
  end: 0 | 1,
): { readonly k: number; readonly carried: number; readonly moment: number } {
  const { flexibility: f, turns } = stiffness;
  const own = end === 0 ? f.aa : f.bb;
  const turn = end === 0 ? turns.a : turns.b;
  return { k: 1 / own, carried: f.ab / own, moment: -turn / own + 0 };
}
