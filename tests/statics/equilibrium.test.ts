import { describe, expect, test } from 'vitest';
import { termsOfSum, type SumTerm } from '../../src/statics/index.ts';
import { beam, down, pin, right, roller, spread, turn } from '../support/beam.ts';

/** A term as one short line. */
function line({ source, factor, magnitude, x }: SumTerm): string {
  const what =
    source.kind === 'load'
      ? `${source.id}${source.from === undefined ? '' : `[${source.from}–${source.to}]`}`
      : source.kind === 'hinge'
        ? `${source.point}.${source.component} ${source.side}`
        : `${source.point}.${source.index}`;
  return `${what} × ${Math.round(factor * 1e6) / 1e6}${magnitude === undefined ? '' : ` · ${magnitude}`} @ ${x}`;
}

const simple = beam({
  points: { A: 0, B: 6, C: 21 },
  supports: { A: pin, C: roller() },
  loads: [
    down(8.4, 'B', { case: 'L' }),
    spread(0.25, 'A', 'C', { case: 'D' }),
    right(3, 4, { case: 'L' }),
    turn(-9, 'B', { case: 'L' }),
    { at: 10, fx: 3, fy: 4, case: 'L' },
  ],
});
const whole = { from: 0, to: 21 };

describe('termsOfSum', () => {
  test('gives every force a term in a moment sum, those without an arm too', () => {
    const terms = termsOfSum(simple, 'L', whole, { kind: 'moments', about: 0 });
    expect(terms.map(line)).toEqual([
      'A.0 × 0 @ 0',
      'A.1 × 0 @ 0',
      'C.0 × 21 @ 21',
      'load-1 × -6 · 8.4 @ 6',
      'load-3 × 0 · 3 @ 4',
      'load-4 × -1 · 9 @ 6',
      'load-5 × 8 · 5 @ 10',
    ]);
    expect(terms.every(({ factor }) => !Object.is(factor, -0))).toBe(true);
  });

  test('gives direction cosines in a force sum, and couples the factor 0', () => {
    expect(
      termsOfSum(simple, 'L', whole, { kind: 'forces', along: 'x' }).map(line),
    ).toEqual([
      'A.0 × 1 @ 0',
      'A.1 × 0 @ 0',
      'C.0 × 0 @ 21',
      'load-1 × 0 · 8.4 @ 6',
      'load-3 × 1 · 3 @ 4',
      'load-4 × 0 · 9 @ 6',
      'load-5 × 0.6 · 5 @ 10',
    ]);
    const [, , , , , couple] = termsOfSum(simple, 'L', whole, {
      kind: 'forces',
      along: 'y',
    });
    expect(couple).toMatchObject({ quantity: 'couple', factor: 0 });
  });

  test('takes moments about any station, on the beam or off it', () => {
    const terms = termsOfSum(simple, 'D', whole, { kind: 'moments', about: 30 });
    expect(terms.map(line)).toEqual([
      'A.0 × 0 @ 0',
      'A.1 × -30 @ 0',
      'C.0 × -9 @ 21',
      'load-2 × 19.5 · 5.25 @ 10.5',
    ]);
  });

  test('factors magnitudes under a combination, and names case and factor', () => {
    const terms = termsOfSum(
      simple,
      [
        { case: 'D', factor: 1.2 },
        { case: 'L', factor: -2 },
      ],
      whole,
      { kind: 'forces', along: 'y' },
    );
    const loads = terms.filter(({ source }) => source.kind === 'load');
    expect(loads.map(({ magnitude, caseFactor }) => [magnitude, caseFactor])).toEqual([
      [-16.8, -2],
      [expect.closeTo(6.3, 12), 1.2],
      [-6, -2],
      [-18, -2],
      [-10, -2],
    ]);
    expect(loads[1]).toMatchObject({
      source: { kind: 'load', id: 'load-2', case: 'D' },
      resultant: { shape: 'rectangle', start: 0.25 },
    });
  });

  test('gives the force through a hinge to both parts, equal and opposite', () => {
    const hinged = beam({
      points: { A: 0, B: 4, H: 6, C: 10 },
      supports: { C: roller(60), A: pin, B: roller() },
      hinges: ['H'],
      loads: [
        spread([2, 6], 'B', 'C'),
        down(5, 'H'),
        turn(7, 'H', { side: 'right' }),
        turn(1, 'H'),
      ],
    });
    const up = { kind: 'forces', along: 'y' } as const;
    expect(termsOfSum(hinged, 'all', { from: 0, to: 6 }, up).map(line)).toEqual([
      'A.0 × 0 @ 0',
      'A.1 × 1 @ 0',
      'B.0 × 1 @ 4',
      'H.x left × 0 @ 6',
      'H.y left × -1 @ 6',
      `load-1[4–6] × -1 · 4 @ 5`,
      `load-1[4–6] × -1 · ${(4 / 3).toPrecision(16)} @ ${4 + 4 / 3}`,
      'load-2 × -1 · 5 @ 6',
      'load-4 × 0 · 1 @ 6',
    ]);
    const about = { kind: 'moments', about: 6 } as const;
    const rightPart = termsOfSum(hinged, 'all', { from: 6, to: 10 }, about);
    expect(rightPart.map(({ source }) => source.kind)).toEqual([
      'reaction',
      'hinge',
      'hinge',
      'load',
      'load',
      'load',
    ]);
    expect(rightPart[0]!.factor).toBeCloseTo(4 * Math.sin(Math.PI / 3), 12);
    expect(rightPart[1]).toMatchObject({
      source: { component: 'x', side: 'right' },
      factor: 0,
    });
    expect(rightPart.at(-1)).toMatchObject({
      source: { id: 'load-3' },
      factor: 1,
      magnitude: 7,
    });
  });

  test('keeps a load whose forces cancel as two opposite forces', () => {
    const turned = beam({
      points: { A: 0, C: 6 },
      supports: { A: pin, C: roller() },
      loads: [spread([4, -4], 'A', 'C')],
    });
    const terms = termsOfSum(
      turned,
      'all',
      { from: 0, to: 6 },
      { kind: 'moments', about: 0 },
    );
    expect(terms.slice(3).map(line)).toEqual([
      'load-1[0–3] × -1 · 6 @ 1',
      'load-1[3–6] × 5 · 6 @ 5',
    ]);
  });

  test('refuses a part that ends at no hinge, and a case that there is none of', () => {
    const up = { kind: 'forces', along: 'y' } as const;
    expect(() => termsOfSum(simple, 'D', { from: 0, to: 6 }, up)).toThrow(RangeError);
    expect(() => termsOfSum(simple, 'S', whole, up)).toThrow(RangeError);
  });
});
