import { expect, test } from 'vitest';
import { readSum } from '../../src/project/read-sum.ts';

test('a sum of cases has factors, 1 where none is written', () => {
  expect(readSum('D')).toEqual([{ factor: 1, case: 'D' }]);
  expect(readSum('0.5D + L+.42 W1')).toEqual([
    { factor: 0.5, case: 'D' },
    { factor: 1, case: 'L' },
    { factor: 0.42, case: 'W1' },
  ]);
  expect(readSum('1.2*D')).toEqual([{ factor: 1.2, case: 'D' }]);
});

test.each(['', '+', 'D+', 'D-L', 'D L', '2', 'D+D', '1.2.3D'])(
  '%j is no sum',
  (written) => {
    expect(readSum(written)).toBeUndefined();
  },
);
