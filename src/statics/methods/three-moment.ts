import { shareAxially } from '../axial-sharing.ts';
import type { BeamStructure } from '../structure.ts';
import { tidyStructure } from '../tidy-structure.ts';
import {
  continuousBeam,
  type ContinuousBeam,
  type ContinuousSpan,
} from './continuous-spans.ts';
import { forceOf } from './span-loads.ts';
import { simpleShears } from './simple-shears.ts';
import { spanTerms, type SpanTerms } from './span-terms.ts';

/** The equation of one support: the bending moments at the supports beside it and at itself, `factor · M` each. */
export interface ThreeMomentEquation {
  /** Its support, from 0. */
  readonly support: number;
  /** Factors of the moments at the support before, at this one and at the next, m; 0 where there is no span. */
  readonly before: number;
  readonly here: number;
  readonly after: number;
  /** −6Aā/L and its like of both spans, of the sinking of supports, of free curvature; N·m². */
  readonly right: number;
}

/** The three-moment equation worked for one case. */
export interface ThreeMoment {
  readonly beam: ContinuousBeam;
  readonly terms: readonly SpanTerms[];
  readonly equations: readonly ThreeMomentEquation[];
  /** Bending moments at the supports, sagging positive, N·m. */
  readonly moments: readonly number[];
  /** Shear just inside both ends of each span, N. */
  readonly shears: readonly { readonly left: number; readonly right: number }[];
  /** Values of every restraint, support by support. */
  readonly components: readonly (readonly number[])[];
}

/**
 * The three-moment equation for a continuous beam on level rigid supports, pinned, built in or with an
 * overhang at its ends, spans of constant or stepped stiffness, supports that sink, free curvature.
 * At each support where the moment is not known the two spans meet with one slope; a built-in end is one
 * beside a span of no length.
 * — Clapeyron's theorem of three moments (1857) with the terms for different stiffness and for sinking
 * supports; Timoshenko, Strength of Materials, part I, continuous beams (from memory).
 *
 * @throws RangeError where the structure is no beam or has less than two supports.
 */
export function threeMoment(structure: BeamStructure, mark: string): ThreeMoment {
  const tidy = tidyStructure(structure);
  const beam = continuousBeam(tidy, mark);
  const terms = beam.spans.map((span) => spanTerms(span, beam.EI));
  const { left, right } = beam.ends;
  const last = beam.supports.length - 1;
  const equations = beam.supports.flatMap((_, support) => {
    const isKnown =
      (support === 0 && left.kind !== 'fixed') ||
      (support === last && right.kind !== 'fixed');
    return isKnown ? [] : [equationOf(terms, support)];
  });
  const moments = solveMoments(beam, equations);
  return { beam, terms, equations, moments, ...closed(tidy, { beam, mark, moments }) };
}

function equationOf(terms: readonly SpanTerms[], support: number): ThreeMomentEquation {
  const none = { direct: 0, known: 0 };
  const before = terms[support - 1];
  const after = terms[support];
  const [left, right] = [before?.right ?? none, after?.left ?? none];
  return {
    support,
    before: before?.cross ?? 0,
    here: left.direct + right.direct,
    after: after?.cross ?? 0,
    right: left.known + right.known,
  };
}

/** Elimination along the beam and back; the factors of the own moment outweigh the others. */
function solveMoments(
  { supports, ends }: ContinuousBeam,
  equations: readonly ThreeMomentEquation[],
): readonly number[] {
  const moments = supports.map((_, index) => {
    if (index === 0) return ends.left.moment;
    return index === supports.length - 1 ? ends.right.moment : 0;
  });
  const unknown = new Set(equations.map(({ support }) => support));
  const known = (support: number): number =>
    unknown.has(support) ? 0 : (moments[support] ?? 0);
  const cleared: { here: number; right: number }[] = [];
  for (const [index, equation] of equations.entries()) {
    const { support, before, here, after, right } = equation;
    const rest = right - before * known(support - 1) - after * known(support + 1);
    const above = cleared[index - 1];
    const share = above === undefined ? 0 : before / above.here;
    cleared.push({
      here: here - share * (equations[index - 1]?.after ?? 0),
      right: rest - share * (above?.right ?? 0),
    });
  }
  for (let index = equations.length - 1; index >= 0; index -= 1) {
    const { support, after } = equations[index] ?? { support: 0, after: 0 };
    const row = cleared[index] ?? { here: 1, right: 0 };
    const next = unknown.has(support + 1) ? (moments[support + 1] ?? 0) : 0;
    moments[support] = (row.right - after * next) / row.here;
  }
  return moments;
}

/** Shears from end moments, reactions from shears: what any method for support moments ends with. */
export function closed(
  structure: BeamStructure,
  of: {
    readonly beam: ContinuousBeam;
    readonly mark: string;
    readonly moments: readonly number[];
  },
): Pick<ThreeMoment, 'shears' | 'components'> {
  const { beam, mark, moments } = of;
  const shears = beam.spans.map((span, index) =>
    shearsOf(span, moments[index] ?? 0, moments[index + 1] ?? 0),
  );
  const upward = beam.supports.map(({ own }, index) =>
    own.reduce(
      (sum, load) => sum + forceOf(load),
      (shears[index]?.left ?? 0) - (shears[index - 1]?.right ?? 0),
    ),
  );
  const found = structure.supports.map(({ x, restraints }) => {
    const at = beam.supports.findIndex((support) => support.x === x);
    return restraints.map((restraint) => {
      if (restraint.kind === 'moment') return endReaction(beam, moments, at);
      const [dx, dy] = restraint.direction;
      return dx === 0 ? (upward[at] ?? 0) / dy : 0;
    });
  });
  const isHeldAlong = structure.supports.some(({ restraints }) =>
    restraints.some((r) => r.kind === 'force' && r.direction[0] !== 0),
  );
  return {
    shears,
    components: isHeldAlong ? shareAxially(structure, mark, found) : found,
  };
}

function shearsOf(
  span: ContinuousSpan,
  left: number,
  right: number,
): { readonly left: number; readonly right: number } {
  const simple = simpleShears(span);
  const slope = (right - left) / span.length;
  return { left: simple.left + slope, right: simple.right + slope };
}

/** The couple of a built-in end, counterclockwise: it balances the bending moment and couples that stand on the support. */
function endReaction(
  { supports }: ContinuousBeam,
  moments: readonly number[],
  at: number,
): number {
  // The left end sees its own loads mirrored, so that a couple has the other sign there.
  const isLeft = at === 0;
  const own = (supports[at]?.own ?? []).reduce(
    (sum, load) => sum + (load.kind === 'couple' ? load.couple : 0),
    0,
  );
  const inner = moments[at] ?? 0;
  return isLeft ? own - inner : inner - own;
}
