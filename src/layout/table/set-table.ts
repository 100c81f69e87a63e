import type { Theme } from '../../theme/index.ts';
import { barred, changeFirst, changeLast, neverBreak } from '../band.ts';
import type { Band } from '../band.ts';
import { setCaption } from '../blocks/caption.ts';
import { elementNode } from '../element-node.ts';
import type { ElementNode } from '../element-node.ts';
import type { Column, SetBlock, Setting } from '../setting.ts';
import { bodyBase, smallBase } from '../text-look.ts';
import type { TextBase } from '../text-look.ts';
import { rowBands } from './row-bands.ts';
import { breakTable } from './table-breaks.ts';
import { measureGrid } from './table-grid.ts';
import type { GridLook, MeasuredRow, TableBlock } from './table-grid.ts';
import { setRow } from './table-row.ts';
import type { RowTags, SetRow } from './table-row.ts';
import { ruleAbove, ruleTable } from './table-rules.ts';

const gapAround = 9;
const captionGap = 4;
const headShare = 0.94;

/** Sets a table; its head is repeated on each page that it goes on to. */
export function setTable(
  block: TableBlock,
  column: Column,
  setting: Setting,
): SetBlock {
  const look = lookOf(block, setting.theme);
  const grid = measureGrid(block, column.width, look, setting);
  const { x, height } = column;
  const ruling = { x, width: grid.width, theme: setting.theme };
  const setRows = (rows: readonly MeasuredRow[], tags: RowTags): readonly BandedRow[] =>
    rows.map((measured, index) => {
      const row = setRow(measured, grid, { tags, x }, setting);
      const padding = paddingOf(block, { tags, index, count: rows.length });
      const { isRuled, isChanged } = measured.row;
      const plain = rowBands(row.lines, padding, height);
      const bands = isChanged === true ? barred(plain) : plain;
      return { ...row, bands: isRuled === true ? ruleAbove(bands, ruling) : bands };
    });
  const hasHead = [...block.head, ...block.body].some(({ cells }) =>
    cells.some(({ isHead }) => isHead),
  );
  const head = setRows(grid.head, { isHead: true, isHeadedByFirst: false });
  const body = setRows(grid.body, { isHead: false, isHeadedByFirst: !hasHead });
  const headBands = head.flatMap(({ bands }) => bands);
  const bodyBands = body.flatMap(({ bands }) => bands);
  const bands =
    block.style === 'ruled'
      ? ruleTable(headBands, bodyBands, ruling)
      : [...headBands, ...bodyBands];
  const rows = body.map((row, index) => ({
    bands: row.bands.length,
    headsRows: block.body[index]?.headsRows === true,
  }));
  const broken = breakTable({ bands, head: headBands.length, rows }, height);
  const set = { bands: broken, node: tableNode(head, body) };
  return withCaption(block, set, column, setting);
}

interface BandedRow extends SetRow {
  readonly bands: readonly Band[];
}

function lookOf(block: TableBlock, theme: Theme): GridLook {
  const plain = block.size === 'small' ? smallBase(theme) : bodyBase(theme);
  const look = { ...plain.look, features: ['tnum'] as const };
  const body: TextBase = { ...plain, look };
  const size = look.size * headShare;
  const head: TextBase = { ...body, look: { ...look, face: 'text-semibold', size } };
  return { head, body, gap: block.size === 'small' ? 11 : 15 };
}

interface RowOf {
  readonly tags: RowTags;
  readonly index: number;
  readonly count: number;
}

/** Rows of a ruled table have a little air; the rows of a head (its units) stand close together. */
function paddingOf(
  { style }: TableBlock,
  { tags, index, count }: RowOf,
): { readonly above: number; readonly below: number } {
  const own = style === 'ruled' ? 2.2 : 0.8;
  const isInner = (isAtEdge: boolean): boolean => tags.isHead && !isAtEdge;
  return {
    above: isInner(index === 0) ? 0 : own,
    below: isInner(index === count - 1) ? 0 : own,
  };
}

function tableNode(head: readonly SetRow[], body: readonly SetRow[]): ElementNode {
  const headRows = head.map(({ node }) => node);
  const bodyRows = body.map(({ node }) => node);
  // A THead wants a TBody beside it; a table of heads alone has plain rows.
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
