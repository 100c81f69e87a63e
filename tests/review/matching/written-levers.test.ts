import { describe, expect, test } from 'vitest';
import { dimension, dimensions } from '../../../src/units/index.ts';
import { leversOf } from '../../../src/review/matching/atoms.ts';
import { slipsOf } from '../../../src/review/matching/slips.ts';
import { writtenLevers } from '../../../src/review/matching/written-levers.ts';
import { forceAtom, lengthPart, leverTerm, numberTerm } from './terms.ts';

const intensity = dimension({ force: 1, length: -1 });
const pure = (size: number, power: number = 1) => ({
  size,
  dimension: dimensions.pure,
  power,
});
const round = ({ force, arm }: { force: number; arm: number }): string =>
  `${Number(force.toPrecision(4))} × ${Number(arm.toPrecision(4))}`;

describe('writtenLevers', () => {
  test('a force and a length are force and arm', () => {
    expect(new Set(writtenLevers(leverTerm(8, 6), 48).map(round))).toEqual(
      new Set(['8 × 6']),
    );
  });

  test('an intensity with lengths and pure numbers is a resultant with an arm', () => {
    // 1/2 · 3 N/m · 12 m · (2/3 · 12 m): 18 N at 8 m.
    const parts = [
      pure(2, -1),
      { size: 3, dimension: intensity, power: 1, unit: 1 },
      lengthPart(12),
      pure(2),
      pure(3, -1),
      lengthPart(12),
    ];
    expect(writtenLevers(numberTerm(144, { parts }), 144).map(round)).toContain(
      '18 × 8',
    );
  });

  test('with bare ratios the arm is what the force leaves', () => {
    const parts = [
      { size: 8, dimension: dimensions.force, power: 1, unit: 1 },
      pure(6),
      pure(21, -1),
    ];
    expect(writtenLevers(numberTerm(48, { parts }), 48).map(round)).toContain('8 × 6');
  });

  test('a plain moment has none', () => {
    expect(writtenLevers(numberTerm(48), 48)).toEqual([]);
  });
});

describe('a slanting force', () => {
  // 10 N with 8 N across the member, 2 m along it: 1.6 m square to it.
  const slanting = { ...forceAtom('P', -10, 1.6), x: 2, reach: 2 };
  const sum = { kind: 'moments', about: 0 } as const;

  test('is worked with its part across or with the arm square to it', () => {
    expect(leversOf(slanting).map(round)).toEqual(['8 × 2', '10 × 1.6']);
  });

  test('taken whole with the distance along the member its part was meant', () => {
    const [slip] = slipsOf(leverTerm(-10, 2), -20, slanting, sum) ?? [];
    expect([slip?.kind, slip?.belongs]).toEqual(['magnitude', 8]);
  });

  test('sine for cosine is a wrong part', () => {
    const [slip] = slipsOf(leverTerm(-6, 2), -12, slanting, sum) ?? [];
    expect([slip?.kind, slip?.belongs]).toEqual(['magnitude', 8]);
  });
});
