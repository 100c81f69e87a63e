import { nearest } from '../../diagnostics/index.ts';
import type { Shape } from './shape.ts';
import { reportMisfit } from './misfit.ts';

/** A text of at least one character; numbers, dates and words such as `yes` count as they are written. */
export const text: Shape<string> = {
  expects: 'a text',
  schema: { type: ['string', 'number', 'boolean'] },
  read: (tree, reading) => {
    if (tree.kind !== 'text' || tree.text.trim() === '') {
      reportMisfit(
        tree.kind === 'text' ? { kind: 'empty', span: tree.span } : tree,
        'a text',
        reading,
        tree.kind === 'list' || tree.kind === 'map'
          ? ['put a text that holds brackets, braces or a colon in quotes']
          : [],
      );
      return undefined;
    }
    return tree.text.trim();
  },
};

/** A name of a certain form; `rule` says the form in words for the hint: `marks hold no dot, dash or space`. */
export function nameOf(expects: string, form: RegExp, rule: string): Shape<string> {
  return {
    expects,
    schema: { type: ['string', 'number'], pattern: form.source },
    read: (tree, reading) => {
      if (tree.kind !== 'text') {
        reportMisfit(tree, expects, reading);
        return undefined;
      }
      if (form.test(tree.text)) return tree.text;
      reading.report({
        code: 'bad-name',
        message: `\`${tree.text}\` cannot be ${expects}`,
        span: tree.span,
        hints: [rule],
      });
      return undefined;
    },
  };
}

/** One of some fixed words. */
export function oneOf<const W extends string>(...words: readonly W[]): Shape<W> {
  const expects = `one of ${words.join(', ')}`;
  return {
    expects,
    schema: { enum: words },
    read: (tree, reading) => {
      if (tree.kind !== 'text') {
        reportMisfit(tree, expects, reading);
        return undefined;
      }
      const found = words.find((word) => word === tree.text);
      if (found !== undefined) return found;
      const near = nearest(tree.text, words);
      reading.report({
        code: 'not-one-of',
        message: `\`${tree.text}\` is none of ${words.join(', ')}`,
        span: tree.span,
        hints: near === undefined ? [] : [`write \`${near}\``],
      });
      return undefined;
    },
  };
}

const yesWords = /^(yes|on|y|t|True|TRUE)$/i;
const noWords = /^(no|off|n|f|False|FALSE)$/i;

/** `true` or `false`, as YAML 1.2 has them: `yes`, `no`, `on` and `off` are words, and the hint says so. */
export const truth: Shape<boolean> = {
  expects: 'true or false',
  schema: { type: 'boolean' },
  read: (tree, reading) => {
    if (tree.kind !== 'text') {
      reportMisfit(tree, 'true or false', reading);
      return undefined;
    }
    if (/^(true|True|TRUE)$/.test(tree.text)) return true;
    if (/^(false|False|FALSE)$/.test(tree.text)) return false;
    const meant = yesWords.test(tree.text)
      ? 'true'
      : noWords.test(tree.text)
        ? 'false'
        : undefined;
    reportMisfit(
      tree,
      'true or false',
      reading,
      meant === undefined ? [] : [`write \`${meant}\``],
    );
  },
};
