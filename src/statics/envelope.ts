import type { Extreme } from './piecewise.ts';
import { combine } from './piecewise/combine.ts';
import { greatestOf, leastOf } from './piecewise/greatest.ts';
import type { Arrangement, BeamResult, RangeCurves, RangeResult } from './solution.ts';
import { tieTolerance } from './tolerances.ts';

/** An extreme over several results, and the mark of the one that governs. */
export interface GoverningExtreme extends Extreme {
  readonly result: string;
  /** How the loads stand, where that entry has no single state. */
  readonly arrangement?: Arrangement;
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

/** What was found for an entry: one state, or a greatest and a least. */
export type EntryResult = BeamResult | RangeResult;

/** One of the three internal forces. */
export type InternalForceName = 'axial' | 'shear' | 'moment';

/** An extreme, and how the loads stand where it is that of a range. */
type PlacedExtreme = Extreme & { readonly arrangement?: Arrangement };

const nothing: Extreme = { value: 0, x: 0 };

/** The extremes of one internal force of an entry; a range that knows no axial force has none. */
export function extremesFound(
  found: EntryResult,
  name: InternalForceName,
): { readonly max: PlacedExtreme; readonly min: PlacedExtreme } {
  return found.extremes[name] ?? { max: nothing, min: nothing };
}

/** The greatest and the least of one internal force at every station; of a single state they are one. */
export function curvesFound(found: EntryResult, name: InternalForceName): RangeCurves {
  const curve = found[name];
  if (curve !== undefined)
    return 'pieces' in curve ? { max: curve, min: curve } : curve;
  const none = combine([{ factor: 0, f: curvesFound(found, 'shear').max }]);
  return { max: none, min: none };
}

/**
 * The extremes over several results of one beam; where results agree to 1e-9 of the greatest
 * size, the first of them in the list governs.
 *
 * @throws RangeError where there is no result.
 */
export function envelope(results: readonly EntryResult[]): Envelope {
  const of = (name: InternalForceName): EnvelopeExtremes => ({
    max: governing(results, (result) => extremesFound(result, name).max, 1),
    min: governing(results, (result) => extremesFound(result, name).min, -1),
  });
  return { axial: of('axial'), shear: of('shear'), moment: of('moment') };
}

function governing(
  results: readonly EntryResult[],
  read: (result: EntryResult) => PlacedExtreme,
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
  results: readonly EntryResult[],
  name: InternalForceName,
): RangeCurves {
  const curves = results.map((result) => curvesFound(result, name));
  return {
    max: greatestOf(curves.map(({ max }) => max)),
    min: leastOf(curves.map(({ min }) => min)),
  };
}
