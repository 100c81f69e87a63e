import { describe, expect, test } from 'vitest';
import { breakRagged } from '../../../src/layout/break-ragged.ts';
import { lineItems } from '../../../src/layout/line-items.ts';
import { setLine } from '../../../src/layout/set-line.ts';
import { decimalPointOf } from '../../../src/layout/table/decimal-point.ts';
import { bodyBase } from '../../../src/layout/text-look.ts';
import { number } from '../../../src/equation/index.ts';
import { defaultTheme } from '../../../src/theme/index.ts';
import type { Inline } from '../../../src/report/index.ts';
import { math, text } from '../../support/blocks.ts';
import { openSetting } from '../../support/layout-setting.ts';

const setting = openSetting();
const base = bodyBase(defaultTheme);

function pointOf(...content: readonly Inline[]): number | undefined {
  const [range] = breakRagged(lineItems(content, base, setting), Infinity, setting);
  return decimalPointOf(setLine(range!, setting));
}

const widthOf = (words: string): number => setting.words.inLook(base.look)(words).width;

describe('decimalPointOf', () => {
  test('finds the point of a number', () => {
    expect(pointOf(text('−12.25'))).toBeCloseTo(widthOf('−12'), 6);
  });

  test('takes the end of the digits where there is no point', () => {
    expect(pointOf(text('36'))).toBeCloseTo(widthOf('36'), 6);
    expect(pointOf(text('36 kip'))).toBeCloseTo(widthOf('36'), 6);
  });

  test('reads over separators of thousands', () => {
    expect(pointOf(text('12,500.5'))).toBeCloseTo(widthOf('12,500'), 1);
    expect(pointOf(text('12\u202f500'))).toBeCloseTo(widthOf('12\u202f500'), 6);
  });

  test('is not led astray by a stop or a comma behind the number', () => {
    expect(pointOf(text('36.'))).toBeCloseTo(widthOf('36'), 1);
    expect(pointOf(text('36, 40'))).toBeCloseTo(widthOf('36'), 1);
  });

  test('finds the point of a figure in an equation', () => {
    const whole = pointOf(math(number(128)))!;
    const broken = pointOf(math(number(128.5)))!;
    expect(broken).toBeCloseTo(whole, 1);
  });

  test('finds none in words', () => {
    expect(pointOf(text('none'))).toBeUndefined();
  });
});
