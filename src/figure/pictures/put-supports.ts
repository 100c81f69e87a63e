import type { PictureSupport } from '../figure-spec.ts';
import type { Part } from '../ink/part.ts';
import { stroked, together } from '../ink/part.ts';
import { linePath } from '../ink/paths.ts';
import { supportSymbol } from '../symbols/support-symbol.ts';
import type { SupportPlace } from '../symbols/support-symbol.ts';
import type { Board } from '../board.ts';
import { isSame } from './stations.ts';
import type { StripSetting } from './strip-setting.ts';

/** Supports nearer than this stand in each other's way at full size, points. */
const fullRoom = 21;
/** How much smaller a crowded support may be drawn. */
const scales = [0.6, 0.45];
/** How much lower a support stands, on a stem, where even a small symbol has no room. */
const stems = [0, 16, 32, 48, 64];

/** Draws the supports of a member, smaller and on stems of different length where they crowd. */
export function putSupports(
  board: Board,
  supports: readonly PictureSupport[],
  setting: StripSetting,
): void {
  for (const support of supports) {
    const choices = scalesFor(support, supports, setting).flatMap((scale) =>
      stems.map((stem) => ({ scale, stem })),
    );
    const parts = choices.map((choice) => drawSupport(support, choice, setting));
    const part = parts.find((each) => board.hasRoomFor(each)) ?? parts[0];
    if (part !== undefined) board.draw(part);
  }
}

function scalesFor(
  support: PictureSupport,
  supports: readonly PictureSupport[],
  { stations }: StripSetting,
): readonly number[] {
  const x = stations.xOf(support.x);
  const distances = supports
    .filter((other) => other !== support)
    .map((other) => Math.abs(stations.xOf(other.x) - x));
  const nearest = Math.min(...distances) / fullRoom;
  if (nearest >= 1) return [1];
  return nearest > 0.6 ? [nearest, ...scales] : scales;
}

function drawSupport(
  support: PictureSupport,
  { scale, stem }: { readonly scale: number; readonly stem: number },
  { stations, ends, theme }: StripSetting,
): Part {
  const x = stations.xOf(support.x);
  const place: SupportPlace = isSame(x, ends.left)
    ? 'left-end'
    : isSame(x, ends.right)
      ? 'right-end'
      : 'inside';
  const colour = theme.colour.ink;
  const symbol = supportSymbol(support, {
    point: { x, y: stem },
    place,
    colour,
    scale,
  });
  if (stem === 0) return symbol;
  const line = linePath({ x, y: 0 }, { x, y: stem });
  return together(stroked(line, { width: 0.8, colour }), symbol);
}
