import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { indexLines, placeAt, placeIn } from '../../src/diagnostics/index.ts';

const at = (text: string, offset: number): readonly [number, number, string] => {
  const { line, column, lineText } = placeAt({ path: 'b1.yaml', text }, offset);
  return [line, column, lineText];
};

describe('the place of an offset', () => {
  test('counts lines and columns from 1', () => {
    expect(at('mark: B1\nkind: beam\n', 0)).toEqual([1, 1, 'mark: B1']);
    expect(at('mark: B1\nkind: beam\n', 9)).toEqual([2, 1, 'kind: beam']);
    expect(at('mark: B1\nkind: beam\n', 15)).toEqual([2, 7, 'kind: beam']);
    expect(at('mark: B1\nkind: beam\n', 8)).toEqual([1, 9, 'mark: B1']);
  });

  test('takes what lies past the end for the end, and what lies before the start for the start', () => {
    expect(at('a\nb', 99)).toEqual([2, 2, 'b']);
    expect(at('a\n', 99)).toEqual([2, 1, '']);
    expect(at('a\n', -3)).toEqual([1, 1, 'a']);
    expect(at('', 0)).toEqual([1, 1, '']);
  });

  test('leaves the line break of Windows out of the line, and knows that of old Macintoshes', () => {
    expect(at('a: 1\r\nb: 2\r\n', 6)).toEqual([2, 1, 'b: 2']);
    expect(at('a: 1\r\nb: 2\r\n', 0)).toEqual([1, 1, 'a: 1']);
    expect(at('a\rb', 2)).toEqual([2, 1, 'b']);
  });

  test('is the same whether lines are indexed once or each time', () => {
    const text = fc.string({ unit: fc.constantFrom('a', ' ', '\n', '\r') });
    fc.assert(
      fc.property(text, fc.nat(40), (written, offset) => {
        const lines = indexLines(written);
        const place = placeIn(lines, offset);
        expect(placeAt({ path: '', text: written }, offset)).toEqual(place);
        const start = lines.starts[place.line - 1] ?? -1;
        expect(start + place.column - 1).toBe(Math.min(offset, written.length));
        expect(place.lineText).not.toMatch(/[\r\n]/);
      }),
    );
  });
});
