/** How wide a column would like to be, and the least that it can be without breaking a word. */
export interface ColumnWish {
  readonly natural: number;
  readonly least: number;
}

/** What a cell over several columns asks of them together, the gaps between them taken off. */
export interface SpanWish extends ColumnWish {
  readonly from: number;
  readonly count: number;
}

/**
 * Shares a width out to columns. Where all fit as they would like, they get that. Else the widest
 * give way first, all to one common width, so that only they are wrapped and numbers stay on one
 * line; and where even the least widths do not fit, all shrink alike and words are broken.
 */
export function columnWidths(
  wishes: readonly ColumnWish[],
  room: number,
): readonly number[] {
  const natural = wishes.map((wish) => wish.natural);
  if (total(natural) <= room) return natural;
  const least = wishes.map((wish) => Math.min(wish.least, wish.natural));
  const needed = total(least);
  if (needed >= room) return least.map((width) => (width * room) / needed);
  const withCap = (cap: number): readonly number[] =>
    wishes.map((wish, index) =>
      Math.min(wish.natural, Math.max(least[index] ?? 0, cap)),
    );
  return withCap(findCap((cap) => total(withCap(cap)), room));
}

/** Spreads columns over a width: what is left over goes evenly after each but the last, which ends at the edge. */
export function spreadOut(widths: readonly number[], room: number): readonly number[] {
  const last = widths.length - 1;
  const share = last < 1 ? 0 : Math.max(0, room - total(widths)) / last;
  return widths.map((width, index) => (index < last ? width + share : width));
}

/** Widens columns evenly until a cell that spans several of them fits. */
export function widenForSpan(
  wishes: readonly ColumnWish[],
  span: SpanWish,
): readonly ColumnWish[] {
  const spanned = wishes.slice(span.from, span.from + span.count);
  const lack = (of: keyof ColumnWish): number =>
    Math.max(0, span[of] - total(spanned.map((wish) => wish[of]))) / spanned.length;
  const natural = lack('natural');
  const least = lack('least');
  return wishes.map((wish, index) =>
    index < span.from || index >= span.from + span.count
      ? wish
      : { natural: wish.natural + natural, least: wish.least + least },
  );
}

/** The greatest cap whose widths still fit; the widths grow with the cap. */
function findCap(widthAt: (cap: number) => number, room: number): number {
  let low = 0;
  let high = room;
  for (let round = 0; round < 50; round += 1) {
    const middle = (low + high) / 2;
    if (widthAt(middle) > room) high = middle;
    else low = middle;
  }
  return low;
}

function total(widths: readonly number[]): number {
  return widths.reduce((sum, width) => sum + width, 0);
}
