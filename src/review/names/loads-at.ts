import type { Load } from '../../statics/index.ts';
import type { MarkingContext } from '../marking-context.ts';

/** A point load or couple of what is being worked, with what its case is multiplied by. */
export interface FoundLoad {
  readonly load: Exclude<Load, { kind: 'distributed' }>;
  readonly factor: number;
}

/** The point loads and couples under the loading, of one case or at one place where these are given. */
export function loadsAt(
  { structure, loading }: MarkingContext,
  where: { readonly mark: string | undefined; readonly x: number | undefined },
): readonly FoundLoad[] {
  const first = structure.points[0]?.x ?? 0;
  const margin = 1e-9 * ((structure.points.at(-1)?.x ?? 0) - first);
  return structure.loads.flatMap((load): readonly FoundLoad[] => {
    const factor = factorOf(loading, load.case);
    if (load.kind === 'distributed' || factor === 0) return [];
    if (where.mark !== undefined && where.mark !== load.case) return [];
    if (where.x !== undefined && Math.abs(load.x - where.x) > margin) return [];
    return [{ load, factor }];
  });
}

/** What a case is multiplied by in what is being worked; 0 where it takes no part. */
export function factorOf(loading: MarkingContext['loading'], mark: string): number {
  return loading
    .filter((one) => one.case === mark)
    .reduce((sum, one) => sum + one.factor, 0);
}
