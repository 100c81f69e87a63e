import { expect, test } from 'vitest';
import { plainText } from '../../src/layout/plain-text.ts';
import { letter, link, math, sheetNumber, text } from '../support/blocks.ts';

test('reads inlines as plain text and leaves out what is no word', () => {
  const content = [
    text('Moment '),
    math(letter('M', 'max')),
    { kind: 'break' } as const,
    link('a', [text('see  '), text('B1', 'strong')]),
    sheetNumber('a'),
    { kind: 'sheet-count' } as const,
    { kind: 'blank', width: 20 } as const,
  ];
  expect(plainText(content)).toBe('Moment M_max see B1');
});
