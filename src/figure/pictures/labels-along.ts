import type { Drawing } from '../../drawing/index.ts';
import type { Box } from '../geometry/box.ts';
import { boxAt } from '../geometry/box.ts';
import type { Wish } from '../labels/settle-labels.ts';
import type { DistributedShape } from './distributed-shape.ts';

/** Between an intensity line and its label, points. */
const gap = 2.4;

/** Where along a uniform load its label is wanted, as parts of its length, best first. */
const alongUniform = [0.5, 0.42, 0.58, 0.34, 0.66, 0.25, 0.75, 0.15, 0.85, 0, 1];

/** The label of a uniform load: on its intensity line, in the middle if that is free. */
export function labelAlong(label: Drawing, shape: DistributedShape): Wish {
  const { from, to } = shape;
  const places = alongUniform.map((part) => from + (to - from) * part);
  return {
    label,
    candidates: [
      ...places.map((x) => boxOver(label, shape, x - label.width / 2)),
      boxBeside(label, shape, 'to'),
      boxBeside(label, shape, 'from'),
    ],
    anchors: places.map((x) => shape.outerAt(x)),
    outward: outwardAt(shape, (from + to) / 2),
  };
}

/** The label of one end of a varying load: flush with that end on the intensity line, or beside it. */
export function labelAtEnd(
  label: Drawing,
  shape: DistributedShape,
  end: 'from' | 'to',
): Wish {
  const x = shape[end];
  const inward = end === 'from' ? 1 : -1;
  const { width } = label;
  const flush = end === 'from' ? x - 1 : x - width + 1;
  const lefts = [
    flush,
    x - width / 2,
    flush + inward * 6,
    flush + inward * 12,
    flush - inward * (width - 3),
  ];
  const reach = Math.abs(shape.to - shape.from);
  const anchors = [0, 0.08, 0.16, 0.3].map((part) =>
    shape.outerAt(x + inward * reach * part),
  );
  return {
    label,
    candidates: [
      ...lefts.map((left) => boxOver(label, shape, left)),
      boxBeside(label, shape, end),
    ],
    anchors,
    outward: outwardAt(shape, x),
  };
}

/** The side of the member that a load stands on at a place. */
function outwardAt(shape: DistributedShape, x: number): 'up' | 'down' {
  return shape.outerAt(x).y < 0 ? 'up' : 'down';
}

/** A box that stands on the intensity line, its left edge given. */
function boxOver(label: Drawing, shape: DistributedShape, left: number): Box {
  const { from, to, outerAt } = shape;
  // An inclined load's intensity line lies beside its base: find it under the label.
  const slant = outerAt(from).x - from;
  const ys = [left, left + label.width, left + label.width / 2].map((x) => {
    const under = Math.min(Math.max(x - slant, from), to);
    return outerAt(under).y;
  });
  const isUp =
    outwardAt(shape, Math.min(Math.max(left + label.width / 2, from), to)) === 'up';
  const top = isUp ? Math.min(...ys) - gap - label.height : Math.max(...ys) + gap;
  return boxAt(left, top, label);
}

/** A box beside one end, at half height. */
function boxBeside(label: Drawing, shape: DistributedShape, end: 'from' | 'to'): Box {
  const outer = shape.outerAt(shape[end]);
  const base = shape.baseAt(shape[end]);
  const left =
    end === 'from'
      ? Math.min(outer.x, base.x) - gap - 1 - label.width
      : Math.max(outer.x, base.x) + gap + 1;
  return boxAt(left, (outer.y + base.y - label.height) / 2, label);
}
