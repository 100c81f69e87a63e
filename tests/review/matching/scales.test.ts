import { describe, expect, test } from 'vitest';
import { scalesOf } from '../../../src/review/matching/scales.ts';
import {
  forceAtom,
  lengthPart,
  numberTerm,
  reactionAtom,
  unknownTerm,
} from './terms.ts';

const atoms = [reactionAtom('R', 5, 20), forceAtom('P', -8, 6)];

describe('scalesOf', () => {
  test('the stated convention comes first, the other way round costs a little', () => {
    expect(scalesOf([numberTerm(-48)], atoms, 1)).toEqual([
      { scale: 1, cost: 0 },
      { scale: -1, cost: 0.05 },
    ]);
    expect(scalesOf([numberTerm(-48)], atoms, -1)[0]).toEqual({ scale: -1, cost: 0 });
  });

  test('an unknown in front says what the line is divided by', () => {
    const found = scalesOf([unknownTerm('R', 1)], atoms, 1).map(({ scale }) => scale);
    expect(found).toContain(1 / 20);
  });

  test('so does an arm under a slash', () => {
    const term = numberTerm(-2.4, { parts: [lengthPart(15, -1)] });
    expect(scalesOf([term], atoms, 1).map(({ scale }) => scale)).toContain(1 / 15);
  });

  test('a line of many arms under slashes is tried in so many scales only', () => {
    const terms = Array.from({ length: 60 }, (_, at) =>
      numberTerm(-2.4, { parts: [lengthPart(at + 2, -1)] }),
    );
    expect(scalesOf(terms, atoms, 1).length).toBeLessThanOrEqual(24);
  });
});
