import { describe, expect, test } from 'vitest';
import { conversionOf, judgeValue } from '../../../src/review/marking/judge-value.ts';

const show = (value: number): string => `${Number(value.toPrecision(4))} kN`;
const standard = { truth: 8.533, unit: 1, figures: 3, takesMagnitude: false };
const stands = (value: number, more: object = {}): string[] => {
  const { standing, findings } = judgeValue(value, { ...standard, ...more }, show);
  return [standing, ...findings.map(({ kind }) => kind)];
};

describe('judgeValue', () => {
  test('takes a value rounded or cut off in the third figure', () => {
    expect(stands(8.53)).toEqual(['right']);
    expect(stands(8.54)).toEqual(['right']);
    expect(stands(8.55)).toEqual(['wrong', 'magnitude']);
  });

  test('two figures are right, with a word on rounding; 80 for 75 is no rounding', () => {
    expect(stands(8.5)).toEqual(['right', 'rounding']);
    expect(stands(80, { truth: 75 })).toEqual(['wrong', 'magnitude']);
  });

  test("follows where the worker's own figures give it", () => {
    expect(stands(9.1, { own: 9.1 })).toEqual(['follows']);
    expect(stands(9.5, { own: 9.1 })).toEqual(['wrong', 'arithmetic']);
  });

  test('figures rounded in a right line are as good as unrounded ones', () => {
    const of = { truth: 8.6603, own: 8.65, line: 8.65 };
    expect(stands(8.65, of)).toEqual(['right', 'rounding']);
    expect(stands(8.65, { truth: 8.6603, own: 8.65 })).toEqual(['follows']);
  });

  test('a size stands for either sense only where a size will do', () => {
    expect(stands(8.53, { truth: -8.533, takesMagnitude: true })).toEqual(['right']);
    expect(stands(8.53, { truth: -8.533 })).toEqual(['wrong', 'sign']);
  });

  test('counts figures in the unit that was written, and knows slips of conversion', () => {
    expect(stands(8533, { truth: 8.533 })).toEqual(['wrong', 'unit']);
    expect(conversionOf(1, 12)).toBe(12);
    expect(conversionOf(1, 13)).toBeUndefined();
    expect(conversionOf(1, 0)).toBeUndefined();
  });
});
