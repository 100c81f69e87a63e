import type { AnchorMark, GroupMark, Mark } from '../drawing/index.ts';
import type { Theme } from '../theme/index.ts';
import type { Band, Frame, MarginNote, Piece } from './band.ts';
import type { ElementNode } from './element-node.ts';
import type { PlacedBand } from './place-bands.ts';
import type { Sheet } from './paper.ts';
import { rectanglePath } from './ruling.ts';

/** What placing a page's bands on paper needs to know. */
export interface PagePlace {
  readonly sheet: Sheet;
  readonly theme: Theme;
  readonly idOf: ReadonlyMap<ElementNode, number>;
}

const boxRule = 0.7;
const barRule = 1.6;
const noteGap = 3;

/**
 * The marks of a page's text in reading order, each in a group of its element; groups of
 * elements never stand inside each other. Frames come first, behind the text.
 */
export function placePage(
  placed: readonly PlacedBand[],
  place: PagePlace,
): readonly GroupMark[] {
  const { sheet } = place;
  const notes = placeNotes(placed, sheet.column.height);
  return [
    ...frameMarks(placed, place),
    ...placed.flatMap(({ band, y }) => [
      ...bandMarks(band, y, place),
      ...(band.notes ?? []).flatMap((note) =>
        note.pieces.map((piece) => pieceMark(piece, notes.get(note) ?? y, place)),
      ),
    ]),
  ];
}

function bandMarks(band: Band, y: number, place: PagePlace): readonly GroupMark[] {
  const groups = band.pieces.map((piece) => pieceMark(piece, y, place));
  const names = band.anchors ?? [];
  if (names.length === 0) return groups;
  const [first, ...others] = groups;
  const at = place.sheet.top + y;
  const anchors = (from: number): readonly AnchorMark[] =>
    names.map((name) => ({ kind: 'anchor', y: at - from, name }));
  // Anchors belong to the first of the band's marks; of a band without marks they stand alone.
  if (first === undefined)
    return [{ kind: 'group', x: 0, y: 0, marks: anchors(0), artifact: 'layout' }];
  return [{ ...first, marks: [...anchors(first.y), ...first.marks] }, ...others];
}

function pieceMark(piece: Piece, y: number, { sheet, idOf }: PagePlace): GroupMark {
  const at = { x: sheet.left + piece.x, y: sheet.top + y + piece.y };
  const group = { kind: 'group', ...at, marks: piece.marks } as const;
  if (piece.of === 'layout') return { ...group, artifact: 'layout' };
  const element = idOf.get(piece.of);
  if (element === undefined) throw new Error(`A ${piece.of.type} stands in no tree.`);
  return { ...group, element };
}

/**
 * Notes stand beside their bands, or lower where the note above is still in the way; where they
 * would then leave the foot of the page they move up again.
 */
function placeNotes(
  placed: readonly PlacedBand[],
  height: number,
): ReadonlyMap<MarginNote, number> {
  const wishes = placed.flatMap(({ band, y }) =>
    (band.notes ?? []).map((note) => ({ note, y: y + note.y })),
  );
  let free = 0;
  const down = wishes.map(({ note, y }) => {
    const top = Math.max(y, free);
    free = top + note.height + noteGap;
    return { note, top };
  });
  let limit = height;
  const places = new Map<MarginNote, number>();
  for (const { note, top } of down.reverse()) {
    const at = Math.min(top, limit - note.height);
    places.set(note, at);
    limit = at - noteGap;
  }
  return places;
}

interface Extent {
  top: number;
  foot: number;
}

function frameMarks(
  placed: readonly PlacedBand[],
  { sheet, theme }: PagePlace,
): readonly GroupMark[] {
  const extents = new Map<Frame, Extent>();
  for (const [index, { band, y }] of placed.entries()) {
    const isLast = index === placed.length - 1;
    const foot = y + band.height + (isLast ? (band.closing ?? 0) : 0);
    for (const frame of band.frames ?? []) {
      const extent = extents.get(frame);
      if (extent === undefined) extents.set(frame, { top: y, foot });
      else extent.foot = foot;
    }
  }
  return [...extents].map(([frame, extent]) => ({
    kind: 'group',
    x: sheet.left,
    y: sheet.top,
    artifact: 'layout',
    marks: [frameMark(frame, extent, theme)],
  }));
}

function frameMark(frame: Frame, { top, foot }: Extent, theme: Theme): Mark {
  const { x, width } = frame;
  const { ink, accent } = theme.colour;
  switch (frame.kind) {
    case 'box': {
      const path = rectanglePath({ x, y: top, width, height: foot - top });
      return { kind: 'shape', path, stroke: { width: boxRule, colour: ink } };
    }
    case 'bar': {
      const at = x + barRule / 2;
      const path = [
        ['M', at, top],
        ['L', at, foot],
      ] as const;
      return { kind: 'shape', path, stroke: { width: barRule, colour: accent } };
    }
  }
}
