import { threeExtremes } from './beam-result.ts';
import type { CaseFactor } from './loading.ts';
import type { Piecewise } from './piecewise.ts';
import { combine } from './piecewise/combine.ts';
import { extremesOf } from './piecewise/extremes.ts';
import type {
  Agreement,
  BeamResult,
  Displacement,
  HingeForce,
  Reaction,
  Residual,
} from './solution.ts';
import { dropNoise } from './tolerances.ts';

/** A result and its factor in the sum. */
interface Share {
  readonly result: BeamResult;
  readonly factor: number;
}

/**
 * The sum of factored results of one beam, under a new mark: everything is linear, the residuals
 * too, except the extremes, which are sought anew.
 *
 * @throws RangeError where a factor's case is not among the results, or there is none at all.
 */
export function superpose(
  results: readonly BeamResult[],
  factors: readonly CaseFactor[],
  mark: string,
): BeamResult {
  const shares = factors.map(({ case: name, factor }): Share => {
    const result = results.find((candidate) => candidate.mark === name);
    if (result === undefined) throw new RangeError(`no result ${name} to superpose`);
    return { result, factor };
  });
  const first = shares[0]?.result;
  if (first === undefined) throw new RangeError(`nothing to superpose for ${mark}`);
  const curve = (name: 'axial' | 'shear' | 'moment'): Piecewise =>
    combine(shares.map(({ result, factor }) => ({ factor, f: result[name] })));
  const curves = {
    axial: curve('axial'),
    shear: curve('shear'),
    moment: curve('moment'),
  };
  return {
    mark,
    reactions: first.reactions.map((reaction, index) =>
      sumOfReactions(shares, reaction, index),
    ),
    hingeForces: first.hingeForces.map(({ point }, index): HingeForce => {
      const along = (axis: 'x' | 'y'): number =>
        sumOf(shares, (result) => result.hingeForces[index]?.[axis]);
      return { point, x: along('x'), y: along('y') };
    }),
    ...curves,
    extremes: threeExtremes(curves),
    residuals: first.residuals.map(({ equation }, index) =>
      sumOfResiduals(shares, equation, index),
    ),
    ...sumOfDisplacements(shares),
    ...worstAgreement(shares),
  };
}

/** The sum of displacements; none where any result lacks its own. */
function sumOfDisplacements(shares: readonly Share[]): {
  readonly displacement?: Displacement;
} {
  const known = shares.flatMap(({ result: { displacement }, factor }) =>
    displacement === undefined ? [] : [{ displacement, factor }],
  );
  if (known.length < shares.length) return {};
  const sum = (name: 'slope' | 'deflection'): Piecewise =>
    combine(
      known.map(({ displacement, factor }) => ({ factor, f: displacement[name] })),
    );
  const [slope, deflection] = [sum('slope'), sum('deflection')];
  return { displacement: { slope, deflection, extremes: extremesOf(deflection) } };
}

/** The agreement of the result whose two ways are furthest apart; none where statics solved all. */
function worstAgreement(shares: readonly Share[]): { readonly agreement?: Agreement } {
  const [first, ...rest] = shares.flatMap(({ result: { agreement } }) =>
    agreement === undefined ? [] : [agreement],
  );
  if (first === undefined) return {};
  const worse = (a: Agreement, b: Agreement): Agreement =>
    b.difference > a.difference ? b : a;
  return { agreement: rest.reduce(worse, first) };
}

function sumOfReactions(
  shares: readonly Share[],
  { point, x, y, moment, components }: Reaction,
  index: number,
): Reaction {
  const along = (part: 'x' | 'y' | 'moment', here: number | null): number | null =>
    here === null ? null : sumOf(shares, (result) => result.reactions[index]?.[part]);
  return {
    point,
    x: along('x', x),
    y: along('y', y),
    moment: along('moment', moment),
    components: components.map((_, place) =>
      sumOf(shares, (result) => result.reactions[index]?.components[place]),
    ),
  };
}

function sumOf(
  shares: readonly Share[],
  read: (result: BeamResult) => number | null | undefined,
): number {
  let [sum, size] = [0, 0];
  for (const { result, factor } of shares) {
    const addend = factor * (read(result) ?? 0);
    sum += addend;
    size += Math.abs(addend);
  }
  return dropNoise(sum, size) + 0;
}

function sumOfResiduals(
  shares: readonly Share[],
  equation: string,
  index: number,
): Residual {
  let [residual, scale] = [0, 0];
  for (const { result, factor } of shares) {
    residual += factor * (result.residuals[index]?.residual ?? NaN);
    scale += Math.abs(factor) * (result.residuals[index]?.scale ?? NaN);
  }
  return { equation, residual, scale };
}
