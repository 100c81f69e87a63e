import { describe, expect, test } from 'vitest';
import {
  fromSuperscript,
  powerText,
  superscript,
} from '../../src/units/superscript.ts';

describe('superscripts', () => {
  test('there and back', () => {
    expect(superscript(1204)).toBe('¹²⁰⁴');
    expect(fromSuperscript('¹²⁰⁴')).toBe('1204');
    expect(fromSuperscript('⁻³')).toBe('-3');
  });

  test('powers of ten read on one line', () => {
    expect(powerText(6)).toBe('×10⁶');
    expect(powerText(-6)).toBe('×10^−6');
    expect(powerText(0)).toBe('');
  });
});
