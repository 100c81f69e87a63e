import { envelope, type EntryResult, type GoverningExtreme } from '../statics/index.ts';
import { extremeFigure } from './beam-figures.ts';
import { arrangementFigures, type RangeSetting } from './range-figures.ts';
import type { BeamResults, EnvelopeFigures, GoverningFigure } from './results.ts';
import type { EntryInput, EntryUse } from './results-input.ts';

/** The envelopes of a beam's entries: over every combination (cases where there are none), and one a purpose. */
export function envelopesOf(
  entries: readonly EntryInput[],
  setting: RangeSetting,
): Pick<BeamResults, 'envelope' | 'envelopes'> {
  const used = (...uses: readonly EntryUse[]): readonly EntryResult[] =>
    entries
      .filter((entry) => entry.uses.some((use) => uses.includes(use)))
      .map((entry) => entry.range ?? entry.result);
  const over = (results: readonly EntryResult[]): EnvelopeFigures | null =>
    results.length === 0 ? null : envelopeFigures(results, setting);
  const combinations = used('strength', 'service');
  const all = combinations.length > 0 ? combinations : used('case');
  return {
    envelope: envelopeFigures(all, setting),
    envelopes: { strength: over(used('strength')), service: over(used('service')) },
  };
}

function envelopeFigures(
  results: readonly EntryResult[],
  setting: RangeSetting,
): EnvelopeFigures {
  const found = envelope(results);
  const governing = (
    { arrangement, ...extreme }: GoverningExtreme,
    what: 'force' | 'moment',
  ): GoverningFigure => ({
    ...extremeFigure(extreme, what, setting.figure),
    result: extreme.result,
    ...(arrangement === undefined
      ? {}
      : { arrangement: arrangementFigures(arrangement, setting) }),
  });
  return {
    shear: {
      max: governing(found.shear.max, 'force'),
      min: governing(found.shear.min, 'force'),
    },
    moment: {
      max: governing(found.moment.max, 'moment'),
      min: governing(found.moment.min, 'moment'),
    },
  };
}
