import { jumpsOf, valueOfCutForce, type Cut, type CutForce } from '../statics/index.ts';
import type { MarkingContext } from './marking-context.ts';

/** Which of the forces at a cut. */
export type CutForceName = CutForce['force'];

/**
 * One text for one internal force, and its value in the signs of the diagrams. Where the force does
 * not jump, both sides of a station are one and the same.
 */
export function cutForceAt(
  { structure, result }: MarkingContext,
  cut: Cut,
  force: CutForceName,
): { readonly key: string; readonly truth: number; readonly hasSides: boolean } {
  const first = structure.points[0]?.x ?? 0;
  const margin = 1e-9 * ((structure.points.at(-1)?.x ?? 0) - first);
  const hasSides = jumpsOf(result[force]).some(
    (jump) => Math.abs(jump.x - cut.x) <= margin,
  );
  const side = hasSides ? ` ${cut.side}` : '';
  return {
    key: `cut ${Math.round((cut.x - first) / (margin || 1))} ${force}${side}`,
    truth: valueOfCutForce(result, { kind: 'cut', cut, force }),
    hasSides,
  };
}
