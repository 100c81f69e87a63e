import type { Drawing } from '../../drawing/index.ts';
import { thinLine } from '../figure-setting.ts';
import type { Box } from '../geometry/box.ts';
import { boxAt } from '../geometry/box.ts';
import type { ArrowStyle } from '../ink/arrow.ts';
import { arrow } from '../ink/arrow.ts';
import type { Part } from '../ink/part.ts';
import { nothing, stroked, together } from '../ink/part.ts';
import { linePath } from '../ink/paths.ts';
import { aroundPoint } from '../labels/candidates.ts';
import type { Wish } from '../labels/settle-labels.ts';
import type { ForcePose } from './force-poses.ts';
import type { StripSetting } from './strip-setting.ts';

/** A pose as it is drawn. */
export function drawPose(
  { tail, tip, post }: ForcePose,
  style: ArrowStyle,
  setting: StripSetting,
): Part {
  const foot =
    post === undefined
      ? nothing
      : stroked(linePath(post[0], post[1]), {
          ...thinLine(setting.theme),
          width: style.weight,
          colour: style.colour,
        });
  return together(arrow(tail, tip, style), foot);
}

/** Between an arrow and its label, points. */
const gap = 3;

/**
 * Where the label of an arrow may stand: beyond the end that lies away from the member, in a rank
 * with others; an axial arrow's label stands over it. `beside` lets the label stand beside the
 * shaft, so that its foot stays free for an extension line.
 */
export function wishForArrow(
  label: Drawing,
  pose: ForcePose,
  { beside }: { readonly beside: boolean },
): Wish {
  const outer = Math.abs(pose.tail.y) > Math.abs(pose.tip.y) ? pose.tail : pose.tip;
  switch (pose.lies) {
    case 'above':
    case 'below': {
      const outward = pose.lies === 'above' ? 'up' : 'down';
      const isLevel =
        Math.abs(pose.tail.y - pose.tip.y) < 0.3 * Math.abs(pose.tail.x - pose.tip.x);
      const candidates = isLevel
        ? overShaft(label, pose)
        : beside
          ? besideShaft(label, pose)
          : [];
      return { label, candidates, anchors: [outer], outward };
    }
    case 'outside':
      return {
        label,
        candidates: overShaft(label, pose),
        anchors: [{ x: (pose.tail.x + pose.tip.x) / 2, y: -3 }],
        outward: 'up',
      };
  }
}

/** Over and under an arrow that lies level, in its middle, flush with either end, or beyond it. */
function overShaft(label: Drawing, { tail, tip, lies }: ForcePose): readonly Box[] {
  const [left, right] = [Math.min(tail.x, tip.x), Math.max(tail.x, tip.x)];
  const middle = { x: (left + right) / 2, y: (tail.y + tip.y) / 2 };
  const lefts = [middle.x - label.width / 2, left, right - label.width];
  const over = lefts.map((x) => boxAt(x, middle.y - gap - 1.4 - label.height, label));
  const under = lefts.map((x) => boxAt(x, middle.y + gap + 1.4, label));
  const beyond = [right + gap, left - gap - label.width].map((x) =>
    boxAt(x, middle.y - label.height / 2, label),
  );
  return lies === 'below'
    ? [...under, ...beyond, ...over]
    : [...over, ...beyond, ...under];
}

/** Beside the outer part of a shaft, to its right and left; then beyond its end. */
function besideShaft(label: Drawing, { tail, tip, lies }: ForcePose): readonly Box[] {
  const outer = Math.abs(tail.y) > Math.abs(tip.y) ? tail : tip;
  const inner = outer === tail ? tip : tail;
  const at = (part: number): { readonly x: number; readonly y: number } => ({
    x: outer.x + (inner.x - outer.x) * part,
    y: outer.y + (inner.y - outer.y) * part,
  });
  const lean = Math.abs(inner.x - outer.x) * 0.2;
  const sides = [0.22, 0.4, 0.1].flatMap((part) =>
    aroundPoint(at(part), label, {
      sides: ['e', 'w'],
      gaps: [{ x: gap + 0.6 + lean, y: 0 }],
    }),
  );
  const beyond = aroundPoint(outer, label, {
    sides: lies === 'above' ? ['n'] : ['s'],
    gaps: [{ x: 0, y: gap }],
  });
  return [...sides, ...beyond];
}
