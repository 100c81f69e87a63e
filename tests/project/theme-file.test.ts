import { describe, expect, test } from 'vitest';
import { themeFile } from '../../src/project/theme-file.ts';
import { defaultTheme } from '../../src/theme/index.ts';
import { readAs } from '../support/reading.ts';

describe('theme.yaml', () => {
  test('may restate the whole default theme', () => {
    expect(readAs(themeFile, JSON.stringify(defaultTheme))).toEqual({
      value: defaultTheme,
      findings: [],
    });
  });

  test('holds only what it changes', () => {
    expect(readAs(themeFile, 'text: { size: 11 }\n').value).toEqual({
      text: { size: 11 },
    });
  });

  test('knows the keys of the default theme and no other', () => {
    expect(
      readAs(
        themeFile,
        '{ text: { sise: 11 }, colour: { ink: [ 0, 0 ] }, line: { member: -1 }, paper: 4 }',
      ).findings,
    ).toEqual([
      'wrong-shape 78-79 a map of sizes for paper belongs here, not `4`',
      'unknown-key 10-14 no key `sise` is known here',
      'number-out-of-range 65-67 a number from 0 to 1000 belongs here, not -1',
      'wrong-count 37-45 3 items belong in this list, not 2',
    ]);
  });
});
