import type { Extreme, Piecewise } from './piecewise.ts';
import { greatestOf, leastOf } from './piecewise/greatest.ts';
import type { BeamResult } from './solution.ts';
import { tieTolerance } from './tolerances.ts';

/** An extreme over several results, and the mark of the one that governs. */
export interface GoverningExtreme extends Extreme {
  readonly result: string;
}

/** The greatest and least of one internal force over several results. */
export interface EnvelopeExtremes {
  readonly max: GoverningExtreme;
  readonly min: GoverningExtreme;
}

/** The three internal forces' extremes over several results. */
export interface Envelope {
  readonly axial: EnvelopeExtremes;
  readonly shear: EnvelopeExtremes;
  readonly moment: EnvelopeExtremes;
}

/** One of the three internal forces. */
export type InternalForceName = 'axial' | 'shear' | 'moment';

/**
 * The extremes over several results of one beam; where results agree to 1e-9 of the greatest
 * size, the first of them in the list governs.
 *
 * @throws RangeError where there is no result.
 */
export function envelope(results: readonly BeamResult[]): Envelope {
  const of = (name: InternalForceName): EnvelopeExtremes => ({
    max: governing(results, (result) => result.extremes[name].max, 1),
    min: governing(results, (result) => result.extremes[name].min, -1),
  });
  return { axial: of('axial'), shear: of('shear'), moment: of('moment') };
}

function governing(
  results: readonly BeamResult[],
  read: (result: BeamResult) => Extreme,
  sense: 1 | -1,
): GoverningExtreme {
  const all = results.map((result) => ({ ...read(result), result: result.mark }));
  const size = Math.max(0, ...all.map(({ value }) => Math.abs(value)));
  const best = Math.max(...all.map(({ value }) => sense * value));
  const first = all.find(({ value }) => sense * value >= best - tieTolerance * size);
  if (first === undefined) throw new RangeError('no results to envelope');
  return first;
}

/** The greatest and the least of one internal force at every station, over several results of one beam. */
export function envelopeCurves(
  results: readonly BeamResult[],
  name: InternalForceName,
): { readonly max: Piecewise; readonly min: Piecewise } {
  const curves = results.map((result) => result[name]);
  return { max: greatestOf(curves), min: leastOf(curves) };
}
