import { lineToLinear, lineToSpeech, lineToTex } from '../../equation/index.ts';
import type { StatementLine } from '../../equation/index.ts';
import { scaleDrawing } from '../../drawing/index.ts';
import type { Drawing, Mark } from '../../drawing/index.ts';
import type { Block } from '../../report/index.ts';
import { heightOfBands, neverBreak } from '../band.ts';
import type { Band } from '../band.ts';
import { elementNode } from '../element-node.ts';
import type { ElementNode } from '../element-node.ts';
import type { Column, SetBlock, Setting } from '../setting.ts';
import { placeLine, setLines } from '../set-lines.ts';
import { bodyBase } from '../text-look.ts';
import { tryTypeset } from '../../typeset/index.ts';
import { plainEquation } from '../remarks.ts';
import { setNote, withNote } from './margin-note.ts';

type Equation = Extract<Block, { kind: 'equation' }>;

const indent = 18;
const lineGap = 5.5;
// A stack longer than this share of a page may be broken between its lines.
const wholeUpTo = 0.5;
const withinStack = 12;

/**
 * Sets the lines of a statement under each other, aligned on their relations. No line is ever
 * split over pages, and a stack of up to half a page stays whole.
 */
export function setEquation(
  block: Equation,
  column: Column,
  setting: Setting,
): SetBlock {
  const { lines } = block.statement;
  if (lines.length === 0) return { bands: [], nodes: [] };
  const gap = setting.theme.text.equationGap;
  const set = drawLines(lines, column, setting).map((drawing, index) =>
    setStatementLine(drawing, lines[index], column, setting),
  );
  const bands = set.map(({ band }, index) => ({
    ...band,
    above: index === 0 ? gap : lineGap,
    below: index === set.length - 1 ? gap : lineGap,
  }));
  const isWhole = heightOfBands(bands) <= wholeUpTo * column.height;
  const inner = isWhole ? neverBreak : withinStack;
  return {
    bands: bands.map((band, index) => ({
      ...band,
      breakBefore: index > 0 ? inner : block.keepWithPrevious ? neverBreak : 0,
    })),
    nodes: set.flatMap(({ nodes }) => nodes),
  };
}

/** The lines as drawings on one alignment; one too wide for the column is made smaller. */
function drawLines(
  lines: readonly StatementLine[],
  column: Column,
  setting: Setting,
): readonly Drawing[] {
  const { theme, typesetter } = setting;
  const width = column.width - indent;
  const asTex = lines.map((line) => ({
    ...lineToTex(line),
    actualText: lineToLinear(line),
  }));
  const size = theme.text.equation;
  const { ink: colour } = theme.colour;
  const written = asTex.map(({ left, right, actualText }) => {
    return { tex: `${left} ${right}`, linear: actualText };
  });
  const aligned = tryTypeset(written, () =>
    typesetter.typesetAligned(asTex, { size, colour, width }),
  );
  if (aligned === undefined)
    return lines.map((line) => drawPlain(line, width, setting));
  const widest = Math.max(width, ...aligned.lines.map((drawing) => drawing.width));
  return widest <= width
    ? aligned.lines
    : aligned.lines.map((drawing) => scaleDrawing(drawing, width / widest));
}

/** A line that cannot be typeset, as its linear text. */
function drawPlain(line: StatementLine, width: number, setting: Setting): Drawing {
  const text = lineToLinear(line);
  setting.remark(plainEquation(text));
  const base = bodyBase(setting.theme);
  const content = [{ kind: 'text', text, style: 'plain' }] as const;
  const lines = setLines(content, base, { width, align: 'ragged' }, setting);
  let height = 0;
  const marks = lines.flatMap((set): readonly Mark[] => {
    const placed = placeLine(set, base.leading, { own: 'layout' });
    const y = height;
    height += placed.height;
    return placed.pieces.map((piece) => ({
      kind: 'group',
      x: 0,
      y: y + piece.y,
      marks: piece.marks,
    }));
  });
  return { width, height, baseline: base.leading * 0.72, marks };
}

interface SetStatementLine {
  readonly band: Band;
  readonly nodes: readonly ElementNode[];
}

function setStatementLine(
  drawing: Drawing,
  line: StatementLine | undefined,
  column: Column,
  setting: Setting,
): SetStatementLine {
  const alternate = line === undefined ? '' : lineToSpeech(line);
  const node = elementNode('Formula', [], { alternate });
  const baseline = drawing.baseline ?? drawing.height;
  const band: Band = {
    height: drawing.height,
    baseline,
    above: 0,
    below: 0,
    breakBefore: 0,
    pieces: [{ of: node, x: column.x + indent, y: 0, marks: drawing.marks }],
  };
  const text = line?.margin;
  if (text === undefined) return { band, nodes: [node] };
  const content = [{ kind: 'text', text, style: 'plain' }] as const;
  // A number stands beside the last row of a line that is broken.
  const note = setNote(content, drawing.lastBaseline ?? baseline, column, setting);
  return note === undefined
    ? { band, nodes: [node] }
    : { band: withNote(band, note), nodes: [node, note.node] };
}
