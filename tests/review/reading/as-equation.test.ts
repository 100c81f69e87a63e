import { describe, expect, test } from 'vitest';
import { toLinear } from '../../../src/equation/index.ts';
import { asEquation } from '../../../src/review/reading/as-equation.ts';
import { readLine } from '../../../src/review/reading/read-line.ts';

function shown(text: string): readonly string[] {
  const [line] = readLine(text, ['RA', 'P']).readings ?? [];
  const equation = line === undefined ? undefined : asEquation(line);
  if (equation === undefined) return [];
  return [equation.left, ...equation.chain.map(({ of }) => of)]
    .filter((one) => one !== undefined)
    .map((one) => toLinear(one).replaceAll('\u00a0', ' '));
}

describe('asEquation', () => {
  test('keeps every link of a chain, terms in the order in which they were written', () => {
    expect(shown('RA = P - 2 kip = 6 kip')).toEqual(['R_A', 'P − 2 kip', '6 kip']);
  });

  test('an expression alone has no chain', () => {
    expect(shown('RA (6 ft)')).toEqual(['R_A (6 ft)']);
  });

  test('a direction in words stands in the margin', () => {
    const [line] = readLine('RA = 6 kip down', ['RA']).readings ?? [];
    expect(line === undefined ? undefined : asEquation(line)?.margin).toBe('down');
  });
});
