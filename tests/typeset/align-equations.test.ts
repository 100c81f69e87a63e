import { describe, expect, test } from 'vitest';
import { characters, textOf, typesetter } from '../support/equations.ts';

const derivation = [
  { left: '\\sum M_A', right: '=R_B\\cdot 6.0-10\\cdot 3.0' },
  { left: '', right: '=0' },
  {
    left: 'R_B',
    right: '\\approx 5.0\\,\\text{kN}',
    alternate: 'R B is 5',
    actualText: 'R_B ≈ 5',
  },
];
const options = { size: 10, width: 300 };
const relation = (line: Parameters<typeof characters>[0], sign: string): number =>
  characters(line).find(({ text }) => text === sign)!.x;

describe('a derivation stacked on its equals signs', () => {
  test('sets all relations under each other', () => {
    const { lines } = typesetter.typesetAligned(derivation, options);
    const xs = [
      relation(lines[0]!, '='),
      relation(lines[1]!, '='),
      relation(lines[2]!, '≈'),
    ];
    expect(xs[1]).toBeCloseTo(xs[0]!, 9);
    expect(xs[2]).toBeCloseTo(xs[0]!, 9);
  });

  test('keeps the width of the widest left part, and the usual space before the relation', () => {
    const { lines, offset } = typesetter.typesetAligned(derivation, options);
    const left = typesetter.typeset('\\sum M_A', { size: 10, display: true });
    expect(offset).toBeCloseTo(left.width, 9);
    const whole = typesetter.typeset('\\sum M_A=0', { size: 10, display: true });
    expect(relation(lines[0]!, '=')).toBeCloseTo(relation(whole, '='), 9);
  });

  test('sets left parts at the relation', () => {
    const { lines, offset } = typesetter.typesetAligned(derivation, options);
    const left = typesetter.typeset('R_B', { size: 10, display: true });
    expect(characters(lines[2]!)[0]!.x).toBeCloseTo(offset - left.width, 9);
  });

  test('a line that is too wide goes on just right of its relation, in the same drawing', () => {
    const long = { left: 'M', right: '=1+2+3+4+5+6+7+8+9+10+11+12+13' };
    const narrow = { size: 10, width: 120, leading: 20 };
    const { lines, offset } = typesetter.typesetAligned([long, derivation[1]!], narrow);
    expect(lines).toHaveLength(2);
    const [first] = lines;
    expect(first!.width).toBeLessThanOrEqual(120);
    const rows = [...new Set(characters(first!).map(({ y }) => Math.round(y)))];
    expect(rows.length).toBeGreaterThan(1);
    expect(rows[1]! - rows[0]!).toBe(20);
    expect(rows[0]).toBe(Math.round(first!.baseline!));
    const second = characters(first!).filter(({ y }) => Math.round(y) === rows[1]);
    expect(second[0]!.text).toBe('+');
    expect(second[0]!.x).toBeGreaterThan(offset + 5);
    expect(textOf(first!)).toBe('M=1+2+3+4+5+6+7+8+9+10+11+12+13');
  });

  test('a very wide left part stands on a row of its own', () => {
    const wide = { left: 'R_B\\cdot 6.0-10\\cdot 3.0-25\\cdot 2.0', right: '=0' };
    const tight = { left: 'R_B', right: '=\\frac{30+50}{6.0}=13.3\\,\\text{kN}+1+2+3' };
    const { lines, offset } = typesetter.typesetAligned([wide, tight], {
      size: 10,
      width: 160,
    });
    expect(offset).toBeLessThan(0.45 * 160);
    const placed = characters(lines[0]!);
    expect(placed[0]!.x).toBe(0);
    expect(placed.at(-1)!.y).toBeGreaterThan(placed[0]!.y + 10);
    expect(relation(lines[0]!, '=')).toBeCloseTo(relation(lines[1]!, '='), 9);
  });

  test('each line says what it is', () => {
    const { lines } = typesetter.typesetAligned(derivation, options);
    expect(lines[2]).toMatchObject({
      alternate: 'R B is 5',
      marks: [{ kind: 'group', actualText: 'R_B ≈ 5' }],
    });
    expect(lines[1]).not.toHaveProperty('alternate');
  });

  test('refuses tags and line breaks', () => {
    const set = (right: string) => () =>
      typesetter.typesetAligned([{ left: 'a', right }], options);
    expect(set('=b\\tag{1}')).toThrow(/tag/);
    expect(set('=b\\\\c')).toThrow(/line break/);
  });

  test('a fault names its line', () => {
    const bad = [{ left: 'a', right: '=\\frac{b}' }];
    expect(() => typesetter.typesetAligned(bad, options)).toThrow('=\\frac{b}');
  });

  test('no lines at all are no lines', () => {
    expect(typesetter.typesetAligned([], options).lines).toEqual([]);
  });
});
