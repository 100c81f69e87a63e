import type { CaseContext } from '../case-context.ts';
import type { Bending, Worked } from './bending.ts';
import { bendingOf } from './bending-of.ts';
import { slideOf } from './conditions.ts';
import { integrateBending, type Integration } from './integrate-bending.ts';

/** A member with more supports across it, or more hinges, than these is worked around the place sought. */
const mostSupports = 3;
const mostHinges = 2;

/**
 * The elastic curve around a station: over the whole member where it is short enough to be worked at
 * once, else over the least run of neighbouring spans whose supports tell the constants.
 *
 * @throws RangeError where not even those of the whole member do: the member is no stable beam.
 */
export function integrationAround(context: CaseContext, x: number): Integration {
  const { structure } = context;
  const whole: Worked = {
    from: structure.points[0]?.x ?? 0,
    to: structure.points.at(-1)?.x ?? 0,
  };
  const holds = structure.supports.filter(({ restraints }) =>
    restraints.some((r) => r.kind === 'force' && r.direction[1] !== 0),
  );
  const isShort = holds.length <= mostSupports && structure.hinges.length <= mostHinges;
  const bounds = [
    ...new Set([whole.from, ...holds.map((one) => one.x), whole.to]),
  ].sort((a, b) => a - b);
  const runs = isShort || slideOf(context) === undefined ? [] : runsAround(bounds, x);
  for (const run of [...runs, whole]) {
    const found = integrateBending(context, bendingOf(context, run));
    if (found !== undefined) return found;
  }
  throw new RangeError('the supports do not tell the elastic curve');
}

/** Runs of neighbouring spans that hold a station, the shortest first. */
function* runsAround(bounds: readonly number[], x: number): Generator<Worked> {
  for (let count = 1; count < bounds.length; count += 1) {
    for (let start = 0; start + count < bounds.length; start += 1) {
      const [from, to] = [bounds[start], bounds[start + count]];
      if (from !== undefined && to !== undefined && from <= x && x <= to)
        yield { from, to };
    }
  }
}

/** True where a stretch is not the whole member. */
export function isPart(
  { structure }: CaseContext,
  { from, to }: Pick<Bending, 'from' | 'to'>,
): boolean {
  return from !== structure.points[0]?.x || to !== structure.points.at(-1)?.x;
}
