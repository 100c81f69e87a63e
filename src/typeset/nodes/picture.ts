import type { PathStep } from '../../drawing/index.ts';
import { clipOutline } from '../clip-outline.ts';
import type { Window } from '../clip-outline.ts';
import type { Fit, PathPiece, StrokePiece } from '../equation-node.ts';
import type { NodeSetter } from '../node-setter.ts';
import { readOutline } from '../outline.ts';

/** An outline drawn to measure, its lower edge on the baseline, cut off at its own edges. */
export const setPicture: NodeSetter<'picture'> = (node, own, { outlines }) => {
  const { scale, colour } = own;
  const fills = 'atLeast' in node.width;
  return {
    width: ('atLeast' in node.width ? node.width.atLeast : node.width.fixed) * scale,
    fills,
    place: (pen, x, y, width) => {
      if (colour === undefined) return;
      const room = { left: x, top: y - node.tall * scale, right: x + width, bottom: y };
      for (const piece of node.pieces) {
        if (piece.kind === 'stroke') {
          pen.shape(strokeIn(room, piece, scale), { fill: colour });
          continue;
        }
        const outline = outlines.get(piece.data, () => readOutline(piece.data));
        const window = partOf(room, piece);
        const { steps, mustClip } = clipOutline(fit(outline, piece, window), window);
        pen.shape(steps, mustClip ? { fill: colour, window } : { fill: colour });
      }
    },
  };
};

function partOf(room: Window, { from, share }: PathPiece): Window {
  const width = room.right - room.left;
  const left = room.left + from * width;
  return { ...room, left, right: left + share * width };
}

/** Moves and scales an outline from its view box into a window (SVG 2, §8.6). */
function fit(
  outline: readonly PathStep[],
  piece: PathPiece,
  window: Window,
): readonly PathStep[] {
  const width = window.right - window.left;
  const height = window.bottom - window.top;
  const { x: sx, y: sy } = scalesFor(piece, width, height);
  const left = window.left + (width - piece.viewWidth * sx) * sharesBefore[piece.fit].x;
  const top = window.top + (height - piece.viewHeight * sy) * sharesBefore[piece.fit].y;
  return outline.map((step): PathStep => {
    switch (step[0]) {
      case 'M':
      case 'L':
        return [step[0], left + step[1] * sx, top + step[2] * sy];
      case 'C': {
        const [, x1, y1, x2, y2, x3, y3] = step;
        return [
          'C',
          left + x1 * sx,
          top + y1 * sy,
          left + x2 * sx,
          top + y2 * sy,
          left + x3 * sx,
          top + y3 * sy,
        ];
      }
      case 'Z':
        return step;
    }
  });
}

/** How much of the room that is left over (or, negative, lacking) lies before the outline. */
const sharesBefore: Readonly<Record<Fit, { readonly x: number; readonly y: number }>> =
  {
    stretch: { x: 0, y: 0 },
    'meet-left': { x: 0, y: 0 },
    'meet-middle': { x: 0.5, y: 0.5 },
    'slice-left': { x: 0, y: 0 },
    'slice-middle': { x: 0.5, y: 0 },
    'slice-right': { x: 1, y: 0 },
  };

function scalesFor(
  { fit: how, viewWidth, viewHeight }: PathPiece,
  width: number,
  height: number,
): { readonly x: number; readonly y: number } {
  const x = width / viewWidth;
  const y = height / viewHeight;
  if (how === 'stretch') return { x, y };
  const isMeet = how === 'meet-left' || how === 'meet-middle';
  const both = isMeet ? Math.min(x, y) : Math.max(x, y);
  return { x: both, y: both };
}

/**
 * The part inside a room of a stroke from corner to corner: a band with its two ends cut off
 * square at the room's corners, six points in all.
 */
function strokeIn(
  room: Window,
  piece: StrokePiece,
  scale: number,
): readonly PathStep[] {
  const width = room.right - room.left;
  const height = room.bottom - room.top;
  const length = Math.hypot(width, height);
  // How far along the room's edges the band's borders meet them.
  const along = Math.min(width, (piece.thickness * scale * length) / (2 * height));
  const down = Math.min(height, (piece.thickness * scale * length) / (2 * width));
  const { left, top, right, bottom } = room;
  return piece.isRising
    ? [
        ['M', left, bottom],
        ['L', left, bottom - down],
        ['L', right - along, top],
        ['L', right, top],
        ['L', right, top + down],
        ['L', left + along, bottom],
        ['Z'],
      ]
    : [
        ['M', left, top],
        ['L', left + along, top],
        ['L', right, bottom - down],
        ['L', right, bottom],
        ['L', right - along, bottom],
        ['L', left, top + down],
        ['Z'],
      ];
}
