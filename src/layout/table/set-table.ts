import type { Theme } from '../../theme/index.ts';
import { setCaption } from '../blocks/caption.ts';
import { changeFirst, changeLast, heightOfBands, neverBreak } from '../band.ts';
import type { Band, Piece } from '../band.ts';
import { elementNode } from '../element-node.ts';
import type { ElementNode } from '../element-node.ts';
import { rule } from '../ruling.ts';
import type { Column, SetBlock, Setting } from '../setting.ts';
import { bodyBase, smallBase } from '../text-look.ts';
import type { TextBase } from '../text-look.ts';
import { measureGrid } from './table-grid.ts';
import type { Grid, GridLook, MeasuredRow, TableBlock } from './table-grid.ts';
import { setRow } from './table-row.ts';
import type { RowTags, SetRow } from './table-row.ts';

const gapAround = 8;
const captionGap = 4;
const heavyRule = 0.8;
// A table up to this share of a page is broken only where nothing else helps.
const smallShare = 0.35;
const withinSmallTable = 60;
const withinTable = 10;

/** Sets a table; its head is repeated on each page that it goes on to. */
export function setTable(
  block: TableBlock,
  column: Column,
  setting: Setting,
): SetBlock {
  const look = lookOf(block, setting.theme);
  const grid = measureGrid(block, column.width, look, setting);
  const isRuled = block.style === 'ruled';
  const padding = isRuled ? 2.2 : 0.8;
  const { x } = column;
  const cells = [...block.head, ...block.body].flatMap((row) => row.cells);
  const isHeadedByFirst = block.head.length === 0 && !cells.some((cell) => cell.isHead);
  const setRows = (
    rows: readonly MeasuredRow[],
    tags: RowTags,
  ): readonly (SetRow & { readonly bands: readonly Band[] })[] =>
    rows.map((measured) => {
      const row = setRow(measured, grid, { tags, x }, setting);
      const bands = rowBands(row, { padding, height: column.height });
      const needsRule = measured.row.isRuled === true;
      return {
        ...row,
        bands: needsRule ? ruledAbove(bands, { grid, x, setting }) : bands,
      };
    });
  const head = setRows(grid.head, { isHead: true, isHeadedByFirst: false });
  const body = setRows(grid.body, { isHead: false, isHeadedByFirst });
  const ruling: Ruling = { grid, x, setting };
  const headBands = head.flatMap(({ bands }) => bands);
  const bodyBands = body.map(({ bands }) => bands);
  const bands = isRuled
    ? joinRuled(headBands, bodyBands, ruling)
    : [...headBands, ...bodyBands.flat()];
  const withBreaks = breakPlaces(bands, {
    head: headBands.length,
    rows: bodyBands,
    height: column.height,
  });
  return withCaption(
    block,
    { bands: withBreaks, node: tableNode(head, body) },
    column,
    setting,
  );
}

function lookOf(block: TableBlock, theme: Theme): GridLook {
  const body = block.size === 'small' ? smallBase(theme) : bodyBase(theme);
  const figures = { ...body, look: { ...body.look, features: ['tnum'] as const } };
  const head: TextBase = {
    ...body,
    leading: body.leading * 0.94,
    look: { ...body.look, face: 'text-semibold', size: body.look.size * 0.94 },
  };
  return { head, body: figures, gap: block.size === 'small' ? 11 : 15 };
}

/** A row as one band, or as a band a line where it is so tall that a page might not hold it. */
function rowBands(
  { lines }: SetRow,
  { padding, height }: { readonly padding: number; readonly height: number },
): readonly Band[] {
  const whole = stackLines(lines, padding);
  if (whole.height <= height / 2) return [whole];
  return lines.map((line, index) =>
    stackLines([line], index === 0 || index === lines.length - 1 ? padding : 0),
  );
}

function stackLines(lines: SetRow['lines'], padding: number): Band {
  let y = padding;
  const pieces: Piece[] = [];
  for (const line of lines) {
    for (const piece of line.pieces) pieces.push({ ...piece, y: piece.y + y });
    y += line.height;
  }
  const baseline = padding + (lines[0]?.baseline ?? 0);
  return { height: y + padding, baseline, above: 0, below: 0, breakBefore: 0, pieces };
}

