import { envelope, type BeamResult, type GoverningExtreme } from '../statics/index.ts';
import { extremeFigure } from './beam-figures.ts';
import type { FigureMaker } from './figures-in.ts';
import type { BeamResults, EnvelopeFigures, GoverningFigure } from './results.ts';
import type { EntryInput, EntryUse } from './results-input.ts';

/** The envelopes of a beam's entries: over every combination (cases where there are none), and one a purpose. */
export function envelopesOf(
  entries: readonly EntryInput[],
  figure: FigureMaker,
): Pick<BeamResults, 'envelope' | 'envelopes'> {
  const used = (...uses: readonly EntryUse[]): readonly BeamResult[] =>
    entries
      .filter((entry) => entry.uses.some((use) => uses.includes(use)))
      .map((entry) => entry.result);
  const over = (results: readonly BeamResult[]): EnvelopeFigures | null =>
    results.length === 0 ? null : envelopeFigures(results, figure);
  const combinations = used('strength', 'service');
  const all = combinations.length > 0 ? combinations : used('case');
  return {
    envelope: envelopeFigures(all, figure),
    envelopes: { strength: over(used('strength')), service: over(used('service')) },
  };
}

function envelopeFigures(
  results: readonly BeamResult[],
  figure: FigureMaker,
): EnvelopeFigures {
  const found = envelope(results);
  const governing = (
    extreme: GoverningExtreme,
    what: 'force' | 'moment',
  ): GoverningFigure => ({
    ...extremeFigure(extreme, what, figure),
    result: extreme.result,
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
