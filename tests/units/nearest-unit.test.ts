import { describe, expect, test } from 'vitest';
import { isMass, nearestUnit, slipsBetween } from '../../src/units/nearest-unit.ts';

describe('the unit that was meant', () => {
  test.each([
    ['KN', 'kN'],
    ['Kip', 'kip'],
    ['kps', 'kip'],
    ['psff', 'psf'],
    ['Mpa', 'MPa'],
    ['feet', 'ft'],
    ['Inches', 'in'],
    ['degs', 'deg'],
  ])('%s was meant as %s', (written, meant) => {
    expect(nearestUnit(written)).toBe(meant);
  });

  test('a word unlike any unit has no nearest', () => {
    expect(nearestUnit('furlong')).toBeUndefined();
    expect(nearestUnit('z')).toBeUndefined();
  });

  test('slips are counted letter by letter, a swap as one', () => {
    expect(slipsBetween('kip', 'kip')).toBe(0);
    expect(slipsBetween('kpi', 'kip')).toBe(1);
    expect(slipsBetween('', 'kip')).toBe(3);
    expect(slipsBetween('kips', 'kip')).toBe(1);
  });

  test('masses are known for what they are', () => {
    expect(isMass('kg')).toBe(true);
    expect(isMass('kN')).toBe(false);
  });
});
