import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { ColumnAlign, Row } from '../../src/report/index.ts';
import type { TableBlock } from '../../src/plain/table-cells.ts';
import { textWidth } from '../../src/plain/text-width.ts';
import { writeTable } from '../../src/plain/write-table.ts';

function row(...texts: readonly (string | readonly [string, number])[]): Row {
  return {
    cells: texts.map((one) => {
      const [text, colSpan] = typeof one === 'string' ? [one, 1] : one;
      return {
        isHead: false,
        colSpan,
        content: [{ kind: 'text', text, style: 'plain' }],
      };
    }),
  };
}

const head = (...texts: readonly (string | readonly [string, number])[]): Row => ({
  cells: row(...texts).cells.map((cell) => ({ ...cell, isHead: true })),
});

function table(
  columns: readonly ColumnAlign[],
  parts: {
    readonly head?: readonly Row[];
    readonly body: readonly Row[];
    readonly style?: TableBlock['style'];
  },
): TableBlock {
  return { kind: 'table', columns, head: [], style: 'plain', size: 'body', ...parts };
}

describe('a table as text', () => {
  test('sets columns apart and numbers on their decimal points', () => {
    const block = table(['left', 'decimal'], {
      head: [head('Entry', 'R_A')],
      body: [row('D', '1.125'), row('1.2D + 1.6L', '−12.5'), row('L', '0')],
      style: 'ruled',
    });
    expect(writeTable(block, 80)).toEqual([
      'Entry            R_A',
      '────────────────────',
      'D              1.125',
      '1.2D + 1.6L  −12.5',
      'L              0',
      '────────────────────',
    ]);
  });

  test('wraps words where the line is too short, and leaves numbers whole', () => {
    const block = table(['left', 'right'], {
      body: [row('Lot line wall of the yard', '12 345.6')],
    });
    expect(writeTable(block, 22)).toEqual([
      'Lot line      12 345.6',
      'wall of the',
      'yard',
    ]);
  });

  test('wraps heads before it wraps what stands under them', () => {
    const block = table(['left', 'right'], {
      head: [head('Entry', 'V, greatest')],
      body: [row('1.35G + 1.5Q + 0.75S', '−12.345')],
    });
    expect(writeTable(block, 31)).toEqual([
      'Entry                        V,',
      '                       greatest',
      '1.35G + 1.5Q + 0.75S    −12.345',
    ]);
  });

  test('writes a table with too many columns in several, the first column in each', () => {
    const block = table(['left', 'right', 'right', 'right'], {
      head: [head('', ['forces', 2], 'moment')],
      body: [row('L', '1111111', '2222222', '3333333')],
    });
    expect(writeTable(block, 20)).toEqual([
      '             forces',
      'L  1111111  2222222',
      '',
      '    moment',
      'L  3333333',
    ]);
  });

  test('a cell over several columns has the room of all of them', () => {
    const block = table(['left', 'left', 'left'], {
      body: [row('A', ['no results', 2]), row('B', '1', '2')],
    });
    expect(writeTable(block, 40)).toEqual(['A  no results', 'B  1  2']);
  });

  test('a heavier row has a rule above', () => {
    const block = table(['left'], {
      body: [row('1'), { ...row('sum'), isRuled: true }],
    });
    expect(writeTable(block, 40)).toEqual(['1', '───', 'sum']);
  });

  test('a table without columns is nothing', () => {
    expect(writeTable(table([], { body: [] }), 40)).toEqual([]);
  });

  test('keeps within the width and shows every word, whatever it holds', () => {
    const word = fc.stringMatching(/^[a-zA-Z0-9.−]{1,14}$/);
    const cells = fc.array(word, { minLength: 1, maxLength: 7 });
    fc.assert(
      fc.property(
        fc.array(cells, { minLength: 1, maxLength: 4 }),
        fc.constantFrom('left', 'right', 'decimal', 'centre'),
        (rows, align) => {
          const columns = Array.from({ length: 7 }, (): ColumnAlign => align);
          const lines = writeTable(
            table(columns, { body: rows.map((one) => row(...one)) }),
            40,
          );
          expect(lines.filter((line) => textWidth(line) > 40)).toEqual([]);
          const shown = lines.join(' ').replaceAll('\u00a0', ' ').split(/ +/u);
          for (const one of rows.flat()) expect(shown).toContain(one);
        },
      ),
    );
  });
});
