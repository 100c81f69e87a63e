import { expect, test } from 'vitest';
import { fixedTime } from '../../src/world/index.ts';

test('the time of kept files is noon of 2 January 1980 by the clock of the place', () => {
  const time = fixedTime();
  expect([
    time.getFullYear(),
    time.getMonth(),
    time.getDate(),
    time.getHours(),
    time.getMinutes(),
    time.getSeconds(),
  ]).toEqual([1980, 0, 2, 12, 0, 0]);
});
