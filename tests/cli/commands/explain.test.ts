import { describe, expect, test } from 'vitest';
import { codes } from '../../../src/diagnostics/index.ts';
import { ran } from '../../support/command-line.ts';

describe('explain', () => {
  test('tells what a code means, how to mend it, wrong and right', async () => {
    const { code, out } = await ran(['explain', 'unit-missing']);
    expect(code).toBe(0);
    const { meaning, mend, example } = codes['unit-missing'];
    for (const text of [meaning, mend, example?.wrong, example?.right])
      expect(out).toContain(text);
  });

  test('takes the code with the brackets that it is shown in', async () => {
    expect((await ran(['explain', '[unit-missing]'])).out).toBe(
      (await ran(['explain', 'unit-missing'])).out,
    );
  });

  test('shows no example where there is none', async () => {
    expect((await ran(['explain', 'write-failed'])).out).not.toContain('Wrong');
  });

  test('lists every code, a line each', async () => {
    const { out } = await ran(['explain']);
    const listed = out
      .trimEnd()
      .split('\n')
      .map((line) => line.split(' ')[0]);
    expect(listed).toEqual(Object.keys(codes));
  });

  test('suggests the nearest code', async () => {
    const { code, err } = await ran(['explain', 'unit-mising']);
    expect(code).toBe(1);
    expect(err).toContain('there is no code unit-mising\n  → write unit-missing');
    expect((await ran(['explain', 'constructor'])).code).toBe(1);
  });
});
