import { expect, test } from 'vitest';
import { paintFor, printable } from '../../src/cli/paint.ts';

test('text is coloured only for a stream that takes colours', () => {
  expect(paintFor(false)('error', 'x')).toBe('x');
  expect(paintFor(true)('remark', 'x')).toBe('\u001b[33mx\u001b[39m');
});

test('control characters are shown, line breaks kept, tabs made blanks', () => {
  expect(printable('a\u001b[31m\tb\nc\u0085')).toBe('a\ufffd[31m b\nc\ufffd');
});
