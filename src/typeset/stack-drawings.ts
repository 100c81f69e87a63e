import type { Drawing, Mark } from '../drawing/index.ts';

/** How drawings stand below each other, points. */
export interface Leading {
  /** From baseline to baseline. */
  readonly leading: number;
  /** The least room from the foot of one to the top of the next; it widens the leading. */
  readonly clearance: number;
}

/** Stacks drawings at one left edge; the baseline is the first one's. */
export function stackDrawings(
  drawings: readonly Drawing[],
  { leading, clearance }: Leading,
): Drawing {
  const marks: Mark[] = [];
  let baseline = 0;
  let depth = 0;
  for (const [index, drawing] of drawings.entries()) {
    const above = drawing.baseline ?? drawing.height;
    baseline =
      index === 0 ? above : baseline + Math.max(leading, depth + clearance + above);
    depth = drawing.height - above;
    const y = baseline - above;
    if (y === 0) marks.push(...drawing.marks);
    else marks.push({ kind: 'group', x: 0, y, marks: drawing.marks });
  }
  const first = drawings[0];
  return {
    width: Math.max(0, ...drawings.map(({ width }) => width)),
    height: baseline + depth,
    baseline: first?.baseline ?? first?.height ?? 0,
    ...(drawings.length < 2 ? {} : { lastBaseline: baseline }),
    marks,
    ...(first?.alternate === undefined ? {} : { alternate: first.alternate }),
  };
}
