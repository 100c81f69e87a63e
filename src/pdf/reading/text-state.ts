/** Where text is shown, and how (ISO 32000-1, 8.3.4 and 9.3). */
export interface TextState {
  /** Follows an operator; `name` is its first operand where that is a name. */
  readonly follow: (
    operator: string,
    numbers: readonly number[],
    name: string | undefined,
  ) => void;
  readonly now: () => TextPlace;
}

/** The font in force, the size of its em in points, and where the next text begins, points from the page's bottom left. */
export interface TextPlace {
  readonly font: string;
  readonly size: number;
  readonly x: number;
  readonly y: number;
}

type Matrix = readonly [number, number, number, number, number, number];

type Followers = Readonly<
  Record<string, (numbers: readonly number[], name: string | undefined) => void>
>;

interface Saved {
  readonly matrix: Matrix;
  readonly font: string;
  readonly size: number;
}

const identity: Matrix = [1, 0, 0, 1, 0, 0];

/** The state at the start of a page. */
export function openTextState(): TextState {
  const saved: Saved[] = [];
  let now: Saved = { matrix: identity, font: '', size: 0 };
  let line: Matrix = identity;
  const followers: Followers = {
    q: () => saved.push(now),
    Q: () => {
      now = saved.pop() ?? now;
    },
    cm: (numbers) => {
      now = { ...now, matrix: multiply(asMatrix(numbers), now.matrix) };
    },
    Tf: ([, size = 0], name = '') => {
      now = { ...now, font: name, size };
    },
    BT: () => {
      line = identity;
    },
    Td: ([x = 0, y = 0]) => {
      line = multiply([1, 0, 0, 1, x, y], line);
    },
    Tm: (numbers) => {
      line = asMatrix(numbers);
    },
  };
  return {
    follow: (operator, numbers, name) => {
      if (Object.hasOwn(followers, operator)) followers[operator]?.(numbers, name);
    },
    now: () => {
      const [, , c, d, x, y] = multiply(line, now.matrix);
      return { font: now.font, size: now.size * Math.hypot(c, d), x, y };
    },
  };
}

function asMatrix([
  a = 1,
  b = 0,
  c = 0,
  d = 1,
  e = 0,
  f = 0,
]: readonly number[]): Matrix {
  return [a, b, c, d, e, f];
}

/** First one, then the other. */
function multiply(one: Matrix, other: Matrix): Matrix {
  const [a, b, c, d, e, f] = one;
  const [g, h, i, j, k, l] = other;
  return [
    a * g + b * i,
    a * h + b * j,
    c * g + d * i,
    c * h + d * j,
    e * g + f * i + k,
    e * h + f * j + l,
  ];
}
