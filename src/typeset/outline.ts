import type { PathStep } from '../drawing/index.ts';
import { refuse } from './typeset-fault.ts';

/**
 * Reads SVG path data (SVG 2, §9.3) into steps. The commands that KaTeX uses are known: M, L, H,
 * V, C, S and Z, absolute and relative; another is refused. Where the data are malformed the
 * path ends before the error, as a browser's does (SVG 2, §9.5.4): KaTeX's tall floor brackets
 * say "MM319 …", and the second subpath, which only thickens the first, is never drawn.
 */
export function readOutline(data: string): readonly PathStep[] {
  const tokens = data.match(/[A-Za-z]|[-+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?/gi) ?? [];
  const state: State = { x: 0, y: 0, startX: 0, startY: 0, controlX: 0, controlY: 0 };
  const steps: PathStep[] = [];
  let at = 0;
  while (at < tokens.length) {
    const command = tokens[at] ?? '';
    const count = argumentCounts[command.toUpperCase()];
    if (count === undefined) return refuse(`the path command "${command}"`);
    at += 1;
    let letter = command;
    do {
      const numbers = tokens.slice(at, at + count).map(Number);
      if (numbers.length < count || numbers.some(Number.isNaN)) return steps;
      at += count;
      steps.push(advance(state, letter, numbers));
      // Numbers after those of a moveto are taken for linetos.
      if (letter === 'M') letter = 'L';
      if (letter === 'm') letter = 'l';
    } while (count > 0 && isNumber(tokens[at]));
  }
  return steps;
}

interface State {
  x: number;
  y: number;
  startX: number;
  startY: number;
  /** The second control point of the last curve, else the current point. */
  controlX: number;
  controlY: number;
}

const argumentCounts: Readonly<Record<string, number>> = {
  M: 2,
  L: 2,
  H: 1,
  V: 1,
  C: 6,
  S: 4,
  Z: 0,
};

function isNumber(token: string | undefined): boolean {
  return token !== undefined && !/[A-Za-z]/.test(token.charAt(0));
}

/** Carries out one command: moves the state on and gives the step in absolute numbers. */
function advance(state: State, letter: string, numbers: readonly number[]): PathStep {
  const isRelative = letter === letter.toLowerCase();
  const dx = isRelative ? state.x : 0;
  const dy = isRelative ? state.y : 0;
  switch (letter.toUpperCase()) {
    case 'H':
      return lineTo(state, (numbers[0] ?? 0) + dx, state.y);
    case 'V':
      return lineTo(state, state.x, (numbers[0] ?? 0) + dy);
    case 'Z':
      moveTo(state, state.startX, state.startY);
      return ['Z'];
    default:
      return toPoints(
        state,
        letter.toUpperCase(),
        numbers.map((number, index) => number + (index % 2 === 0 ? dx : dy)),
      );
  }
}

/** The commands whose numbers are points. */
function toPoints(state: State, letter: string, numbers: readonly number[]): PathStep {
  const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = numbers;
  if (letter === 'C') return curveTo(state, [a, b, c, d, e, f]);
  if (letter === 'S') {
    const mirrorX = 2 * state.x - state.controlX;
    const mirrorY = 2 * state.y - state.controlY;
    return curveTo(state, [mirrorX, mirrorY, a, b, c, d]);
  }
  if (letter === 'L') return lineTo(state, a, b);
  moveTo(state, a, b);
  state.startX = a;
  state.startY = b;
  return ['M', a, b];
}

function moveTo(state: State, x: number, y: number): void {
  state.x = x;
  state.y = y;
  state.controlX = x;
  state.controlY = y;
}

function lineTo(state: State, x: number, y: number): PathStep {
  moveTo(state, x, y);
  return ['L', x, y];
}

type Curve = readonly [number, number, number, number, number, number];

function curveTo(state: State, curve: Curve): PathStep {
  moveTo(state, curve[4], curve[5]);
  state.controlX = curve[2];
  state.controlY = curve[3];
  return ['C', ...curve];
}
