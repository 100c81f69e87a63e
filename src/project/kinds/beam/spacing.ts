import type { GivenQuantity } from '../../../units/index.ts';
import { quantityOf } from '../../shape/quantity.ts';
import { reportMisfit } from '../../shape/misfit.ts';
import type { Shape } from '../../shape/shape.ts';
import type { TextTree } from '../../yaml/tree.ts';

/** The distance from an axle to the next, or the least and the greatest that it may be. */
export interface Spacing {
  readonly least: GivenQuantity;
  readonly greatest: GivenQuantity;
}

const length = quantityOf('length', 'positive');
const expects = 'a length, or two with `to` between';

/** `14 ft`, or `14 ft to 30 ft`. */
export const spacing: Shape<Spacing> = {
  expects,
  schema: { type: 'string', description: `${expects}: 14 ft, 14 ft to 30 ft` },
  read: (tree, reading) => {
    if (tree.kind !== 'text') {
      reportMisfit(tree, expects, reading, ['write 14 ft, or 14 ft to 30 ft']);
      return undefined;
    }
    const parts = /^(.*\S)(\s+to\s+)(\S.*)$/.exec(tree.text);
    if (parts === null) {
      const only = length.read(tree, reading);
      return only && { least: only, greatest: only };
    }
    const [, from = '', between = '', to = ''] = parts;
    const least = length.read(partOf(tree, 0, from), reading);
    const after = from.length + between.length;
    const greatest = length.read(partOf(tree, after, to), reading);
    if (least === undefined || greatest === undefined) return undefined;
    if (greatest.si >= least.si) return { least, greatest };
    reading.report({
      code: 'spacing-backwards',
      message: `\`${from}\` is more than \`${to}\``,
      span: tree.span,
      hints: [`write \`${to} to ${from}\``],
    });
    return undefined;
  },
};

/** A part of a text as a text of its own, with its place in the file where nothing is escaped. */
function partOf(tree: TextTree, offset: number, text: string): TextTree {
  const isPlain = !tree.quoted && tree.span.end - tree.span.start === tree.text.length;
  if (!isPlain) return { ...tree, text };
  const start = tree.span.start + offset;
  return { ...tree, text, span: { ...tree.span, start, end: start + text.length } };
}
