import type { Band, Piece } from '../band.ts';
import type { RowLine } from './table-row.ts';

/** Room above and below the lines of a row. */
export interface RowPadding {
  readonly above: number;
  readonly below: number;
}

// A row taller than this share of a page may be broken between its lines.
const wholeUpTo = 0.5;

/** A row as one band; as a band a line where it is so tall that a page could not hold it well. */
export function rowBands(
  lines: readonly RowLine[],
  padding: RowPadding,
  pageHeight: number,
): readonly Band[] {
  const whole = stackLines(lines, padding);
  if (whole.height <= wholeUpTo * pageHeight) return [whole];
  const last = lines.length - 1;
  return lines.map((line, index) =>
    stackLines([line], {
      above: index === 0 ? padding.above : 0,
      below: index === last ? padding.below : 0,
    }),
  );
}

function stackLines(lines: readonly RowLine[], padding: RowPadding): Band {
  let y = padding.above;
  const pieces: Piece[] = [];
  for (const line of lines) {
    for (const piece of line.pieces) pieces.push({ ...piece, y: piece.y + y });
    y += line.height;
  }
  return {
    height: y + padding.below,
    baseline: padding.above + (lines[0]?.baseline ?? 0),
    above: 0,
    below: 0,
    breakBefore: 0,
    pieces,
  };
}
