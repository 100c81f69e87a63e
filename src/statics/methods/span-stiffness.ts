import type { Piecewise } from '../piecewise.ts';
import { solveBeam } from '../solve-beam.ts';
import type { BeamStructure, Load } from '../structure.ts';
import {
  freeCurvature,
  integralOf,
  productOf,
  stretchesOf,
  type Stretch,
} from './stretches.ts';

/** A span as slope-deflection sees it; end moments counterclockwise on the span, stiffness as a share of the reference EI₀. */
export interface SpanStiffness {
  readonly from: number;
  readonly to: number;
  /** Moment at a end for a unit turn times EI₀ at the same end, or at the other; 4/L, 4/L and 2/L where EI is EI₀ throughout. 1/m. */
  readonly aa: number;
  readonly bb: number;
  readonly ab: number;
  /** EI₀ times the turn of an end, the span on simple supports, under a unit moment there, or at the other end. */
  readonly flexibility: {
    readonly aa: number;
    readonly bb: number;
    readonly ab: number;
  };
  /** End moments with both ends held fast, N·m. */
  readonly fixed: { readonly a: number; readonly b: number };
  /** EI₀ times the turns of the ends under the loads and free curvature, the span on simple supports. */
  readonly turns: { readonly a: number; readonly b: number };
  /** Upward forces at the ends under the loads, the span on simple supports. */
  readonly simple: { readonly a: number; readonly b: number };
  readonly loads: readonly Load[];
  /** Stretches with the moment on simple supports and the free curvature as functions. */
  readonly stretches: readonly Stretch[];
  readonly isPrismatic: boolean;
  readonly hasFreeCurvature: boolean;
}

/** Works a span: turns of its ends on simple supports by virtual work, and what holds them back. */
export function spanStiffness(
  structure: BeamStructure,
  of: {
    readonly mark: string;
    readonly EI: number;
    readonly from: number;
    readonly to: number;
    readonly loads: readonly Load[];
  },
): SpanStiffness {
  const { mark, EI, from, to, loads } = of;
  const { moment, simple } = onSimpleSupports({ from, to, loads });
  const free = clipped(freeCurvature(structure, mark), from, to);
  const stretches = stretchesOf(
    {
      ...structure,
      points: [
        { name: 'a', x: from },
        { name: 'b', x: to },
      ],
    },
    [moment, free],
  );
  const { aa, bb, ab, a, b } = endTurns(stretches, { from, to, EI });
  const determinant = aa * bb - ab * ab;
  const stiffness = {
    aa: bb / determinant,
    bb: aa / determinant,
    ab: ab / determinant,
  };
  return {
    from,
    to,
    ...stiffness,
    flexibility: { aa, bb, ab },
    turns: { a, b },
    fixed: {
      a: -(stiffness.aa * a + stiffness.ab * b),
      b: -(stiffness.ab * a + stiffness.bb * b),
    },
    simple,
    loads,
    stretches,
    isPrismatic: new Set(stretches.map((stretch) => stretch.EI)).size === 1,
    hasFreeCurvature: stretches.some(({ functions }) => (functions[1]?.[0] ?? 0) !== 0),
  };
}

/** Turns of the ends on simple supports by virtual work, times EI₀: under unit end moments, and under the loads. */
function endTurns(
  stretches: readonly Stretch[],
  { from, to, EI }: { readonly from: number; readonly to: number; readonly EI: number },
): Readonly<Record<'aa' | 'bb' | 'ab' | 'a' | 'b', number>> {
  const L = to - from;
  let [aa, bb, ab, a, b] = [0, 0, 0, 0, 0];
  for (const { from: start, to: end, EI: here, functions } of stretches) {
    const share = EI / here;
    const near = [(to - start) / L, -1 / L];
    const far = [(start - from) / L, 1 / L];
    const over = (f: readonly number[], g: readonly number[]): number =>
      integralOf(productOf(f, g), end - start);
    aa += share * over(near, near);
    bb += share * over(far, far);
    ab += share * over(near, far);
    const [m = [0], k = [0]] = functions;
    a -= share * over(m, near) + EI * over(k, near);
    b += share * over(m, far) + EI * over(k, far);
  }
  return { aa, bb, ab, a, b };
}

/** The span as a beam of its own on two simple supports. */
function onSimpleSupports(of: {
  readonly from: number;
  readonly to: number;
  readonly loads: readonly Load[];
}): { readonly moment: Piecewise; readonly simple: SpanStiffness['simple'] } {
  const { from, to, loads } = of;
  const outcome = solveBeam({
    kind: 'beam',
    points: [
      { name: 'a', x: from },
      { name: 'b', x: to },
    ],
    supports: [
      {
        point: 'a',
        x: from,
        type: 'pin',
        restraints: [
          { kind: 'force', direction: [1, 0] },
          { kind: 'force', direction: [0, 1] },
        ],
      },
      {
        point: 'b',
        x: to,
        type: 'roller',
        restraints: [{ kind: 'force', direction: [0, 1] }],
      },
    ],
    hinges: [],
    cases: ['span'],
    loads: loads.map((load) => ({ ...load, case: 'span' })),
  });
  const result = outcome.kind === 'beam' ? outcome.results[0] : undefined;
  if (result === undefined) throw new RangeError('a simple span cannot be solved');
  const [a, b] = result.reactions;
  return { moment: result.moment, simple: { a: a?.y ?? 0, b: b?.y ?? 0 } };
}

function clipped(f: Piecewise | undefined, from: number, to: number): Piecewise {
  const inside = (f?.pieces ?? []).flatMap(({ start, end, coefficients }) => {
    const [low, high] = [Math.max(start, from), Math.min(end, to)];
    return high > low ? [{ start: low, end: high, coefficients }] : [];
  });
  return inside.length === 0
    ? { pieces: [{ start: from, end: to, coefficients: [0] }] }
    : { pieces: inside };
}
