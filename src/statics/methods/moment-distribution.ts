import type { BeamStructure } from '../structure.ts';
import { tidyStructure } from '../tidy-structure.ts';
import { continuousBeam, type ContinuousBeam } from './continuous-spans.ts';
import { fixedSpan, type FixedSpan } from './fixed-ends.ts';
import { spanTerms, type SpanTerms } from './span-terms.ts';
import { closed, type ThreeMoment } from './three-moment.ts';

/** Distribution stops when no moment carried to a joint that turns exceeds this share of the greatest that the distribution starts from. */
export const carriedShare: number = 1e-3;

/** More rounds than this are never worked: each leaves at most half of what the one before did where spans have one stiffness. */
const mostRounds = 10_000;

/** The two ends of each span, from left to right, N·m; counterclockwise on the end positive. */
export type EndMoments = readonly { readonly left: number; readonly right: number }[];

/** A row of the distribution: moments that it adds. */
export interface DistributionRow {
  readonly what: 'fixed-end' | 'release' | 'balance' | 'carry-over';
  readonly moments: EndMoments;
}

/** A support as a joint of the distribution. */
export interface DistributionJoint {
  /** End supports are fixed, or released once and for all because their moment is known; the others turn. */
  readonly kind: 'turns' | 'fixed' | 'released';
  /** Shares of an unbalanced moment that the ends of the spans left and right of it take; 0 where there is none. */
  readonly left: number;
  readonly right: number;
}

/** Moment distribution worked for one case. */
export interface MomentDistribution {
  readonly beam: ContinuousBeam;
  readonly terms: readonly SpanTerms[];
  readonly fixed: readonly FixedSpan[];
  /** Stiffness of each end as its joint sees it, by EI₀: less where the far end is released, 3/L for 4/L. 1/m. */
  readonly stiffness: EndMoments;
  readonly joints: readonly DistributionJoint[];
  readonly rows: readonly DistributionRow[];
  /** The sums of the rows. */
  readonly sums: EndMoments;
  /** What a carried moment must be below to stop, N·m. */
  readonly limit: number;
  readonly shears: ThreeMoment['shears'];
  /** Values of every restraint, support by support, from the sums of the rows. */
  readonly components: readonly (readonly number[])[];
  /** How far these are from the same worked on until nothing is left to carry, as a share of their scale, with 1e-9 for rounding. */
  readonly stopsAt: number;
}

/**
 * Moment distribution for a continuous beam: all joints held, then all that turn balanced at once and
 * half of it (the carry-over) sent to the far ends, until what is carried is small; ends whose moment is
 * known are released first and not held again, so that their spans have the lesser stiffness.
 * — Hardy Cross, Analysis of continuous frames by distributing fixed-end moments, Transactions ASCE 96,
 * 1932 (from memory).
 *
 * @throws RangeError where the structure is no beam or has less than two supports.
 */
export function momentDistribution(
  structure: BeamStructure,
  mark: string,
): MomentDistribution {
  const tidy = tidyStructure(structure);
  const beam = continuousBeam(tidy, mark);
  const terms = beam.spans.map((span) => spanTerms(span, beam.EI));
  const fixed = beam.spans.flatMap((span, index) => {
    const of = terms[index];
    return of === undefined ? [] : [fixedSpan(span, of, beam.EI)];
  });
  const stiffness = fixed.map((span, index) => seenStiffness(beam, span, index));
  const joints = beam.supports.map((_, index) => jointOf(beam, stiffness, index));
  const setting = { beam, fixed, joints };
  const start = opening(setting);
  const greatest = Math.max(0, ...start.flatMap(({ moments }) => sizes(moments)));
  const limit = carriedShare * greatest;
  const rows = distribute(setting, start, limit);
  const sums = sumOf(rows);
  const found = closed(tidy, { beam, mark, moments: bendingOf(beam, sums) });
  const settled = sumOf(distribute(setting, start, 1e-15 * greatest));
  const exhausted = closed(tidy, { beam, mark, moments: bendingOf(beam, settled) });
  const work = { beam, terms, fixed, stiffness, joints, rows, sums, limit };
  return { ...work, ...found, stopsAt: distance(tidy, { found, exhausted, settled }) };
}

interface Setting {
  readonly beam: ContinuousBeam;
  readonly fixed: readonly FixedSpan[];
  readonly joints: readonly DistributionJoint[];
}

function seenStiffness(
  { ends, spans }: ContinuousBeam,
  { stiffness, carryOver }: FixedSpan,
  index: number,
): { readonly left: number; readonly right: number } {
  const both = carryOver.left * carryOver.right;
  const isFarReleased = {
    left: index === spans.length - 1 && ends.right.kind !== 'fixed',
    right: index === 0 && ends.left.kind !== 'fixed',
  };
  return {
    left: stiffness.left * (isFarReleased.left ? 1 - both : 1),
    right: stiffness.right * (isFarReleased.right ? 1 - both : 1),
  };
}

function jointOf(
  { ends, supports }: ContinuousBeam,
  stiffness: EndMoments,
  index: number,
): DistributionJoint {
  const isEnd = index === 0 || index === supports.length - 1;
  if (isEnd) {
    const end = index === 0 ? ends.left : ends.right;
    return { kind: end.kind === 'fixed' ? 'fixed' : 'released', left: 0, right: 0 };
  }
  const left = stiffness[index - 1]?.right ?? 0;
  const right = stiffness[index]?.left ?? 0;
  return { kind: 'turns', left: left / (left + right), right: right / (left + right) };
}

