import { heightOfBands, neverBreak } from '../band.ts';
import type { Band, Piece } from '../band.ts';

/** A table's bands: those of its head first, then those of each row of its body. */
export interface TableBands {
  readonly bands: readonly Band[];
  /** How many bands the head has. */
  readonly head: number;
  /** How many bands each row of the body has, and whether it heads the rows that follow. */
  readonly rows: readonly { readonly bands: number; readonly headsRows: boolean }[];
}

// A table up to this share of a page is broken only where nothing else helps.
const smallShare = 0.35;
const withinSmallTable = 60;
const withinTable = 12;

/**
 * Says where a page may end in a table: not in its head, not with one row alone on either side, not
 * below a row that heads others.
 * On each further page the head is repeated.
 */
export function breakTable(
  { bands, head, rows }: TableBands,
  pageHeight: number,
): readonly Band[] {
  const isSmall = heightOfBands(bands) <= smallShare * pageHeight;
  const cost = isSmall ? withinSmallTable : withinTable;
  const repeats = bands.slice(0, head).map(asRepeat);
  const rowAt = startsOf(rows, head);
  return bands.map((band, index): Band => {
    if (index === 0) return band;
    if (index < head) return { ...band, breakBefore: neverBreak };
    const row = rowAt.get(index);
    const isHeld = row !== undefined && isHeldToRowAbove(rows, row);
    return { ...band, breakBefore: isHeld ? neverBreak : cost, repeats };
  });
}

function isHeldToRowAbove(rows: TableBands['rows'], row: number): boolean {
  const isLone = row <= 1 || row === rows.length - 1;
  return isLone || rows[row - 1]?.headsRows === true;
}

/** The number of the row that begins at a band. */
function startsOf(rows: TableBands['rows'], head: number): ReadonlyMap<number, number> {
  const starts = new Map<number, number>();
  let at = head;
  for (const [row, { bands }] of rows.entries()) {
    starts.set(at, row);
    at += bands;
  }
  return starts;
}

/** A band as it is repeated: its words are there for the eye, and no part of the text again. */
function asRepeat(band: Band): Band {
  const pieces = band.pieces.map((piece): Piece => {
    const marks = piece.marks.filter(({ kind }) => kind !== 'link');
    return { ...piece, of: 'layout', marks };
  });
  return { ...band, pieces };
}
