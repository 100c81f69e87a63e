import { describe, expect, test } from 'vitest';
import {
  exactly,
  minus,
  name,
  number,
  product,
  sum,
  sumOfMoments,
  zero,
} from '../../src/equation/index.ts';
import type { Statement } from '../../src/equation/index.ts';
import { writeEquation } from '../../src/plain/write-equation.ts';
import { textWidth } from '../../src/plain/text-width.ts';
import { parseUnit } from '../../src/units/index.ts';
import type { Unit } from '../../src/units/index.ts';

const R = name({ meaning: 'reaction', letter: 'R', subscript: 'C' });
const [kip, ft] = ['kip', 'ft'].map((text) => {
  const parsed = parseUnit(text);
  if (!('unit' in parsed)) throw new Error(text);
  return parsed.unit;
}) as [Unit, Unit];
const moments = sum(
  product(R, exactly(21, ft)),
  minus(product(exactly(8.4, kip), exactly(6, ft))),
);

const worked: Statement = {
  lines: [
    {
      left: sumOfMoments('A', 'counterclockwise'),
      chain: [
        { sign: '=', of: moments },
        { sign: '=', of: zero() },
      ],
    },
    {
      left: R,
      chain: [{ sign: '=', of: exactly(2.4, kip) }],
      boxed: true,
      margin: '(3)',
    },
  ],
};

describe('an equation as text', () => {
  test('stacks lines on their relation signs, boxes by brackets, sets the margin flush right', () => {
    expect(writeEquation(worked, 60)).toEqual([
      'ΣM_A = R_C (21 ft) − 8.4 kip (6 ft) = 0',
      'R_C  = [ 2.4 kip ]                                       (3)',
    ]);
  });

  test('breaks what is too wide before a sign', () => {
    expect(writeEquation(worked, 26)).toEqual([
      'ΣM_A = R_C (21 ft)',
      '       − 8.4 kip (6 ft)',
      '       = 0',
      'R_C  = [ 2.4 kip ]     (3)',
    ]);
  });

  test('never breaks at a sign within parentheses', () => {
    const grouped: Statement = {
      lines: [
        {
          left: R,
          chain: [
            {
              sign: '=',
              of: product(sum(number(111), number(222)), sum(number(333), number(444))),
            },
          ],
        },
      ],
    };
    expect(writeEquation(grouped, 24)).toEqual([
      'R_C = (111 + 222)',
      '      (333 + 444)',
    ]);
  });

  test('a left side that is very wide stands above, the relation in line with the others', () => {
    const wide: Statement = {
      lines: [
        { left: R, chain: [{ sign: '=', of: number(1) }] },
        { left: moments, chain: [{ sign: '=', of: zero() }] },
      ],
    };
    expect(writeEquation(wide, 50)).toEqual([
      'R_C = 1',
      'R_C (21 ft) − 8.4 kip (6 ft)',
      '    = 0',
    ]);
  });

  test('a line without a left side continues under the sign above', () => {
    const continued: Statement = {
      lines: [
        { left: R, chain: [{ sign: '=', of: sum(number(1), number(2)) }] },
        { chain: [{ sign: '=', of: number(3) }] },
      ],
    };
    expect(writeEquation(continued, 40)).toEqual(['R_C = 1 + 2', '    = 3']);
  });

  test('a margin that finds no room beside the line stands under it', () => {
    const lines = writeEquation(worked, 20);
    expect(lines.at(-1)).toBe('                 (3)');
    expect(lines.every((line) => textWidth(line) <= 20)).toBe(true);
  });
});
