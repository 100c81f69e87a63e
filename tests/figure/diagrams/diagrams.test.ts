import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { layOutFigure } from '../../../src/figure/index.ts';
import type { Diagram, FigureSpec, KeyValue } from '../../../src/figure/index.ts';
import type { Piecewise } from '../../../src/statics/index.ts';
import { defaultTheme } from '../../../src/theme/index.ts';
import { faultsOf } from '../../support/figure-checks.ts';
import { figureSetting } from '../../support/figure-preview.ts';
import { figureSamples } from '../../support/figure-samples.ts';
import { flatMarks, pointsOf } from '../../support/flat-marks.ts';
import { beam, number, words } from '../../support/pictures.ts';

describe('diagrams under a member', () => {
  const laid = layOutFigure(figureSamples.diagrams!, figureSetting);
  const curves = flatMarks(laid.drawing).flatMap((mark) =>
    mark.kind === 'shape' && mark.stroke?.width === defaultTheme.line.diagram
      ? [pointsOf(mark.path)]
      : [],
  );

  test('each curve closes to its base line at both ends', () => {
    expect(curves).toHaveLength(2);
    for (const points of curves) expect(points.at(-1)!.y).toBeCloseTo(points[0]!.y, 9);
  });

  test('stations are common to the member and all its diagrams', () => {
    const [shear, moment] = curves;
    expect(shear![0]!.x).toBeCloseTo(moment![0]!.x, 9);
    expect(shear!.at(-1)!.x).toBeCloseTo(moment!.at(-1)!.x, 9);
    const member = flatMarks(laid.drawing).find(
      (mark) =>
        mark.kind === 'shape' && mark.stroke?.width === defaultTheme.line.member,
    );
    expect(member?.kind === 'shape' && pointsOf(member.path)[0]!.x).toBeCloseTo(
      shear![0]!.x,
      9,
    );
  });

  test('ordinates are to scale', () => {
    // The shear begins at 12.5, reaches −14.5 left of the right support and 6 right of it.
    const [shear] = curves;
    const base = shear![0]!.y;
    const ordinates = shear!.map(({ y }) => base - y);
    const [, first] = ordinates;
    const scale = first! / 12.5;
    expect(Math.min(...ordinates) / scale).toBeCloseTo(-14.5, 9);
    expect(ordinates[6]! / scale).toBeCloseTo(0, 9);
    expect(ordinates[5]! / scale).toBeCloseTo(6, 9);
  });

  test('extremes are framed, so that they stand out without colour', () => {
    const frames = flatMarks(laid.drawing).filter(
      (mark) =>
        mark.kind === 'shape' &&
        mark.path.length === 5 &&
        mark.stroke?.colour === defaultTheme.colour.accent,
    );
    expect(frames).toHaveLength(3);
  });

  test('no diagram whatever has a label over anything or anything outside', () => {
    const value = fc.double({ min: -50, max: 50, noNaN: true });
    const pieces = fc.array(
      fc.record({
        length: fc.double({ min: 0.01, max: 5, noNaN: true }),
        coefficients: fc.array(value, { minLength: 1, maxLength: 5 }),
      }),
      { minLength: 1, maxLength: 8 },
    );
    fc.assert(
      fc.property(
        fc.array(pieces, { minLength: 1, maxLength: 3 }),
        fc.boolean(),
        (all, up) => {
          const diagrams = all.map((stretches) => randomDiagram(stretches, up));
          const spec = underMember(diagrams);
          expect(faultsOf(layOutFigure(spec, figureSetting))).toEqual([]);
        },
      ),
      { numRuns: 60 },
    );
  });
});

type Stretches = readonly {
  readonly length: number;
  readonly coefficients: readonly number[];
}[];

/** A diagram of a function over 0 to 10 with values at both sides of every breakpoint. */
function randomDiagram(stretches: Stretches, up: boolean): Diagram {
  const total = stretches.reduce((sum, { length }) => sum + length, 0);
  let at = 0;
  const pieces = stretches.map(({ length, coefficients }) => {
    const start = at;
    at += (length * 10) / total;
    return { start, end: at, coefficients };
  });
  const of: Piecewise = { pieces };
  const keyValues = pieces.flatMap(
    ({ start, end, coefficients }): readonly KeyValue[] => {
      const last = coefficients.reduceRight((sum, c) => sum * (end - start) + c, 0);
      const first = coefficients[0] ?? 0;
      const label = (text: number): KeyValue['label'] =>
        number(String(Math.round(text * 10) / 10));
      return [
        { x: start, value: first, side: 'right', label: label(first) },
        { x: end, value: last, side: 'left', label: label(last), isExtreme: true },
      ];
    },
  );
  return {
    quantity: 'moment',
    title: words('M (kip·ft)'),
    curves: [{ of, style: 'solid' }],
    keyValues,
    positive: up ? 'up' : 'down',
  };
}

function underMember(diagrams: readonly Diagram[]): FigureSpec {
  const picture = beam(10, { supports: [{ x: 0, type: 'fixed' }] });
  return { kind: 'diagrams', picture, diagrams, alternate: '' };
}
