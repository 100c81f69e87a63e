import type { Block, Inline } from '../../report/index.ts';
import type { Theme } from '../../theme/index.ts';
import { changeFirst } from '../band.ts';
import type { Frame } from '../band.ts';
import type { Column, SetBlock, Setting } from '../setting.ts';
import { setLines, textNode } from '../set-lines.ts';
import type { LineFit } from '../set-lines.ts';
import { bodyBase, smallBase, textBase } from '../text-look.ts';
import type { TextBase } from '../text-look.ts';
import { setNote, withNote } from './margin-note.ts';
import { textBands } from './text-bands.ts';

type Paragraph = Extract<Block, { kind: 'paragraph' }>;

interface Look {
  readonly base: TextBase;
  readonly align: LineFit['align'];
  readonly gap: number;
  /** Set in from the left, points. */
  readonly indent: number;
  /** A bar at the left edge. */
  readonly isBarred?: boolean;
}

function lookOf(style: Paragraph['style'], theme: Theme): Look {
  const { text, colour } = theme;
  const gap = text.paragraphGap;
  const small = smallBase(theme);
  switch (style) {
    case 'body':
      return { base: bodyBase(theme), align: 'justified', gap, indent: 0 };
    case 'small':
      return { base: small, align: 'justified', gap: gap * 0.8, indent: 0 };
    case 'lead': {
      const size = text.size * 1.14;
      const base = textBase(theme, { size, leading: text.leading * 1.14 });
      return { base, align: 'ragged', gap: gap * 1.4, indent: 0 };
    }
    case 'note': {
      const muted = { ...small, look: { ...small.look, colour: colour.muted } };
      return { base: muted, align: 'ragged', gap: gap * 0.8, indent: 0 };
    }
    case 'caution':
      return {
        base: bodyBase(theme),
        align: 'ragged',
        gap: gap * 1.4,
        indent: barIndent,
        isBarred: true,
      };
    case 'field':
      return { base: bodyBase(theme), align: 'ragged', gap: 1, indent: 0 };
    case 'title': {
      const size = text.h1 * 1.35;
      const face = 'text-semibold';
      const base = textBase(theme, { size, leading: size * 1.2, face });
      return { base, align: 'ragged', gap: text.h1 * 0.7, indent: 0 };
    }
  }
}

const barIndent = 10;

/** Sets a paragraph: justified in body text, ragged where it is short or stands apart. */
export function setParagraph(
  block: Paragraph,
  column: Column,
  setting: Setting,
): SetBlock {
  const { base, align, gap, indent, isBarred } = lookOf(block.style, setting.theme);
  const width = column.width - indent;
  const lines = setLines(block.content, base, { width, align }, setting);
  const node = textNode('P', lines);
  const room = { leading: base.leading, above: gap, below: gap, x: column.x + indent };
  const plain = textBands(lines, node, room);
  const bar: Frame = { kind: 'bar', x: column.x, width: indent };
  const bands = isBarred ? plain.map((band) => ({ ...band, frames: [bar] })) : plain;
  const isKept = block.keepWithNext === true || endsInColon(block.content);
  const keeps = isKept ? { keepsWithNext: true } : {};
  const baseline = bands[0]?.baseline ?? 0;
  const note = setNote(block.margin ?? [], baseline, column, setting);
  if (note === undefined) return { bands, nodes: [node], ...keeps };
  const noted = changeFirst(bands, (band) => withNote(band, note));
  return { bands: noted, nodes: [node, note.node], ...keeps };
}

/** A sentence that ends in a colon introduces what follows it, a table as well as an equation. */
function endsInColon(content: readonly Inline[]): boolean {
  const last = content.at(-1);
  return last?.kind === 'text' && /:\s*$/u.test(last.text);
}
