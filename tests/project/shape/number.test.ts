import { describe, expect, test } from 'vitest';
import { numberFrom } from '../../../src/project/shape/number.ts';
import { readAs } from '../../support/reading.ts';

const figures = numberFrom({ from: 2, to: 10, whole: true });
const share = numberFrom({ from: -1, to: 1 });

describe('a number', () => {
  test.each([
    ['0.5', 0.5],
    ['-1', -1],
    ['.25', 0.25],
    ['1e-3', 0.001],
    ['+1.', 1],
    ['0', 0],
  ])('%s is read', (written, value) => {
    expect(readAs(share, written).value).toBe(value);
  });

  test.each([
    '0x1',
    '0o1',
    '01',
    '-007',
    '.inf',
    '.nan',
    '1 kip',
    'one',
    '1_0',
    '""',
    '1e999',
  ])('%s is refused', (written) => {
    const { value, findings } = readAs(share, written);
    expect(value).toBeUndefined();
    expect(findings).toHaveLength(1);
  });

  test('has bounds, both included, and may have to be whole', () => {
    expect(readAs(figures, '2').value).toBe(2);
    expect(readAs(figures, '10').value).toBe(10);
    for (const written of ['1', '11', '4.5'])
      expect(readAs(figures, written).findings).toEqual([
        `number-out-of-range 0-${written.length} a whole number from 2 to 10 belongs here, not ${written}`,
      ]);
  });
});
