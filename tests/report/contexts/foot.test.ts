import { expect, test } from 'vitest';
import { initialsOf } from '../../../src/report/contexts/foot.ts';

test('initials stand in a box only where that person’s own date was given', () => {
  expect(initialsOf({ name: 'A. Quill', initials: 'AQ', date: '2031-03-14' })).toBe(
    'AQ 2031-03-14',
  );
  expect(initialsOf({ name: 'R. Tamsin', initials: 'RT' })).toBe('');
  expect(initialsOf(undefined)).toBe('');
});
