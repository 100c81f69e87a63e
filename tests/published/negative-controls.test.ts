import { describe, expect, test } from 'vitest';
import { runChecks } from '../../src/derivation/index.ts';
import { valueAt, type BeamResult, type Piecewise } from '../../src/statics/index.ts';
import { claimed, derivedBeam, siProject } from '../support/derived.ts';
import { expectPrinted, si as inWords } from '../support/in-words.ts';
import { solved } from '../support/solved.ts';

/**
 * Answers that publications print wrongly, claimed for the beams that they are printed for: the
 * true ones pass every check, the printed ones are caught. Sources: FOSSEE Textbook Companions (IIT
 * Bombay), https://tbc-python.fossee.in, read in their repository at d34b2ae7.
 */
const si = { 'project.yaml': siProject };

function beam(rest: Readonly<Record<string, string>>) {
  const { project, work } = derivedBeam(rest, si);
  const result = work.solution.results[0]!;
  return {
    result,
    solved: solved(work.structure),
    isCaught: (claim: BeamResult): boolean =>
      runChecks(claimed(project, work, claim)).some(({ holds }) => !holds),
  };
}

/** The result with a support's vertical force as claimed. */
function claiming(result: BeamResult, point: string, y: number): BeamResult {
  return {
    ...result,
    reactions: result.reactions.map((one) =>
      one.point === point
        ? {
            ...one,
            y,
            components: one.components.map((c, index) =>
              index === one.components.length - 1 ? y : c,
            ),
          }
        : one,
    ),
  };
}

describe('McLean, Engineering Mechanics, 8.8-3: part load and couple', () => {
  const {
    result,
    solved: exact,
    isCaught,
  } = beam({
    points: '{ A: 0 m, P: 6 m, Q: 12 m, B: 18 m }',
    supports: '{ A: pin, B: roller }',
    loads:
      '[ { uniform: 196 N/m, from: A, to: P }, { couple: 4000 N m, at: Q, turn: clockwise } ]',
  });

  test('the true result passes, and its greatest moment stands at the couple', () => {
    expect(isCaught(result)).toBe(false);
    expectPrinted(exact.up('A'), '757.8 N');
    expectPrinted(exact.up('B'), '418.2 N');
    expectPrinted(exact.greatest.value, '2509.33 N m');
    expect(exact.greatest.x).toBe(12);
    // Zero shear at 757.78/196 = 3.866 m, where the moment is 757.78²/(2 · 196).
    expectPrinted(exact.moment(757.7777777777778 / 196), '1464.87 N m');
  });

  test('the printed reaction of 757 N, cut off by integer arithmetic, is caught', () => {
    expect(isCaught(claiming(result, 'A', 757))).toBe(true);
  });

  test('the printed moment of 1462 N·m at zero shear is caught, as a curve and as the greatest', () => {
    const { moment, extremes } = result;
    const sunk = 1464.8708 - 1462;
    const curve: BeamResult['moment'] = {
      ...moment,
      pieces: moment.pieces.map((piece, index) =>
        index > 0
          ? piece
          : {
              ...piece,
              coefficients: [
                (piece.coefficients[0] ?? 0) - sunk,
                ...piece.coefficients.slice(1),
              ],
            },
      ),
    };
    expect(isCaught({ ...result, moment: curve })).toBe(true);
    const greatest = {
      ...extremes,
      moment: { ...extremes.moment, max: { value: 1462, x: 3.866 } },
    };
    expect(isCaught({ ...result, extremes: greatest })).toBe(true);
    // Even the exact local maximum is not the greatest moment of this beam.
    const local = {
      ...extremes,
      moment: {
        ...extremes.moment,
        max: { value: 1464.8708, x: 757.7777777777778 / 196 },
      },
    };
    expect(isCaught({ ...result, extremes: local })).toBe(true);
  });
});

describe('Popov, Engineering Mechanics of Solids, 5.2: triangular load on part of a span', () => {
  const {
    result,
    solved: exact,
    isCaught,
  } = beam({
    points: '{ A: 0 m, C: 3 m, B: 5 m }',
    supports: '{ A: pin, B: roller }',
    loads: '[ { varying: [ 0 N/m, 10 N/m ], from: A, to: C } ]',
  });

  test('the true result passes: 9 N and 6 N, both upward', () => {
    expect(isCaught(result)).toBe(false);
    expectPrinted(exact.up('A'), '9.000 N');
    expectPrinted(exact.up('B'), '6.000 N');
  });

  test('the printed sign of −9 N is caught', () => {
    expect(isCaught(claiming(result, 'A', -9))).toBe(true);
  });
});

describe('Popov, Engineering Mechanics of Solids, 5.2, p. 231: couple and two loads', () => {
  const {
    result,
    solved: exact,
    isCaught,
  } = beam({
    points: '{ A: 0 m, C: 0.1 m, D: 0.2 m, E: 0.3 m, B: 0.4 m }',
    supports: '{ A: pin, B: roller }',
    loads:
      '[ { couple: 200 N m, at: C, turn: clockwise }, { point: 100 N, at: D }, { point: 160 N, at: E } ]',
  });

  test('the left support pulls; taking it for a push is caught', () => {
    expectPrinted(exact.up('A'), '-410.0 N');
    expectPrinted(exact.up('B'), '670.0 N');
    expect(isCaught(result)).toBe(false);
    expect(isCaught(claiming(result, 'A', 410))).toBe(true);
  });
});

