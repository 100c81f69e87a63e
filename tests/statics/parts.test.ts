import { describe, expect, test } from 'vitest';
import { partsOf, wholeOf } from '../../src/statics/index.ts';
import { exactPart, pieceAt, piecesOn } from '../../src/statics/parts.ts';
import { beam, pin, roller } from '../support/beam.ts';

const hinged = beam({
  points: { A: 1, B: 4, H: 6, I: 9, C: 12 },
  supports: { A: pin, B: roller() },
  hinges: ['I', 'H'],
});

describe('partsOf', () => {
  test('lists the pieces between hinges from left to right, in whatever order the hinges come', () => {
    expect(partsOf(hinged)).toEqual([
      { from: 1, to: 6 },
      { from: 6, to: 9 },
      { from: 9, to: 12 },
    ]);
  });

  test('is the whole beam where there is no hinge', () => {
    const plain = beam({ points: { A: 1, C: 12 } });
    expect(partsOf(plain)).toEqual([wholeOf(plain)]);
  });
});

describe('pieceAt', () => {
  test('gives what stands at a hinge to the piece on its left, unless told right', () => {
    const pieces = partsOf(hinged);
    expect(pieceAt(pieces, 6)).toBe(0);
    expect(pieceAt(pieces, 6, 'right')).toBe(1);
    expect(pieceAt(pieces, 1)).toBe(0);
    expect(pieceAt(pieces, 12, 'right')).toBe(2);
  });
});

describe('exactPart', () => {
  test('finds a part of several pieces, forgiving rounding', () => {
    const part = exactPart(hinged, { from: 1, to: 9 + 1e-12 });
    expect(part).toEqual({ from: 1, to: 9 });
    expect(piecesOn(partsOf(hinged), part)).toEqual([0, 1]);
  });

  test('refuses a part that ends at neither an end nor a hinge, or runs backwards', () => {
    expect(() => exactPart(hinged, { from: 1, to: 4 })).toThrow(RangeError);
    expect(() => exactPart(hinged, { from: 9, to: 6 })).toThrow(RangeError);
  });
});
