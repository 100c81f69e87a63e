import { describe, expect, test } from 'vitest';
import { momentDistribution, threeMoment } from '../../../src/statics/index.ts';
import { continuous, down, spread } from './continuous.ts';

const threeSpans = continuous({
  stations: [0, 6, 14, 19],
  supports: 'frrr',
  loads: [spread(10, 10, 0, 6), down(40, 9), down(15, 17)],
});

describe('moment distribution', () => {
  test('shares an unbalanced moment by stiffness, three quarters where the far end is simple', () => {
    const { joints } = momentDistribution(threeSpans, 'L');
    expect(joints.map(({ kind }) => kind)).toEqual([
      'fixed',
      'turns',
      'turns',
      'released',
    ]);
    expect(joints[1]?.left).toBeCloseTo(4 / 6 / (4 / 6 + 4 / 8), 12);
    expect(joints[2]?.right).toBeCloseTo(3 / 5 / (4 / 8 + 3 / 5), 12);
  });

  test('stops at its rule: what is carried to joints that turn is small, and a balance comes last', () => {
    const { rows, joints, limit, sums } = momentDistribution(threeSpans, 'L');
    const carries = rows.filter(({ what }) => what === 'carry-over');
    const atTurning = carries.map(({ moments }) =>
      Math.max(
        ...moments.flatMap(({ left, right }, span) => [
          joints[span]?.kind === 'turns' ? Math.abs(left) : 0,
          joints[span + 1]?.kind === 'turns' ? Math.abs(right) : 0,
        ]),
      ),
    );
    expect(atTurning.at(-1)).toBeLessThanOrEqual(limit);
    expect(atTurning.at(-2)).toBeGreaterThan(limit);
    expect(rows.at(-1)?.what).toBe('balance');
    expect((sums[0]?.right ?? 1) + (sums[1]?.left ?? 1)).toBeCloseTo(0, 9);
  });

  test('comes as near to the exact reactions as it says', () => {
    const distributed = momentDistribution(threeSpans, 'L');
    const exact = threeMoment(threeSpans, 'L').components;
    const greatest = Math.max(...exact.flat().map(Math.abs));
    const off = distributed.components.flatMap((list, support) =>
      list.map((value, index) => Math.abs(value - (exact[support]?.[index] ?? 0))),
    );
    expect(distributed.stopsAt).toBeGreaterThan(1e-6);
    expect(Math.max(...off)).toBeLessThanOrEqual(distributed.stopsAt * greatest);
  });

  test('is exact where one joint turns between simple ends', () => {
    const { rows, sums, stopsAt } = momentDistribution(
      continuous({ stations: [0, 4, 8], supports: 'prr', loads: [spread(8, 8, 0, 8)] }),
      'L',
    );
    expect(rows.map(({ what }) => what)).toEqual([
      'fixed-end',
      'release',
      'carry-over',
    ]);
    expect(sums[0]?.right).toBeCloseTo(-16, 12);
    expect(stopsAt).toBeLessThan(1e-8);
  });

  test('rests where nothing acts', () => {
    const { components } = momentDistribution(
      continuous({ stations: [0, 4, 8], supports: 'prr', loads: [] }),
      'L',
    );
    expect(components.flat().every((value) => value === 0)).toBe(true);
  });
});
