import { describe, expect, test } from 'vitest';
import { linearForm, type Meanings } from '../../../src/review/reading/linear-form.ts';
import { readLine } from '../../../src/review/reading/read-line.ts';
import { dimensions } from '../../../src/units/index.ts';

const meanings: Meanings = (name) => {
  if (name === 'R')
    return { kind: 'unknown', key: 'r', dimension: dimensions.force, share: -1 };
  if (name === 'a') return { kind: 'known', si: 2, dimension: dimensions.length };
  if (name === 'P') return { kind: 'unclear', problem: 'it could be either of two' };
  return undefined;
};

function work(text: string): ReturnType<typeof linearForm> {
  const link = readLine(text, ['R', 'a', 'P']).readings?.[0]?.links[0];
  if (link === undefined) throw new Error(`${text} cannot be read`);
  return linearForm(link, meanings);
}

describe('linearForm', () => {
  test('gathers so much of each unknown, in the sense of the unknown', () => {
    const { form } = work('R * a + 3 * R * a - 4 kN * 5 m');
    expect(form?.unknowns.get('r')).toBeCloseTo(-8, 12);
    expect(form?.constant).toBeCloseTo(-20_000, 6);
  });

  test('a bare 0 fits anywhere', () => {
    expect(work('R + 0').fault).toBeUndefined();
    expect(work('0').form?.dimension).toBeUndefined();
  });

  test.each([
    ['R * R', 'syntax', 'an unknown is multiplied by an unknown'],
    ['a / R', 'syntax', 'an unknown stands under a slash'],
    ['a / 0', 'syntax', 'this divides by 0'],
    ['R^2', 'syntax', 'an unknown is raised to a power'],
    ['sin(R)', 'syntax', 'an unknown stands in sin'],
    ['sqrt(-4)', 'syntax', 'a root of a negative number'],
    ['sin(3 m)', 'unit', 'sin takes an angle'],
    ['R + a', 'unit', 'cannot be added'],
    ['R + Q', 'symbol', '`Q` is not among the names of this file'],
    ['R + P', 'symbol', 'what `P` stands for is not clear: it could be either of two'],
  ])('%s: %s, %s', (text, kind, why) => {
    const { fault } = work(text);
    expect(fault?.kind).toBe(kind);
    expect(fault?.message).toContain(why);
  });

  test('an angle without a unit is in degrees', () => {
    expect(work('cos 60').form?.constant).toBeCloseTo(0.5, 12);
    expect(work('cos(1.0471975512 rad)').form?.constant).toBeCloseTo(0.5, 9);
  });
});