interface Ruling {
  readonly grid: Grid;
  readonly x: number;
  readonly setting: Setting;
}

/** A rule over a band's whole width, at its top (0) or foot (1). */
function withRule(
  band: Band,
  at: 0 | 1,
  { grid, x, setting }: Ruling,
  width?: number,
): Band {
  const from = { x: 0, y: 0, length: grid.width };
  const mark = rule(from, setting.theme, width);
  const piece: Piece = { of: 'layout', x, y: at * band.height, marks: [mark] };
  return { ...band, pieces: [piece, ...band.pieces] };
}

function ruledAbove(bands: readonly Band[], ruling: Ruling): readonly Band[] {
  return changeFirst(bands, (band) => withRule(band, 0, ruling));
}

/** Rules above the table, below its head and at its foot; the head repeats on further pages. */
function joinRuled(
  head: readonly Band[],
  rows: readonly (readonly Band[])[],
  ruling: Ruling,
): readonly Band[] {
  const ruledHead = changeLast(head, (band) => withRule(band, 1, ruling));
  const all = [...ruledHead, ...rows.flat()];
  const topped = changeFirst(all, (band) => withRule(band, 0, ruling, heavyRule));
  return changeLast(topped, (band) => withRule(band, 1, ruling, heavyRule));
}

interface TableExtent {
  readonly head: number;
  readonly rows: readonly (readonly Band[])[];
  readonly height: number;
}

/** Where a page may end in a table: not in its head, and not with one row alone on either side. */
function breakPlaces(
  bands: readonly Band[],
  { head, rows, height }: TableExtent,
): readonly Band[] {
  const isSmall = heightOfBands(bands) <= smallShare * height;
  const cost = isSmall ? withinSmallTable : withinTable;
  const repeats = bands.slice(0, head).map(asRepeat);
  const starts = new Map<number, number>();
  let at = head;
  for (const [index, row] of rows.entries()) {
    starts.set(at, index);
    at += row.length;
  }
  return bands.map((band, index): Band => {
    if (index === 0) return band;
    if (index < head) return { ...band, breakBefore: neverBreak };
    const row = starts.get(index);
    const isLone = row !== undefined && (row <= 1 || row === rows.length - 1);
    const breakBefore = isLone && rows.length > 1 ? neverBreak : cost;
    return { ...band, breakBefore: row === 0 ? neverBreak : breakBefore, repeats };
  });
}

/** A band as it is repeated: the words are there for the eye, and no part of the text again. */
function asRepeat(band: Band): Band {
  const pieces = band.pieces.map((piece): Piece => {
    const marks = piece.marks.filter(({ kind }) => kind !== 'link');
    return { ...piece, of: 'layout', marks };
  });
  return { ...band, pieces };
}

function tableNode(head: readonly SetRow[], body: readonly SetRow[]): ElementNode {
  const headRows = head.map(({ node }) => node);
  const bodyRows = body.map(({ node }) => node);
  // A head without a body is no head: ISO 32000-1, 14.8.4.3.4, wants a TBody with every THead.
  if (bodyRows.length === 0) return elementNode('Table', headRows);
  const tbody = elementNode('TBody', bodyRows);
  return headRows.length === 0
    ? elementNode('Table', [tbody])
    : elementNode('Table', [elementNode('THead', headRows), tbody]);
}

function withCaption(
  block: TableBlock,
  set: { readonly bands: readonly Band[]; readonly node: ElementNode },
  column: Column,
  setting: Setting,
): SetBlock {
  const spaced = changeLast(
    changeFirst(set.bands, (band) => ({ ...band, above: gapAround })),
    (band) => ({ ...band, below: gapAround }),
  );
  if (block.caption === undefined) return { bands: spaced, nodes: [set.node] };
  const room = { above: gapAround, below: captionGap };
  const caption = setCaption(block.caption, column, room, setting);
  const first = changeFirst(caption.bands, (band) => ({ ...band, breakBefore: 0 }));
  const rest = changeFirst(spaced, (band) => ({
    ...band,
    above: captionGap,
    breakBefore: neverBreak,
  }));
  const node = { ...set.node, children: [caption.node, ...set.node.children] };
  return { bands: [...first, ...rest], nodes: [node] };
}
