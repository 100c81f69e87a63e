import { describe, expect, test } from 'vitest';
import { elasticCurveFigure } from '../../../src/derivation/pictures/elastic-curve.ts';
import { layOutFigure } from '../../../src/figure/index.ts';
import { defaultTheme } from '../../../src/theme/index.ts';
import { claimed, derivedBeam } from '../../support/derived.ts';
import { figureSetting } from '../../support/figure-preview.ts';
import { flatMarks, pointsOf } from '../../support/flat-marks.ts';

const { project, work } = derivedBeam({
  points: '{ A: 0 ft, B: 20 ft, C: 26 ft }',
  supports: '{ A: pin, B: roller }',
  loads: '[ { point: 3 kip, at: C } ]',
  material: '{ E: 29000 ksi }',
  section: '{ I: 80 in^4 }',
});
const result = work.solution.results[0]!;
const figure = elasticCurveFigure(claimed(project, work, result), result);

describe('an elastic curve', () => {
  const marks = flatMarks(layOutFigure(figure, figureSetting).drawing);

  test('is drawn as the member bent: no hatch, and a free end stands off the base line', () => {
    const shapes = marks.flatMap((mark) => (mark.kind === 'shape' ? [mark] : []));
    expect(
      shapes.some(({ stroke }) => stroke?.colour === defaultTheme.colour.hatch),
    ).toBe(false);
    const [curve] = shapes
      .filter(({ stroke }) => stroke?.width === defaultTheme.line.diagram)
      .map(({ path }) => pointsOf(path));
    expect(curve!.at(-1)!.y - curve![0]!.y).toBeGreaterThan(10);
  });

  test('labels its extremes with value and station, and the alternate text tells them', () => {
    if (figure.kind !== 'diagrams') throw new Error('no diagrams');
    expect(
      figure.diagrams[0]!.keyValues.filter(({ isExtreme }) => isExtreme),
    ).toMatchObject([
      { label: { text: '0.3440 at 11.55\u00a0ft' } },
      { label: { text: '−0.6972 at C' } },
    ]);
    expect(figure.alternate.replaceAll('\u00a0', ' ')).toBe(
      'Elastic curve of all, up positive: between −0.6972 in at C and 0.3440 in at x = 11.55 ft.',
    );
  });
});
