import { describe, expect, test } from 'vitest';
import type { Difference, Verification } from '../../src/index.ts';
import { paintFor } from '../../src/cli/paint.ts';
import { verificationLines } from '../../src/cli/verification-lines.ts';

const paint = paintFor(false);
const base: Verification = {
  path: 'a.zip',
  kind: 'bag',
  verdict: 'intact',
  identity: { number: '2031-9', title: 'Weir', revision: 'B', status: 'issued' },
  versions: { issued: '0.1.0', present: '0.2.0' },
  damage: [],
  differences: [],
  remarks: ['a PDF alone has no digest'],
};
const lines = (found: Partial<Verification>, inFull = false): readonly string[] =>
  verificationLines(
    { path: 'a.zip', verification: { ...base, ...found } },
    paint,
    inFull,
  )
    .trimEnd()
    .split('\n');

describe('the lines on a bag', () => {
  test('are one where it is intact; remarks follow only in full', () => {
    expect(lines({})).toEqual(['intact          2031-9 B          a.zip']);
    expect(lines({}, true)).toEqual([
      'intact          2031-9 B          a.zip',
      '    a PDF alone has no digest',
    ]);
  });

  test('name every difference with both values and the share, the greatest first', () => {
    const figures = { archived: '18.5 kip ft', computed: '18 kip ft' };
    const differences: readonly Difference[] = [
      { member: 'B1', what: 'result L, shear max', ...figures, share: 1e-7 },
      { member: 'B1', what: 'result L, moment max', ...figures, share: 0.02734 },
      { member: 'B2', what: 'the member', archived: 'given' },
    ];
    const compared = { figures: 900, greatest: 0.02734 };
    expect(lines({ verdict: 'differs', differences, compared, remarks: [] })).toEqual([
      'differs         2031-9 B          a.zip',
      '    as issued by version 0.1.0, but version 0.2.0 computes differently: 3 of 900 figures',
      '    B2, the member: given archived, nothing now',
      '    B1, result L, moment max: 18.5 kip ft archived, 18 kip ft now (2.7 %)',
      '    B1, result L, shear max: 18.5 kip ft archived, 18 kip ft now (0.00001 %)',
    ]);
  });

  test('end where there are too many, and say how many more there are', () => {
    const damage = Array.from({ length: 20 }, (_, index) => ({
      path: `data/${index}`,
      message: 'it is missing',
    }));
    const told = lines({ verdict: 'damaged', damage, remarks: [] });
    expect(told).toHaveLength(14);
    expect(told.at(-1)).toBe('    and 8 more; --json prints them all');
  });

  test('tell of a signed copy that is not as recorded even beside an intact bag', () => {
    const message = 'the signed PDF is another';
    expect(lines({ signed: { comparison: 'not as recorded', message } })).toContain(
      `    ${message}`,
    );
    expect(lines({ signed: { comparison: 'same start', message } })).toHaveLength(1);
  });

  test('cannot steer the terminal', () => {
    const path = 'a\u001b[2J\n.zip';
    const told = verificationLines(
      { path, verification: { ...base, path } },
      paint,
      false,
    );
    expect(told).toBe('intact          2031-9 B          a\ufffd[2J .zip\n');
  });

  test('say that the program failed, and how', () => {
    expect(
      verificationLines({ path: 'a.zip', failure: 'Error: x\n  at y' }, paint, false),
    ).toBe('failed                            a.zip\n    Error: x\n      at y\n');
  });
});
