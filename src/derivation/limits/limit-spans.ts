import type { BeamStructure } from '../../statics/index.ts';

/** A stretch that a deflection limit is for: between neighbouring supports, or from the last one to a free end. */
export interface LimitSpan {
  readonly kind: 'span' | 'overhang';
  readonly from: number;
  readonly to: number;
  /** Names of its two ends, left first. */
  readonly start: string;
  readonly end: string;
  /** Stations that deflections are measured from: both ends of a span, an overhang's support. */
  readonly supports: readonly number[];
}

/**
 * The spans and overhangs of a beam from left to right. What holds it across ends one; a hinge ends none, and
 * neither does a support that leaves the deflection free.
 */
export function limitSpans({ points, supports }: BeamStructure): readonly LimitSpan[] {
  const holds = supports
    .filter(({ restraints }) =>
      restraints.some((r) => r.kind === 'force' && r.direction[1] !== 0),
    )
    .map(({ x, point }) => ({ x, name: point }))
    .sort((a, b) => a.x - b.x);
  const [first, last] = [points[0], points.at(-1)];
  const [left, right] = [holds[0], holds.at(-1)];
  if (
    first === undefined ||
    last === undefined ||
    left === undefined ||
    right === undefined
  )
    return [];
  const spans = holds.slice(1).map((end, index): LimitSpan => {
    const start = holds[index] ?? end;
    return {
      kind: 'span',
      from: start.x,
      to: end.x,
      start: start.name,
      end: end.name,
      supports: [start.x, end.x],
    };
  });
  const overhang = (
    from: { readonly x: number; readonly name: string },
    to: { readonly x: number; readonly name: string },
    support: number,
  ): readonly LimitSpan[] =>
    from.x === to.x
      ? []
      : [
          {
            kind: 'overhang',
            from: from.x,
            to: to.x,
            start: from.name,
            end: to.name,
            supports: [support],
          },
        ];
  return [
    ...overhang(first, left, left.x),
    ...spans,
    ...overhang(right, last, right.x),
  ];
}

/** `A to C`. */
export function spanName({ start, end }: LimitSpan): string {
  return `${start} to ${end}`;
}
