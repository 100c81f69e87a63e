import { describe, expect, test } from 'vitest';
import { findMaterial, materialNames } from '../../../src/standards/index.ts';
import { materials } from '../../../src/standards/materials/find-material.ts';

describe('findMaterial', () => {
  test('finds a steel in any case', () => {
    expect(findMaterial('s355')?.E.si).toBeCloseTo(210e9, 0);
    expect(findMaterial('A992')?.E.si).toBeCloseTo(199.948e9, -6);
    expect(findMaterial('c25/30')?.name).toBe('C25/30');
  });

  test('gives expansion per kelvin whatever the table’s degree', () => {
    expect(findMaterial('A36')?.expansion?.si).toBeCloseTo(11.7e-6, 9);
    expect(findMaterial('S235')?.expansion?.si).toBeCloseTo(12e-6, 12);
  });

  test('finds nothing for a name that no table has', () => {
    expect(findMaterial('S999')).toBeUndefined();
  });

  test('every one has its source and a density between that of cork and of lead', () => {
    for (const material of materials) {
      expect(material.source).not.toBe('');
      expect(material.density.si).toBeGreaterThan(2e3);
      expect(material.density.si).toBeLessThan(1.1e5);
    }
    expect(materialNames()).toContain('GL24h');
  });
});
