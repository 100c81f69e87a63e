import type { Drawing } from '../../drawing/index.ts';
import type { FigureSetting } from '../figure-setting.ts';
import { boxAt } from '../geometry/box.ts';
import type { Box } from '../geometry/box.ts';
import type { Point } from '../geometry/point.ts';
import { closedPath } from '../ink/paths.ts';
import { aroundPoint } from '../labels/candidates.ts';
import type { Side } from '../labels/candidates.ts';
import type { Wish } from '../labels/settle-labels.ts';
import { setSmall } from '../labels/small-label.ts';
import type { PlotScale } from './curve-path.ts';
import type { LabelledValue } from './merge-key-values.ts';

/** How far a label may stand from its point: outside the curve farther than inside, where it breaks the hatch. */
const outsideGaps = [2.6, 4.5, 7, 10, 13].map((gap) => ({ x: 2.6, y: gap }));
const insideGaps = [2.6, 4.5, 7].map((gap) => ({ x: gap, y: gap }));

/** The label of a value: outside the curve at its peak or beside it, inside the hatch only where nothing else is free. */
export function wishForValue(
  value: LabelledValue,
  scale: PlotScale,
  setting: FigureSetting,
): Wish {
  const { key, from, to } = value;
  const y = scale.yOf(key.value);
  const label =
    key.isExtreme === true ? boxed(value, setting) : setSmall(key.label, setting);
  const outward = y > 0 ? 'down' : 'up';
  const middle = { x: (from + to) / 2, y };
  const level = to > from ? alongLevel(label, value, y) : [];
  const sides = sidesFor(value, y);
  return {
    label,
    candidates: [
      ...level,
      ...aroundPoint(middle, label, { sides: sides.outside, gaps: outsideGaps }),
      ...aroundPoint(middle, label, { sides: sides.inside, gaps: insideGaps }),
    ],
    anchors: [middle],
    outward,
  };
}

/** Over (or under) a level stretch, in its middle if that is free. */
function alongLevel(
  label: Drawing,
  { from, to }: LabelledValue,
  y: number,
): readonly Box[] {
  return [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8].map((part) => {
    const left = from + (to - from) * part - label.width / 2;
    return boxAt(left, y > 0 ? y + 2.6 : y - 2.6 - label.height, label);
  });
}

interface Sides {
  readonly outside: readonly Side[];
  readonly inside: readonly Side[];
}

/** The sides for a value above the base line, by the side of a jump that it belongs to. */
const sidesAbove: Readonly<Record<'left' | 'right' | 'both', Sides>> = {
  left: { outside: ['nw', 'n'], inside: ['w', 'sw', 'ne'] },
  right: { outside: ['ne', 'n'], inside: ['e', 'se', 'nw'] },
  both: { outside: ['n', 'ne', 'nw'], inside: ['e', 'w', 's', 'se', 'sw'] },
};

const turnedOver: Readonly<Partial<Record<Side, Side>>> = {
  n: 's',
  ne: 'se',
  nw: 'sw',
  s: 'n',
  se: 'ne',
  sw: 'nw',
};

function sidesFor({ key }: LabelledValue, y: number): Sides {
  const above = sidesAbove[key.side ?? 'both'];
  if (y <= 0) return above;
  const turn = (side: Side): Side => turnedOver[side] ?? side;
  return { outside: above.outside.map(turn), inside: above.inside.map(turn) };
}

/** Room between an extreme and its frame, points. */
const framePadding = 2;

/** An extreme: heavier, in the accent, in a thin frame, so that it stands out on a photocopy as well. */
function boxed({ key }: LabelledValue, setting: FigureSetting): Drawing {
  const { line, colour } = setting.theme;
  const look = { colour: colour.accent, heavy: true };
  const inner = setSmall(key.label, setting, look);
  const width = inner.width + 2 * framePadding;
  const height = inner.height + 2 * framePadding;
  const half = line.dimension / 2;
  const corners: readonly Point[] = [
    { x: half, y: half },
    { x: width - half, y: half },
    { x: width - half, y: height - half },
    { x: half, y: height - half },
  ];
  return {
    width,
    height,
    marks: [
      {
        kind: 'shape',
        path: closedPath(corners),
        stroke: { width: line.dimension, colour: colour.accent },
      },
      { kind: 'group', x: framePadding, y: framePadding, marks: inner.marks },
    ],
  };
}
