import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { scanObjects } from '../../../src/pdf/reading/scan-objects.ts';
import type { PdfObject } from '../../../src/pdf/reading/pdf-object.ts';
import { isKeyword } from '../../../src/pdf/reading/scan-words.ts';

const bytes = (text: string): Uint8Array =>
  Uint8Array.from(Buffer.from(text, 'latin1'));

/** Everything that a text holds, in plain values. */
function all(text: string): readonly unknown[] {
  const scanner = scanObjects(bytes(text));
  const items: unknown[] = [];
  for (let item = scanner.next(); item !== undefined; item = scanner.next())
    items.push(isKeyword(item) ? `!${item.word}` : plain(item));
  return items;
}

function plain(object: PdfObject): unknown {
  if (object === null || typeof object !== 'object') return object;
  switch (object.kind) {
    case 'name':
      return `/${object.name}`;
    case 'string':
      return Buffer.from(object.bytes).toString('latin1');
    case 'array':
      return object.items.map(plain);
    case 'dictionary':
    case 'stream':
      return Object.fromEntries(
        [...object.entries].map(([key, value]) => [key, plain(value)]),
      );
    case 'reference':
      return `→${object.number}`;
  }
}

describe('the objects of a PDF', () => {
  test.each([
    ['true false null', [true, false, null]],
    ['1 -2 +3.5 .25 4. -.002', [1, -2, 3.5, 0.25, 4, -0.002]],
    ['/Name /A#20b /', ['/Name', '/A b', '/']],
    ['(plain) (a (nested) one) ()', ['plain', 'a (nested) one', '']],
    ['(\\(\\)\\\\ \\n\\t \\101\\7 \\x)', ['()\\ \n\t A\u0007 x']],
    ['(one \\\ntwo)', ['one two']],
    ['<48 65 6c6C 6F> <7> <>', ['Hello', 'p', '']],
    ['[1 /A (b) [2]]', [[1, '/A', 'b', [2]]]],
    ['<</A 1/B[2]/C<</D(e)>>>>', [{ A: 1, B: [2], C: { D: 'e' } }]],
    ['[12 0 R 3 4 0 R]', [['→12', 3, '→4']]],
    ['1 % a comment\n2', [1, 2]],
    ['BT /F1 10 Tf (x)Tj ET', ['!BT', '/F1', 10, '!Tf', 'x', '!Tj', '!ET']],
    ["f* (a)' T*", ['!f*', 'a', "!'", '!T*']],
    ['', []],
  ])('are read from %s', (text, objects) => {
    expect(all(text)).toEqual(objects);
  });

  test.each([
    '[1 2',
    '<</A 1',
    '(never closed',
    '<4865',
    '<zz>',
    '<</A R>>',
    '[1 endobj]',
    '<<1 2>>',
    '['.repeat(200),
  ])('are refused in %s', (text) => {
    expect(() => all(text)).toThrow(RangeError);
  });

  test('are read or refused whatever the bytes are, and reading comes to an end', () => {
    fc.assert(
      fc.property(
        fc.string({
          unit: fc.constantFrom(...Array.from('<>[]()/%\\ \n0123456789RaF.-#')),
          maxLength: 60,
        }),
        (text) => {
          try {
            expect(all(text).length).toBeLessThanOrEqual(text.length);
          } catch (fault) {
            expect(fault).toBeInstanceOf(RangeError);
          }
        },
      ),
      { numRuns: 2000 },
    );
  });
});
