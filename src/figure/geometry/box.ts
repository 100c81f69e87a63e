/** An upright rectangle on the drawing, points, x to the right, y down: `top` is less than `bottom`. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** The box of a size with its top left corner at (left, top). */
export function boxAt(
  left: number,
  top: number,
  size: { readonly width: number; readonly height: number },
): Box {
  return { left, top, right: left + size.width, bottom: top + size.height };
}

/** True where two boxes come nearer than `gap` to each other; boxes that only touch do not overlap. */
export function overlaps(a: Box, b: Box, gap: number = 0): boolean {
  return (
    a.left < b.right + gap &&
    b.left < a.right + gap &&
    a.top < b.bottom + gap &&
    b.top < a.bottom + gap
  );
}

/** The box moved. */
export function moveBox(box: Box, dx: number, dy: number): Box {
  return {
    left: box.left + dx,
    top: box.top + dy,
    right: box.right + dx,
    bottom: box.bottom + dy,
  };
}

/** The box made larger by `by` on every side. */
export function growBox(box: Box, by: number): Box {
  return {
    left: box.left - by,
    top: box.top - by,
    right: box.right + by,
    bottom: box.bottom + by,
  };
}

/** The smallest box round all boxes; undefined where there is none. */
export function unionOf(boxes: readonly Box[]): Box | undefined {
  return boxes.reduce<Box | undefined>(
    (all, box) =>
      all === undefined
        ? box
        : {
            left: Math.min(all.left, box.left),
            top: Math.min(all.top, box.top),
            right: Math.max(all.right, box.right),
            bottom: Math.max(all.bottom, box.bottom),
          },
    undefined,
  );
}
