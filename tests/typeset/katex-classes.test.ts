import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import katex from 'katex';
import { describe, expect, test } from 'vitest';
import {
  classMeanings,
  pieceShares,
  sizeSteps,
} from '../../src/typeset/katex-classes.ts';

const css = readFileSync(
  fileURLToPath(import.meta.resolve('katex/dist/katex.css')),
  'utf8',
).replace(/\/\*[\s\S]*?\*\//g, '');

/** Classes of the stylesheet that never reach the reader: what is above and beside the bases. */
const outside = [
  'katex katex-version katex-mathml katex-html katex-display leqno fleqn',
  'vlist vlist-r vlist-s katex-sizing fontsize-ensurer mtr-glue mml-eqn-num',
].flatMap((names) => names.split(' '));

describe('the table of KaTeX’s classes', () => {
  test('is made for the version that is installed', () => {
    expect(katex.version).toBe('0.19.1');
  });

  test('knows every class that KaTeX’s stylesheet lays out', () => {
    const inStylesheet = new Set(
      Array.from(css.matchAll(/\.([a-z][\w-]*)/gi), (match) => match[1]!),
    );
    const unknown = [...inStylesheet].filter(
      (name) =>
        !classMeanings.has(name) &&
        !outside.includes(name) &&
        !/^(reset-)?size\d+$/.test(name) &&
        !/^(ttf|woff2?)$/.test(name),
    );
    expect(unknown).toEqual([]);
  });

  test('has the stylesheet’s eleven font sizes', () => {
    for (const [index, step] of sizeSteps.entries()) {
      const rule = new RegExp(
        `katex-sizing\\.reset-size6\\.size${index + 1},[^{]*\\{[^}]*font-size: ([\\d.]+)em`,
      ).exec(css);
      expect(Number(rule?.[1])).toBeCloseTo(step, 9);
    }
  });

  test.each(['nulldelimiter', 'x-arrow-pad', 'boxpad', 'cancel-pad', 'anglpad'])(
    'has the stylesheet’s room for %s',
    (name) => {
      const rule = new RegExp(`\\.${name} \\{([^}]*)\\}`).exec(css)?.[1] ?? '';
      const stated = Number(/(?:width:|padding: 0) ([\d.]+)em/.exec(rule)?.[1]);
      const meaning = classMeanings.get(name)!;
      expect(meaning.advance ?? meaning.before).toBe(stated);
    },
  );

  test('puts the pieces of outlines where the stylesheet puts them', () => {
    for (const [name, [, share]] of pieceShares) {
      const rule = new RegExp(`\\.${name} \\{[^}]*width: ([\\d.]+)%`).exec(css);
      expect(share).toBeCloseTo(Number(rule?.[1]) / 100, 9);
    }
  });
});
