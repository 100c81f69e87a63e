import type { Theme } from '../../theme/index.ts';
import { changeFirst, changeLast } from '../band.ts';
import type { Band, Piece } from '../band.ts';
import { rule } from '../ruling.ts';

/** Where the rules of a table run, and how they look. */
export interface Ruling {
  readonly x: number;
  readonly width: number;
  readonly theme: Theme;
}

// The first and the last rule of a table, and a row that is set off, against the theme's plain rule.
const heavyShare = 1.6;

/** A row set off by a rule above: totals, groups. */
export function ruleAbove(bands: readonly Band[], ruling: Ruling): readonly Band[] {
  return changeFirst(bands, (band) => withRule(band, 'top', ruling));
}

/** The rules of a table: above its head, below its head, at its foot, and no others. */
export function ruleTable(
  head: readonly Band[],
  body: readonly Band[],
  ruling: Ruling,
): readonly Band[] {
  const heavy = { ...ruling, share: heavyShare };
  const ruledHead = changeLast(head, (band) => withRule(band, 'foot', ruling));
  const all = [...ruledHead, ...body];
  const topped = changeFirst(all, (band) => withRule(band, 'top', heavy));
  return changeLast(topped, (band) => withRule(band, 'foot', heavy));
}

function withRule(
  band: Band,
  at: 'top' | 'foot',
  { x, width, theme, share = 1 }: Ruling & { readonly share?: number },
): Band {
  const mark = rule({ x: 0, y: 0, length: width }, theme, theme.line.rule * share);
  const y = at === 'top' ? 0 : band.height;
  const piece: Piece = { of: 'layout', x, y, marks: [mark] };
  return { ...band, pieces: [piece, ...band.pieces] };
}
