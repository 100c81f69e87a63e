import { describe, expect, test } from 'vitest';
import { linksOf, replaceLink } from '../../src/equation/links.ts';
import type { Statement } from '../../src/equation/index.ts';
import { giv, sym } from './samples.ts';

const shown: Statement = {
  lines: [
    {
      left: sym('R'),
      chain: [
        { sign: '=', of: giv('1 kip') },
        { sign: '=', of: giv('2 kip') },
      ],
    },
    { chain: [{ sign: '≈', of: giv('3 kip') }], boxed: true, margin: 'A' },
  ],
};

describe('the relations of a statement', () => {
  test('each has what stands on both sides, over line ends too', () => {
    expect(linksOf(shown).map(({ from, sign, to }) => [from, sign, to])).toEqual([
      [sym('R'), '=', giv('1 kip')],
      [giv('1 kip'), '=', giv('2 kip')],
      [giv('2 kip'), '≈', giv('3 kip')],
    ]);
  });

  test('a first line without a left side begins with its second relation', () => {
    expect(linksOf({ lines: shown.lines.slice(1) })).toEqual([]);
  });

  test('replacing both sides changes nothing else', () => {
    for (const [place, link] of linksOf(shown).entries()) {
      const from = giv('10 kip');
      const to = giv('20 kip');
      const changed = replaceLink(shown, { ...link, from, to });
      const before = linksOf(shown);
      const after = linksOf(changed);
      expect(after[place]).toMatchObject({ from, to });
      expect(after[place - 2]).toEqual(before[place - 2]);
      expect(after[place + 2]).toEqual(before[place + 2]);
      expect(changed.lines[1]).toMatchObject({ boxed: true, margin: 'A' });
    }
  });
});
