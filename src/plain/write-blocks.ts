import type { Block } from '../report/index.ts';
import { inlineText, withoutControls } from './inline-text.ts';
import { padBefore, textWidth } from './text-width.ts';
import { wrapText } from './wrap-text.ts';
import { writeEquation } from './write-equation.ts';
import { writeTable } from './write-table.ts';

type Of<K extends Block['kind']> = Extract<Block, { kind: K }>;

const equationIndent = 4;

/** Blocks as lines of text, a blank line between them except before an equation that its sentence introduces. */
export function writeBlocks(
  blocks: readonly Block[],
  width: number,
): readonly string[] {
  const lines: string[] = [];
  for (const block of blocks) {
    const written = writeBlock(block, width);
    if (written.length === 0) continue;
    const isHeld = block.kind === 'equation' && block.keepWithPrevious;
    if (lines.length > 0 && !isHeld) lines.push('');
    lines.push(...written);
  }
  return lines;
}

function writeBlock(block: Block, width: number): readonly string[] {
  switch (block.kind) {
    case 'heading':
      return writeHeading(block, width);
    case 'paragraph':
      return writeParagraph(block, width);
    case 'list':
      return writeList(block, width);
    case 'table':
      return [...writeCaption(block.caption, width), ...writeTable(block, width)];
    case 'equation':
      return indented(
        writeEquation(block.statement, width - equationIndent),
        ' '.repeat(equationIndent),
      );
    // A caption speaks of the drawing, which a terminal does not show.
    case 'figure':
      return wrapText(withoutControls(`Figure: ${block.figure.alternate}`), width);
    case 'image':
      return wrapText(withoutControls(`Picture: ${block.alternate}`), width);
    case 'listing':
      return writeListing(block, width);
    case 'space':
      return block.label === undefined
        ? []
        : wrapText(withoutControls(`( ${block.label} )`), width);
    case 'group':
      return writeGroup(block, width);
  }
}

const underlines: Readonly<Record<Of<'heading'>['level'], string>> = {
  1: '═',
  2: '─',
  3: '',
};

function writeHeading(
  { content, level }: Of<'heading'>,
  width: number,
): readonly string[] {
  const lines = wrapText(inlineText(content), width);
  const rule = underlines[level].repeat(Math.max(...lines.map(textWidth)));
  return rule === '' ? lines : [...lines, rule];
}

/** What stands in the sheet's margin follows in brackets. */
function writeParagraph(
  { content, style, margin }: Of<'paragraph'>,
  width: number,
): readonly string[] {
  const beside = margin === undefined ? '' : ` [${inlineText(margin)}]`;
  const text = inlineText(content) + beside;
  return style === 'caution' ? hanging('! ', text, width) : wrapText(text, width);
}

function hanging(mark: string, text: string, width: number): readonly string[] {
  return behind(mark, wrapText(text, width - textWidth(mark)));
}

/** Lines behind a mark that stands before the first. */
function behind(mark: string, lines: readonly string[]): readonly string[] {
  const blank = ' '.repeat(textWidth(mark));
  return lines.map((line, index) =>
    index === 0 ? mark + line : (blank + line).trimEnd(),
  );
}

function indented(lines: readonly string[], by: string): readonly string[] {
  return lines.map((line) => (by + line).trimEnd());
}

function writeList({ items, isOrdered }: Of<'list'>, width: number): readonly string[] {
  const digits = String(items.length).length;
  return items.flatMap((item, index) => {
    const mark = isOrdered ? `${padBefore(String(index + 1), digits)}. ` : '• ';
    return behind(mark, writeBlocks(item, width - textWidth(mark)));
  });
}

function writeCaption(
  caption: Of<'table'>['caption'],
  width: number,
): readonly string[] {
  return caption === undefined ? [] : wrapText(inlineText(caption), width);
}

function writeListing({ lines }: Of<'listing'>, width: number): readonly string[] {
  const digits = String(lines.length).length;
  return lines.flatMap((line, index) => {
    const mark = `${padBefore(String(index + 1), digits)}  `;
    // Blanks at the start of a line tell its depth, so they are no places to break at.
    const kept = withoutControls(line).replace(/^[ \t]+/u, (blank) =>
      '\u00a0'.repeat(blank.length),
    );
    return hanging(mark, kept, width);
  });
}

function writeGroup({ role, blocks }: Of<'group'>, width: number): readonly string[] {
  return role === 'box'
    ? writeBlocks(blocks, width - 2).map((line) => `│ ${line}`.trimEnd())
    : writeBlocks(blocks, width);
}
