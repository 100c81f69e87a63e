import {
  breakpointsOf,
  combine,
  differentiate,
  jumpsOf,
  sizeOf,
  valueAt,
  type Displacement,
  type Piecewise,
} from '../../statics/index.ts';
import type { CaseContext } from '../case-context.ts';
import { conditionsOf, slideOf } from '../displacements/conditions.ts';
import { curvaturesOf } from '../displacements/curvature-terms.ts';
import {
  greatestDeflections,
  type GreatestDeflection,
} from '../displacements/greatest-deflections.ts';
import {
  integratedAt,
  sizeOfTermsAt,
  type Integration,
} from '../displacements/integrate-bending.ts';
import { partRightOf, stiffnessParts } from '../displacements/stiffness-along.ts';
import { virtualWork } from '../displacements/virtual-work.ts';
import { integrationAround } from '../displacements/worked-stretch.ts';
import { lengthText, valueText } from '../printing.ts';
import { agreementTolerance, type CheckOutcome } from './check-outcome.ts';

/**
 * The elastic curve claimed for a case: bent as its moments ask, unbroken, on its supports, and greatest
 * deflections that integration and virtual work find again. Worked, and printed with the displacements.
 */
export function displacementChecks(context: CaseContext): readonly CheckOutcome[] {
  const { displacement } = context.result;
  if (displacement === undefined) return [];
  return [
    bendsAsAsked(context, displacement),
    isUnbroken(context, displacement),
    ...restsOnSupports(context, displacement),
    ...greatestDeflections(context).flatMap((one) => foundAgain(context, one)),
  ];
}

/** What rounding may leave: of the two ways of an indeterminate member so much as they themselves may differ by. */
function tolerance({ result }: CaseContext): number {
  return Math.max(agreementTolerance, result.agreement?.allowed ?? 0);
}

/** v′ = θ and EI θ′ = M + EI κ on every piece. */
function bendsAsAsked(
  context: CaseContext,
  { slope, deflection }: Displacement,
): CheckOutcome {
  const { result, structure } = context;
  const asked = curvatureOf(context);
  const cuts = [...new Set([...breakpointsOf(asked), ...breakpointsOf(slope)])].sort(
    (a, b) => a - b,
  );
  const off = (f: Piecewise, g: Piecewise): number => {
    const size = Math.max(sizeOf(f), sizeOf(g));
    return cuts.slice(1).reduce((worst, to, index) => {
      const from = cuts[index] ?? to;
      const apart = [0.1, 0.5, 0.9].map((part) => {
        const x = from + part * (to - from);
        return Math.abs(valueAt(f, x, 'left') - valueAt(g, x, 'left'));
      });
      return size === 0 ? worst : Math.max(worst, Math.max(...apart) / size);
    }, 0);
  };
  const length = (structure.points.at(-1)?.x ?? 0) - (structure.points[0]?.x ?? 0);
  const bend = off(differentiate(slope), asked);
  // The curve of a member that only moves has no curvature to be compared.
  const isStraight = sizeOf(asked) * length <= 1e-12 * sizeOf(slope);
  return {
    holds:
      off(differentiate(deflection), slope) <= tolerance(context) &&
      (isStraight || bend <= tolerance(context)),
    finding: `the elastic curve of ${result.mark} does not bend as its moments ask: ${bend.toExponential(1)} of its curvature is left over`,
  };
}

/** M / EI + κ along the member. */
function curvatureOf(context: CaseContext): Piecewise {
  const { structure, result } = context;
  const parts = stiffnessParts(structure);
  const free = curvaturesOf(context);
  const cuts = [
    ...new Set([
      ...breakpointsOf(result.moment),
      ...parts.slice(1).map(({ from }) => from),
      ...free.flatMap(({ from, to }) => [from, to]),
    ]),
  ].sort((a, b) => a - b);
  const bent: Piecewise = {
    pieces: cuts.slice(1).flatMap((end, index) => {
      const start = cuts[index] ?? end;
      const piece =
        result.moment.pieces.find((one) => start < one.end) ??
        result.moment.pieces.at(-1);
      if (piece === undefined || end <= start) return [];
      const { EI } = partRightOf(parts, start);
      const kappa = free
        .filter(({ from, to }) => from <= start && to >= end)
        .reduce((all, { curvature }) => all + curvature, 0);
      const shifted = shift(piece.coefficients, start - piece.start);
      return [
        {
          start,
          end,
          coefficients: shifted.map((c, i) => c / EI + (i === 0 ? kappa : 0)),
        },
      ];
    }),
  };
  return combine([{ factor: 1, f: bent }]);
}

