import type { Drawing, Stroke } from '../../drawing/index.ts';
import { thinLine } from '../figure-setting.ts';
import type { BeamPicture } from '../figure-spec.ts';
import type { Box } from '../geometry/box.ts';
import { boxAt } from '../geometry/box.ts';
import { skyline } from '../geometry/skyline.ts';
import { stroked, together } from '../ink/part.ts';
import type { Part } from '../ink/part.ts';
import { brokenUpright } from '../ink/broken-line.ts';
import { linePath } from '../ink/paths.ts';
import type { Wish } from '../labels/settle-labels.ts';
import { settleLabels } from '../labels/settle-labels.ts';
import { openBoard } from '../board.ts';
import type { Board } from '../board.ts';
import type { Strip } from '../strip.ts';
import { beside } from '../strip.ts';
import type { PictureSetting } from './lay-picture.ts';
import { setSmall } from '../labels/small-label.ts';

type Chain = BeamPicture['dimensions'][number];

/** From what is above a chain to its line, half a tick, how far extension lines run past the line, from an object to its extension line; points. */
const chainGap = 13;
const tick = 2.3;
const overrun = 3;
const objectGap = 2.5;
/** A label keeps this far from the ends of its dimension; nearer, it is led out. */
const labelMargin = 3;
const labelGap = 1.8;

/**
 * The strip with dimension chains under it: thin lines with slanted ticks, extension lines from
 * what they measure, each label over the middle of its line or, where that is too short, led
 * out below.
 */
export function withDimensions(
  strip: Strip,
  chains: BeamPicture['dimensions'],
  setting: PictureSetting,
): Strip {
  const drawn = [...strip.labels, ...strip.obstacles];
  const board = openBoard(drawn);
  const feet: { readonly x: number; readonly y: number }[] = [];
  for (const [index, chain] of chains.entries()) {
    if (chain.length === 0) continue;
    const outer = chains.slice(index + 1).flatMap((each) => stationsOf(each, setting));
    const y = lineHeight(chain, board.taken(), setting);
    drawChain(board, { chain, y, outer }, setting);
    feet.push(...stationsOf(chain, setting).map((x) => ({ x, y })));
  }
  const dimensions = board.strip();
  const lines = extensionLines(feet, strip, { labels: dimensions.labels, setting });
  return beside(beside(strip, dimensions), {
    marks: lines.marks,
    labels: [],
    obstacles: lines.boxes,
  });
}

function stationsOf(chain: Chain, { stations }: PictureSetting): readonly number[] {
  return [...new Set(chain.flatMap(({ from, to }) => [from, to]))].map((station) =>
    stations.xOf(station),
  );
}

function lineHeight(
  chain: Chain,
  under: readonly Box[],
  setting: PictureSetting,
): number {
  const xs = stationsOf(chain, setting);
  const span = { left: Math.min(...xs) - 6, right: Math.max(...xs) + 6 };
  return skyline(under, span, { outward: 'down', none: 0 }) + chainGap;
}

interface PlacedChain {
  readonly chain: Chain;
  readonly y: number;
  /** Where extension lines of outer chains cross this one, x. */
  readonly outer: readonly number[];
}

function drawChain(board: Board, placed: PlacedChain, setting: PictureSetting): void {
  const { chain, y, outer } = placed;
  const { stations, theme } = setting;
  const line = thinLine(theme);
  for (const { from, to } of chain) {
    const ends = { left: stations.xOf(from), right: stations.xOf(to) };
    board.draw(stroked(linePath({ x: ends.left, y }, { x: ends.right, y }), line));
  }
  for (const x of stationsOf(chain, setting)) board.draw(tickAt(x, y, line));
  const wishes = chain.map(({ from, to, label }): Wish => {
    const set = setSmall(label, setting);
    return wishFor(
      set,
      { left: stations.xOf(from), right: stations.xOf(to), y },
      outer,
    );
  });
  settleLabels(board, wishes, { ...setting.bounds, leader: line });
}

function tickAt(x: number, y: number, line: Stroke): Part {
  return stroked(linePath({ x: x - tick, y: y + tick }, { x: x + tick, y: y - tick }), {
    ...line,
    width: line.width * 1.8,
  });
}

/** A label over the middle of its line, or as near to it as outer extension lines let it. */
function wishFor(
  label: Drawing,
  {
    left,
    right,
    y,
  }: { readonly left: number; readonly right: number; readonly y: number },
  outer: readonly number[],
): Wish {
  const middle = (left + right) / 2;
  const inner = outer.filter((x) => x > left + 0.1 && x < right - 0.1);
  const centres = [
    middle,
    ...inner.flatMap((x) => [-1, 1].map((side) => x + side * (label.width / 2 + 3))),
  ];
  const candidates = centres
    .map((x) => boxAt(x - label.width / 2, y - labelGap - label.height, label))
    .filter((box) => box.left >= left + labelMargin && box.right <= right - labelMargin)
    .filter((box) => !inner.some((x) => x > box.left - 2 && x < box.right + 2))
    .sort(
      (a, b) =>
        Math.abs(a.left + a.right - 2 * middle) -
        Math.abs(b.left + b.right - 2 * middle),
    );
  return { label, candidates, anchors: [{ x: middle, y: y + 0.4 }], outward: 'down' };
}

/** One line a station, from what is drawn there down to the farthest chain that it measures, broken at labels. */
function extensionLines(
  feet: readonly { readonly x: number; readonly y: number }[],
  strip: Strip,
  {
    labels,
    setting,
  }: { readonly labels: readonly Box[]; readonly setting: PictureSetting },
): Part {
  const drawn = [...strip.labels, ...strip.obstacles];
  const stations = [...new Set(feet.map(({ x }) => x))];
  const lines = stations.map((x) => {
    const ends = feet.filter((foot) => foot.x === x).map(({ y }) => y);
    const span = { left: x - 1, right: x + 1 };
    const top = skyline(drawn, span, { outward: 'down', none: 0 }) + objectGap;
    const bottom = Math.max(...ends) + overrun;
    return brokenUpright(
      x,
      { top, bottom },
      { gaps: labels, stroke: thinLine(setting.theme) },
    );
  });
  return together(...lines);
}
