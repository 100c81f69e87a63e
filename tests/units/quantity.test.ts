import { describe, expect, test } from 'vitest';
import { countIn, parseUnit, quantity } from '../../src/units/index.ts';

const unit = (text: string) => parseUnit(text).unit!;

describe('quantities', () => {
  test('one length in three units is one number', () => {
    expect(quantity(12, unit('ft')).si).toBe(3.6576);
    expect(quantity(144, unit('in')).si).toBe(3.6576);
    expect(quantity(3657.6, unit('mm')).si).toBe(3.6576);
  });

  test('counting in the unit gives back what was put in', () => {
    expect(countIn(quantity(8.4, unit('kip')), unit('kip'))).toBeCloseTo(8.4, 14);
    expect(countIn(quantity(36, unit('°F')), unit('K'))).toBeCloseTo(20, 13);
  });
});
