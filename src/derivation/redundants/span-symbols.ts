import { type Symbol } from '../../equation/index.ts';
import type { SpanState } from '../../statics/index.ts';
import { endsOf, type SlopeSetting } from './slope-setting.ts';

/** Symbols of one span: `near` is the end spoken of. */
export interface SpanSymbols {
  readonly moment: (end: 0 | 1) => Symbol;
  readonly held: (end: 0 | 1, load?: string) => Symbol;
  readonly stiffness: (end: 0 | 1) => Symbol;
  readonly across: Symbol;
  readonly carried: (end: 0 | 1) => Symbol;
  readonly chord: Symbol;
  readonly turn: (end: 0 | 1) => Symbol;
  readonly flexibility: (which: 'aa' | 'bb' | 'ab') => Symbol;
  readonly force: (end: 0 | 1) => Symbol;
  readonly simpleForce: (end: 0 | 1) => Symbol;
  readonly length: Symbol;
}

/** The symbols of a span, from the names of its ends. */
export function spanSymbols(setting: SlopeSetting, span: SpanState): SpanSymbols {
  const [a, b] = endsOf(setting, span).map(({ point }) => point) as [string, string];
  const isShort = a.length === 1 && b.length === 1;
  const pair = (end: 0 | 1): string => {
    const [near, far] = end === 0 ? [a, b] : [b, a];
    return isShort ? `${near}${far}` : `${near},${far}`;
  };
  const at = (end: 0 | 1): string =>
    `end ${end === 0 ? a : b} of the span ${a} to ${b}`;
  const whole = `the span ${a} to ${b}`;
  return {
    moment: (end) => ({
      letter: 'M',
      subscript: pair(end),
      meaning: `moment on ${at(end)}, counterclockwise`,
    }),
    held: (end, load) => ({
      letter: 'F',
      subscript: load === undefined ? pair(end) : `${pair(end)},${load}`,
      meaning: `moment on ${at(end)} held fast${load === undefined ? '' : load === '0' ? ', the other end held too' : `, by load ${load}`}`,
    }),
    stiffness: (end) => ({
      letter: 'k',
      subscript: pair(end),
      meaning: `moment on ${at(end)} for its turn, as a share of E I`,
    }),
    across: {
      letter: 'c',
      subscript: pair(0),
      meaning: `moment on either end of ${whole} for a turn of the other, as a share of E I`,
    },
    carried: (end) => ({
      letter: 'r',
      subscript: pair(end),
      meaning: `share of a moment at the other end that arrives at ${at(end)}`,
    }),
    chord: {
      letter: 'ψ',
      subscript: pair(0),
      meaning: `turn of the chord of ${whole}`,
    },
    turn: (end) => ({
      letter: 'φ',
      subscript: pair(end),
      meaning: `turn of ${at(end)} under its loads, on simple supports`,
    }),
    flexibility: (which) => ({
      letter: 'f',
      subscript: `${which === 'bb' ? b : a}${which === 'aa' ? a : b}`,
      meaning: `turn of one end of ${whole} on simple supports for a unit moment at an end, times E I`,
    }),
    ...forceSymbols(pair, at),
    length: { letter: 'L', subscript: pair(0), meaning: `length of ${whole}` },
  };
}

/** Upward forces on the ends, with and without the end moments. */
function forceSymbols(
  pair: (end: 0 | 1) => string,
  at: (end: 0 | 1) => string,
): Pick<SpanSymbols, 'force' | 'simpleForce'> {
  return {
    force: (end) => ({
      letter: 'S',
      subscript: pair(end),
      meaning: `upward force on ${at(end)}`,
    }),
    simpleForce: (end) => ({
      letter: 'S',
      subscript: `${pair(end)},0`,
      meaning: `upward force on ${at(end)} on simple supports`,
    }),
  };
}
