import { describe, expect, test } from 'vitest';
import { tryTypeset, TypesetFault } from '../../src/typeset/index.ts';

const written = { tex: 'M', linear: 'M' };

describe('tryTypeset', () => {
  test('passes on what the step gives', () => {
    expect(tryTypeset([written], () => 7)).toBe(7);
  });

  test('gives nothing where the typesetter refuses the equation', () => {
    const refused = (): number => {
      throw new TypesetFault('the character "中"');
    };
    expect(tryTypeset([written], refused)).toBeUndefined();
  });

  test('gives nothing where the TeX has a question mark for a letter', () => {
    const lost = { tex: '\\text{?}', linear: '中' };
    expect(tryTypeset([written, lost], () => 7)).toBeUndefined();
    expect(tryTypeset([{ tex: '\\text{?}', linear: '?' }], () => 7)).toBe(7);
  });

  test('lets any other error through', () => {
    const broken = (): never => {
      throw new RangeError('ours');
    };
    expect(() => tryTypeset([written], broken)).toThrow('ours');
  });
});