/** Fixed-end moments, then ends whose moment is known brought to it, and what that carries. */
function opening({ beam, fixed }: Setting): readonly DistributionRow[] {
  const held = fixed.map(({ loads, movements }) => ({
    left: loads.left + movements.left,
    right: loads.right + movements.right,
  }));
  const { left, right } = beam.ends;
  const last = held.length - 1;
  const release = held.map((end, index) => ({
    left: index === 0 && left.kind !== 'fixed' ? 0 - left.moment - end.left : 0,
    right: index === last && right.kind !== 'fixed' ? right.moment - end.right : 0,
  }));
  const rows: readonly DistributionRow[] = [{ what: 'fixed-end', moments: held }];
  if (left.kind === 'fixed' && right.kind === 'fixed') return rows;
  const carried = fixed.map(({ carryOver }, index) => ({
    left: (release[index]?.right ?? 0) * carryOver.right,
    right: (release[index]?.left ?? 0) * carryOver.left,
  }));
  return [
    ...rows,
    { what: 'release', moments: release },
    { what: 'carry-over', moments: carried },
  ];
}

/** Balances and carries until what is carried to joints that turn is not above the limit. */
function distribute(
  setting: Setting,
  start: readonly DistributionRow[],
  limit: number,
): readonly DistributionRow[] {
  const rows = [...start];
  let sums = sumOf(rows);
  for (let round = 0; round < mostRounds; round += 1) {
    const balance = balanced(setting, sums);
    if (sizes(balance).every((size) => size === 0)) return rows;
    const carry = carried(setting, balance);
    rows.push({ what: 'balance', moments: balance });
    sums = added(sums, balance);
    if (sizes(carry).every((size) => size === 0)) return rows;
    rows.push({ what: 'carry-over', moments: carry });
    sums = added(sums, carry);
    if (sizes(carry, setting.joints).every((size) => size <= limit)) {
      const last = balanced(setting, sums);
      if (sizes(last).some((size) => size > 0))
        rows.push({ what: 'balance', moments: last });
      return rows;
    }
  }
  throw new RangeError('distribution does not come to rest');
}

/** What each joint that turns gives its two ends to come into balance. */
function balanced({ joints, fixed }: Setting, sums: EndMoments): EndMoments {
  const lacking = joints.map(({ kind }, index) => {
    if (kind !== 'turns') return 0;
    const [a, b] = [sums[index - 1]?.right ?? 0, sums[index]?.left ?? 0];
    const lack = a + b;
    // What rounding leaves of two equal moments is none.
    return Math.abs(lack) <= 1e-15 * (Math.abs(a) + Math.abs(b)) ? 0 : 0 - lack;
  });
  return fixed.map((_, index) => ({
    left: (lacking[index] ?? 0) * (joints[index]?.right ?? 0),
    right: (lacking[index + 1] ?? 0) * (joints[index + 1]?.left ?? 0),
  }));
}

/** Carried to far ends that are held or turn; an end released stays as it is. */
function carried({ joints, fixed }: Setting, balance: EndMoments): EndMoments {
  return fixed.map(({ carryOver }, index) => ({
    left:
      joints[index]?.kind === 'released'
        ? 0
        : (balance[index]?.right ?? 0) * carryOver.right,
    right:
      joints[index + 1]?.kind === 'released'
        ? 0
        : (balance[index]?.left ?? 0) * carryOver.left,
  }));
}

/** Sizes of all moments, or of those at joints that turn. */
function sizes(
  moments: EndMoments,
  joints?: readonly DistributionJoint[],
): readonly number[] {
  const counts = (joint: number): boolean =>
    joints === undefined || joints[joint]?.kind === 'turns';
  return moments.flatMap(({ left, right }, index) => [
    counts(index) ? Math.abs(left) : 0,
    counts(index + 1) ? Math.abs(right) : 0,
  ]);
}

function added(a: EndMoments, b: EndMoments): EndMoments {
  return a.map(({ left, right }, index) => ({
    left: left + (b[index]?.left ?? 0),
    right: right + (b[index]?.right ?? 0),
  }));
}

function sumOf(rows: readonly DistributionRow[]): EndMoments {
  const [first, ...others] = rows.map(({ moments }) => moments);
  return others.reduce(added, first ?? []);
}

/** Bending moments at the supports, sagging positive; known ones as statics gives them. */
function bendingOf({ ends }: ContinuousBeam, sums: EndMoments): readonly number[] {
  const first =
    ends.left.kind === 'fixed' ? 0 - (sums[0]?.left ?? 0) : ends.left.moment;
  return [
    first,
    ...sums.map(({ right }, index) =>
      index === sums.length - 1 && ends.right.kind !== 'fixed'
        ? ends.right.moment
        : right,
    ),
  ];
}

/** The worst difference of a restraint, forces against the greatest force and moments against the greatest moment. */
function distance(
  { supports }: BeamStructure,
  of: {
    readonly found: Pick<ThreeMoment, 'components'>;
    readonly exhausted: Pick<ThreeMoment, 'components'>;
    readonly settled: EndMoments;
  },
): number {
  const { found, exhausted, settled } = of;
  const greatest = {
    force: greatestForce(supports, exhausted.components),
    moment: Math.max(0, ...sizes(settled)),
  };
  const shares = supports.flatMap(({ restraints }, support) =>
    restraints.map(({ kind }, index) => {
      const here = found.components[support]?.[index] ?? 0;
      const off = Math.abs(here - (exhausted.components[support]?.[index] ?? 0));
      return off === 0 ? 0 : off / greatest[kind];
    }),
  );
  return Math.max(0, ...shares) + 1e-9;
}

function greatestForce(
  supports: BeamStructure['supports'],
  components: readonly (readonly number[])[],
): number {
  return Math.max(
    0,
    ...supports.flatMap(({ restraints }, support) =>
      restraints.map(({ kind }, index) =>
        kind === 'force' ? Math.abs(components[support]?.[index] ?? 0) : 0,
      ),
    ),
  );
}
