/** A rectangle by its sides, in whatever coordinates it is said to be. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** The smallest rectangle around both; y grows downward. */
export function joinBoxes(one: Box | undefined, other: Box): Box {
  if (one === undefined) return other;
  return {
    left: Math.min(one.left, other.left),
    top: Math.min(one.top, other.top),
    right: Math.max(one.right, other.right),
    bottom: Math.max(one.bottom, other.bottom),
  };
}

/** The part that two rectangles share; undefined where they share none; y grows downward. */
export function overlap(one: Box, other: Box): Box | undefined {
  const left = Math.max(one.left, other.left);
  const top = Math.max(one.top, other.top);
  const right = Math.min(one.right, other.right);
  const bottom = Math.min(one.bottom, other.bottom);
  return left < right && top < bottom ? { left, top, right, bottom } : undefined;
}