describe('Bhavikatti, Strength of Materials, 5.5.11 and 5.5.14: metres printed as millimetres', () => {
  // The values printed as deflections in mm are in metres. The same slip in a length or a force is what a beam can show.
  test.each([
    {
      example: '5.5.11',
      points: '{ A: 0 m, C: 4 m, B: 6 m }',
      loads: '[ { point: 30 kN, at: C }, { couple: 15 kN m, at: C, turn: clockwise } ]',
      left: '7.500 kN',
      right: '22.50 kN',
    },
    {
      example: '5.5.14',
      points: '{ A: 0 m, C: 1 m, D: 3 m, E: 4 m, B: 5 m }',
      loads:
        '[ { point: 20 kN, at: C }, { point: 30 kN, at: E }, { uniform: 10 kN/m, from: C, to: D } ]',
      left: '34.00 kN',
      right: '36.00 kN',
    },
  ])(
    '$example: the reactions pass in kN; a value a thousand times off is caught',
    ({ points, loads, left, right }) => {
      const {
        result,
        solved: exact,
        isCaught,
      } = beam({ points, supports: '{ A: pin, B: roller }', loads });
      expectPrinted(exact.up('A'), left);
      expectPrinted(exact.up('B'), right);
      expect(isCaught(result)).toBe(false);
      for (const point of ['A', 'B']) {
        expect(isCaught(claiming(result, point, exact.up(point) / 1000))).toBe(true);
        expect(isCaught(claiming(result, point, exact.up(point) * 1000))).toBe(true);
      }
      const { extremes } = result;
      const max = { ...extremes.moment.max, value: extremes.moment.max.value / 1000 };
      expect(
        isCaught({
          ...result,
          extremes: { ...extremes, moment: { ...extremes.moment, max } },
        }),
      ).toBe(true);
    },
  );
});

describe('Pytel and Kiusalaas, Mechanics of Materials, 6.3: an end slope of 0.487°', () => {
  const {
    result,
    solved: exact,
    isCaught,
  } = beam({
    points: '{ A: 0 m, B: 2 m, C: 3 m }',
    supports: '{ A: pin, C: roller }',
    loads: '[ { point: 300 N, at: B } ]',
    section: '{ I: 1706666.6666666667 mm^4 }',
    material: '{ E: 12 GPa }',
  });
  const { displacement, ...forces } = result;
  const { slope, deflection } = displacement!;
  const end = valueAt(slope, 3, 'left');
  const printed = inWords('0.487 deg');

  test('the true result passes: 0.466° at the roller', () => {
    expectPrinted(exact.up('A'), '100.0 N');
    expectPrinted(end, '0.466 deg');
    expect(isCaught(result)).toBe(false);
  });

  /** The curve with the polynomial of one piece added to its own, in powers of the distance from its start. */
  const bent = (curve: Piecewise, which: number, by: readonly number[]): Piecewise => ({
    pieces: curve.pieces.map((piece, index) =>
      index !== which
        ? piece
        : {
            ...piece,
            coefficients: Array.from(
              { length: Math.max(piece.coefficients.length, by.length) },
              (_, power) => (piece.coefficients[power] ?? 0) + (by[power] ?? 0),
            ),
          },
    ),
  });
  const claim = (slopes: Piecewise, curve: Piecewise): BeamResult => ({
    ...forces,
    displacement: { ...displacement!, slope: slopes, deflection: curve },
  });

  test('the printed slope is caught where all slopes are stretched to it', () => {
    const share = printed / end;
    const stretched = (curve: Piecewise): Piecewise => ({
      pieces: curve.pieces.map((piece) => ({
        ...piece,
        coefficients: piece.coefficients.map((c) => c * share),
      })),
    });
    const all = claim(stretched(slope), stretched(deflection));
    expectPrinted(valueAt(all.displacement!.slope, 3, 'left'), '0.487 deg');
    expect(isCaught(all)).toBe(true);
    expect(isCaught(claim(stretched(slope), deflection))).toBe(true);
  });

  test('it is caught where the whole beam is turned to it', () => {
    const by = printed - end;
    const turned = slope.pieces.reduce((curve, _, i) => bent(curve, i, [by]), slope);
    expectPrinted(valueAt(turned, 3, 'left'), '0.487 deg');
    expect(isCaught(claim(turned, deflection))).toBe(true);
    const tilted = deflection.pieces.reduce(
      (curve, { start }, i) => bent(curve, i, [by * start, by]),
      deflection,
    );
    expect(isCaught(claim(turned, tilted))).toBe(true);
  });

  test('it is caught where the slope creeps up to it over the last piece', () => {
    const last = slope.pieces.length - 1;
    const { start, end: stop } = slope.pieces[last]!;
    const rise = (printed - end) / (stop - start) ** 2;
    const crept = bent(slope, last, [0, 0, rise]);
    expectPrinted(valueAt(crept, 3, 'left'), '0.487 deg');
    expect(isCaught(claim(crept, deflection))).toBe(true);
    const sunk = bent(deflection, last, [0, 0, 0, rise / 3]);
    expect(isCaught(claim(crept, sunk))).toBe(true);
  });
});
