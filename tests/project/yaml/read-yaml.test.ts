import { describe, expect, test } from 'vitest';
import type { Tree } from '../../../src/project/yaml/tree.ts';
import { treeOf } from '../../support/reading.ts';

/** A tree as plain values: texts as they are written, `null` for nothing. */
function plain(tree: Tree | undefined): unknown {
  switch (tree?.kind) {
    case undefined:
      return undefined;
    case 'empty':
      return null;
    case 'text':
      return tree.text;
    case 'list':
      return tree.items.map(plain);
    case 'map':
      return tree.entries.map(({ key, value }) => [key.text, plain(value)]);
  }
}

describe('a YAML file', () => {
  test('keeps scalars as the text that was written, whatever other programs would guess', () => {
    expect(
      plain(
        treeOf(
          '[ 2, 0x10, 017, 0o17, yes, no, on, true, 2031-03-14, 1e3, .5, +4 ft, .inf ]',
        ).tree,
      ),
    ).toEqual([
      '2',
      '0x10',
      '017',
      '0o17',
      'yes',
      'no',
      'on',
      'true',
      '2031-03-14',
      '1e3',
      '.5',
      '+4 ft',
      '.inf',
    ]);
  });

  test('holds nothing where a value is left out, `~` or `null`, and a text where these are quoted', () => {
    expect(
      plain(treeOf('a:\nb: ~\nc: null\nd: "null"\ne: ""\nf: { g, h: }\n').tree),
    ).toEqual([
      ['a', null],
      ['b', null],
      ['c', null],
      ['d', 'null'],
      ['e', ''],
      [
        'f',
        [
          ['g', null],
          ['h', null],
        ],
      ],
    ]);
  });

  test('knows the place of every key and value, and whether it is quoted', () => {
    const { tree } = treeOf('mark: B1\ntitle: "Deck"\n');
    expect(tree).toMatchObject({
      kind: 'map',
      entries: [
        {
          key: { span: { start: 0, end: 4 } },
          value: { span: { start: 6, end: 8 }, quoted: false },
        },
        {
          key: { span: { start: 9, end: 14 } },
          value: { span: { start: 16, end: 22 }, quoted: true },
        },
      ],
    });
  });

  test('may hold names that JavaScript keeps for itself', () => {
    expect(plain(treeOf('__proto__: { a: 1 }\nconstructor: 2\n').tree)).toEqual([
      ['__proto__', [['a', '1']]],
      ['constructor', '2'],
    ]);
  });

  test('may use a few aliases, which stand for what they name at its place', () => {
    const { tree, findings } = treeOf('a: &here { b: 1 }\nc: *here\n');
    expect(findings).toEqual([]);
    expect(plain(tree)).toEqual([
      ['a', [['b', '1']]],
      ['c', [['b', '1']]],
    ]);
  });

  test.each([
    [
      'one fault only for one slip',
      'a: b: c\n',
      ['yaml-syntax 3-4 a second colon stands on this line'],
    ],
    ['an open bracket', 'a: [ 1\nb: 2\n', undefined],
    ['an open quote', 'a: "x\n', undefined],
    ['a tab', 'a:\n\tb: 1\n', ['yaml-tab 3-4 a tab stands where YAML wants spaces']],
    ['nothing', '', ['yaml-empty 0-0 the file holds no definition']],
    ['a comment alone', '# later\n', ['yaml-empty 0-0 the file holds no definition']],
    [
      'two documents',
      'a: 1\n---\nb: 2\n',
      ['yaml-several-documents 5-14 the file holds more than one document'],
    ],
    ['a tag', 'a: !x 1\n', ['yaml-tag 3-5 tags such as `!name` mean nothing here']],
    [
      'an alias of nothing',
      'a: *x\n',
      ['yaml-alias 3-5 nothing is anchored as `&x` before this alias'],
    ],
    [
      'an alias inside itself',
      '&x [ *x ]\n',
      ['yaml-alias 5-7 the alias `*x` stands inside what it stands for'],
    ],
  ])('is refused with %s', (_, text, wanted) => {
    const { tree, findings } = treeOf(text);
    expect(tree).toBeUndefined();
    expect(findings.length).toBeGreaterThan(0);
    if (wanted !== undefined) expect(findings).toEqual(wanted);
  });

  test('is refused where it nests by the thousand, and quickly', () => {
    for (const depth of [61, 5_000, 400_000]) {
      const { tree, findings } = treeOf('['.repeat(depth));
      expect(tree).toBeUndefined();
      expect(findings.length).toBeGreaterThan(0);
    }
    expect(treeOf(`${'['.repeat(62)}${']'.repeat(62)}`).findings).toEqual([
      'yaml-too-deep 61-63 the file nests deeper than it can be read',
    ]);
    expect(treeOf(`${'['.repeat(60)}${']'.repeat(60)}`).findings).toEqual([]);
  });

  test('is refused where a few aliases unfold to millions of values', () => {
    const rows = Array.from({ length: 9 }, (_, row) =>
      row === 0
        ? 'a0: &a0 [ x, x, x, x ]'
        : `a${row}: &a${row} [ ${Array(9)
            .fill(`*a${row - 1}`)
            .join(', ')} ]`,
    );
    const { tree, findings } = treeOf(`${rows.join('\n')}\n`);
    expect(tree).toBeUndefined();
    expect(findings).toEqual([
      expect.stringMatching(/^yaml-alias .* the file uses more than 100 aliases$/),
    ]);
    const wide = `a: &a [ ${Array(500).fill('x').join(', ')} ]\nb: [ ${Array(90).fill('*a').join(', ')} ]\n`;
    expect(treeOf(wide).findings).toEqual([
      expect.stringMatching(
        /^yaml-alias .* the aliases of this file unfold to more than it may hold$/,
      ),
    ]);
  });

  test('is read in reasonable time although it is full of faults', () => {
    const duplicates = Array.from(
      { length: 10_000 },
      (_, row) => `k${row}: 1\nk${row}: 2\n`,
    ).join('');
    expect(treeOf(duplicates).findings).toHaveLength(10_000);
    expect(treeOf('a: b: c\n'.repeat(5_000)).findings).toHaveLength(20);
  });
});