/** The same polynomial in powers of the distance from a place farther on. */
function shift(coefficients: readonly number[], by: number): readonly number[] {
  return coefficients.map((_, power) =>
    coefficients.reduceRight<number>((all, coefficient, i) => {
      if (i < power) return all;
      return all + coefficient * choose(i, power) * by ** (i - power);
    }, 0),
  );
}

function choose(n: number, k: number): number {
  return k === 0 ? 1 : (choose(n - 1, k - 1) * n) / k;
}

/** The deflection leaps nowhere, the slope only at hinges. */
function isUnbroken(
  context: CaseContext,
  { slope, deflection }: Displacement,
): CheckOutcome {
  const margin = tolerance(context);
  const leaps = (f: Piecewise): readonly number[] =>
    jumpsOf(f)
      .filter(({ left, right }) => Math.abs(right - left) > margin * sizeOf(f))
      .map(({ x }) => x);
  const kinks = leaps(slope).filter(
    (x) =>
      !context.structure.hinges.some(
        (hinge) => Math.abs(hinge.x - x) <= 1e-9 * Math.abs(x) + 1e-12,
      ),
  );
  return {
    holds: leaps(deflection).length === 0 && kinks.length === 0,
    finding: `the elastic curve breaks at ${[...leaps(deflection), ...kinks].map((x) => lengthText(context.printing, x)).join(', ')}`,
  };
}

/** Every support moves as its settlement and its spring say. */
function restsOnSupports(
  context: CaseContext,
  { slope, deflection }: Displacement,
): readonly CheckOutcome[] {
  const { structure, printing } = context;
  const whole = {
    from: structure.points[0]?.x ?? 0,
    to: structure.points.at(-1)?.x ?? 0,
  };
  const isTied = slideOf(context) === undefined;
  const conditions = conditionsOf(context, whole);
  // A slide that nobody knows is what the first inclined support makes of it; the others must agree.
  const tied = conditions.find(({ slide }) => slide !== 0);
  const u =
    isTied && tied !== undefined
      ? (tied.movement - valueAt(deflection, tied.x, 'left')) / tied.slide
      : 0;
  return conditions.map(({ what, x, point, movement, slide }) => {
    const curve = what === 'slope' ? slope : deflection;
    const found = valueAt(curve, x, 'left');
    const expected = movement - slide * u;
    const kind = what === 'slope' ? 'angle' : 'deflection';
    const size = Math.max(sizeOf(curve), Math.abs(expected), Math.abs(slide * u));
    return {
      holds: Math.abs(found - expected) <= tolerance(context) * size,
      finding: `the ${what} at ${point} is ${valueText(printing, kind, found)}, but the support asks for ${valueText(printing, kind, expected)}`,
    };
  });
}

/** A greatest deflection by integration, and by virtual work. */
function foundAgain(
  context: CaseContext,
  { value, x }: GreatestDeflection,
): readonly CheckOutcome[] {
  const { printing } = context;
  const place = lengthText(printing, x);
  const one = (way: string, found: number, size: number): CheckOutcome => ({
    holds:
      Math.abs(found - value) <= tolerance(context) * Math.max(size, Math.abs(value)),
    finding: `the deflection at ${place} is ${valueText(printing, 'deflection', value)}, but ${way} gives ${valueText(printing, 'deflection', found)}`,
  });
  const integrated = integrationAround(context, x);
  const work = virtualWork(context, x);
  return [
    one(
      'integration',
      integratedAt(integrated, x, 2) / integrated.bending.EI,
      sizeOfIntegration(integrated, x),
    ),
    one('virtual work', work.deflection, work.size),
  ];
}

function sizeOfIntegration({ bending, rows }: Integration, x: number): number {
  const stations = [x, ...rows.map(({ condition }) => condition.x)];
  return Math.max(...stations.map((at) => sizeOfTermsAt(bending, at, 2))) / bending.EI;
}
