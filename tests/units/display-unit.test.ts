import { describe, expect, test } from 'vitest';
import { displayUnit, sameDimension, unitText } from '../../src/units/index.ts';

describe('display units', () => {
  test('a US project prints kips, feet and inches', () => {
    const shown = (
      ['force', 'length', 'moment', 'force-per-length', 'deflection', 'stress'] as const
    ).map((what) => unitText(displayUnit('us', what), 'data'));
    expect(shown).toEqual(['kip', 'ft', 'kip ft', 'kip/ft', 'in', 'ksi']);
  });

  test('an SI project prints kilonewtons, metres and millimetres', () => {
    const shown = (
      ['force', 'length', 'moment', 'pressure', 'deflection', 'stress'] as const
    ).map((what) => unitText(displayUnit('si', what), 'data'));
    expect(shown).toEqual(['kN', 'm', 'kN m', 'kN/m^2', 'mm', 'MPa']);
  });

  test('both systems measure the same thing by the same name', () => {
    const all = [
      'force', 'length', 'moment', 'force-per-length', 'pressure', 'deflection', 'stress',
      'angle', 'direction', 'stiffness', 'rotational-stiffness', 'rigidity', 'area',
      'section-modulus', 'inertia', 'unit-weight', 'temperature', 'expansion', 'pure',
    ] as const; // prettier-ignore
    for (const what of all) {
      const us = displayUnit('us', what).dimension;
      expect(sameDimension(us, displayUnit('si', what).dimension), what).toBe(true);
    }
  });
});
