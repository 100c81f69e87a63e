import { describe, expect, test } from 'vitest';
import {
  keyOfUnknown,
  solveBeam,
  unknownsOf,
  valueOfUnknown,
} from '../../src/statics/index.ts';
import { beam, down, fixed, roller } from '../support/beam.ts';

const structure = beam({
  points: { A: 0, H: 6, C: 10 },
  supports: { A: fixed, C: roller() },
  hinges: ['H'],
  loads: [down(8, 8)],
});

describe('unknownsOf', () => {
  test('names every restraint of every support in their order', () => {
    expect(unknownsOf(structure)).toEqual([
      { kind: 'reaction', point: 'A', index: 0 },
      { kind: 'reaction', point: 'A', index: 1 },
      { kind: 'reaction', point: 'A', index: 2 },
      { kind: 'reaction', point: 'C', index: 0 },
    ]);
  });
});

describe('valueOfUnknown', () => {
  const outcome = solveBeam(structure);
  const [result] = outcome.kind === 'beam' ? outcome.results : [];

  test('reads reactions and forces through hinges from a result', () => {
    // 8 at the middle of the hung piece: 4 to C, 4 through H onto the cantilever of 6.
    expect(
      valueOfUnknown(result!, { kind: 'reaction', point: 'C', index: 0 }),
    ).toBeCloseTo(4, 12);
    expect(
      valueOfUnknown(result!, { kind: 'reaction', point: 'A', index: 2 }),
    ).toBeCloseTo(24, 12);
    expect(
      valueOfUnknown(result!, { kind: 'hinge', point: 'H', component: 'y' }),
    ).toBeCloseTo(4, 12);
  });

  test('refuses an unknown that the result does not have', () => {
    expect(() =>
      valueOfUnknown(result!, { kind: 'reaction', point: 'B', index: 0 }),
    ).toThrow(RangeError);
    expect(() =>
      valueOfUnknown(result!, { kind: 'hinge', point: 'A', component: 'x' }),
    ).toThrow(RangeError);
  });
});

describe('keyOfUnknown', () => {
  test('tells unknowns apart whatever their points are called', () => {
    const odd = keyOfUnknown({ kind: 'reaction', point: 'A",1', index: 2 });
    expect(odd).not.toBe(keyOfUnknown({ kind: 'reaction', point: 'A', index: 1 }));
    expect(keyOfUnknown({ kind: 'hinge', point: 'A', component: 'x' })).not.toBe(
      keyOfUnknown({ kind: 'hinge', point: 'A', component: 'y' }),
    );
  });
});
