import { describe, expect, test } from 'vitest';
import { readPainted } from '../../../src/pdf/reading/read-painted.ts';
import type { Operation } from '../../../src/pdf/reading/read-content.ts';
import type { ReadFont } from '../../../src/pdf/reading/read-font.ts';
import { scanObjects } from '../../../src/pdf/reading/scan-objects.ts';
import { isKeyword } from '../../../src/pdf/reading/scan-words.ts';
import type { PdfObject } from '../../../src/pdf/reading/pdf-object.ts';

function operations(content: string): readonly Operation[] {
  const scanner = scanObjects(new TextEncoder().encode(content));
  const found: Operation[] = [];
  let operands: PdfObject[] = [];
  for (let item = scanner.next(); item !== undefined; item = scanner.next()) {
    if (isKeyword(item)) {
      found.push({ operator: item.word, operands });
      operands = [];
    } else operands.push(item);
  }
  return found;
}

const font: ReadFont = {
  name: 'ABCDEF+Test',
  texts: new Map([
    [1, 'a'],
    [2, 'b'],
  ]),
  widthOf: () => 500,
  program: new Uint8Array(),
  lacks: [],
};
const read = (content: string) =>
  readPainted(operations(content), (name) => (name === 'F1' ? font : undefined));

describe('what a page paints', () => {
  test('has texts at their places through every kind of move', () => {
    const { painted } = read(
      'q 2 0 0 2 10 20 cm BT /F1 5 Tf 1 2 Td <0001> Tj 3 4 Td [<0002> -100 <0001>] TJ ET Q BT 1 0 0 1 7 8 Tm /F1 9 Tf <0001> Tj ET',
    );
    expect(painted).toMatchObject([
      { text: 'a', x: 12, y: 24, size: 10 },
      { text: 'ba', x: 18, y: 32, size: 10 },
      { text: 'a', x: 7, y: 8, size: 9 },
    ]);
  });

  test('knows what each piece belongs to and what text stands for it', () => {
    const { painted, faults } = read(
      '/P <</MCID 3>> BDC 0 0 m 1 1 l S /Span <</ActualText (x)>> BDC /Im Do EMC EMC /Artifact BMC 0 0 m f EMC',
    );
    expect(faults).toEqual([]);
    expect(painted).toEqual([
      {
        kind: 'path',
        marking: {
          content: [{ tag: 'P', mcid: 3 }],
          artifacts: 0,
          actualText: undefined,
        },
      },
      {
        kind: 'image',
        marking: { content: [{ tag: 'P', mcid: 3 }], artifacts: 0, actualText: 'x' },
      },
      { kind: 'path', marking: { content: [], artifacts: 1, actualText: undefined } },
    ]);
  });

  test('does not take the words of the language for operators', () => {
    expect(read('toString constructor hasOwnProperty').painted).toEqual([]);
  });
});
