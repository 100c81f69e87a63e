/** Where stations of a member come to stand on the drawing: metres become points, to scale. */
export interface Stations {
  /** Ends of the scale, metres. */
  readonly start: number;
  readonly end: number;
  /** Where they stand, points. */
  readonly left: number;
  readonly right: number;
  readonly xOf: (station: number) => number;
}

/** Stations between two edges of the drawing. */
export function stationsBetween(
  { start, end }: { readonly start: number; readonly end: number },
  { left, right }: { readonly left: number; readonly right: number },
): Stations {
  const scale = end > start ? (right - left) / (end - start) : 0;
  return {
    start,
    end,
    left,
    right,
    xOf: (station) => left + (station - start) * scale,
  };
}

/** Two stations nearer than this on paper are one, points. */
const sameStation = 0.05;

/** True where two places on paper stand for one station. */
export function isSame(a: number, b: number): boolean {
  return Math.abs(a - b) < sameStation;
}
