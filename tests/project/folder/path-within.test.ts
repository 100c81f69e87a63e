import { describe, expect, test } from 'vitest';
import { pathWithin } from '../../../src/project/folder/path-within.ts';

describe('a path that a definition names', () => {
  test.each([
    ['images/a.png', 'images/a.png'],
    ['./images//a.png', 'images/a.png'],
    ['images\\a.png', 'images/a.png'],
    ['images/..a.png', 'images/..a.png'],
  ])('%s stays inside the folder', (written, path) => {
    expect(pathWithin(written)).toBe(path);
  });

  test.each([
    '../a.png',
    'images/../../a.png',
    'images/../a.png',
    '..\\a.png',
    '/etc/passwd',
    'C:\\a.png',
    'c:a.png',
    '',
    '.',
    'a\0b',
  ])('%j does not', (written) => {
    expect(pathWithin(written)).toBeUndefined();
  });
});
