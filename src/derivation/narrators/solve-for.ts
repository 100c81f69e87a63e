import {
  cancelUnits,
  name,
  product,
  quotient,
  sum,
  type Expression,
  type Figure,
  type Statement,
  type StatementLine,
  type Symbol,
} from '../../equation/index.ts';
import type { Entry } from '../entries.ts';

/** What solving one sum for its one unknown needs. */
export interface Solving {
  readonly symbol: Symbol;
  readonly entries: readonly Entry[];
  /** The unknown's value, printed. */
  readonly result: Figure;
  /** Sum of the known terms taken to the other side and divided by nothing yet, printed: `50.4 kip·ft`. */
  readonly numerator: (si: number) => Figure;
}

/**
 * The lines that bring the unknown of a sum out: known terms to the other side, divided by the
 * unknown's factor, units struck through where they cancel, the value boxed.
 *
 *     R_C = 8.4 kip (6 ft) / 21 ft   =   2.400 kip
 */
export function solveFor(solving: Solving): Statement {
  const { symbol, entries, result } = solving;
  const unknown = entries.find(
    (entry) => entry.unknown !== undefined && entry.worth !== 0,
  );
  if (unknown === undefined) throw new RangeError('the sum holds no unknown');
  const others = entries.filter((entry) => entry !== unknown && entry.worth !== 0);
  const left = name(symbol);
  const boxed: StatementLine = { chain: [{ sign: '=', of: result }], boxed: true };
  if (others.length === 0) return { lines: [{ ...boxed, left }] };
  // Moving a term across turns its sign; so does a negative factor of the unknown.
  const turn = unknown.sign === 1 ? -1 : 1;
  const moved = others.map((entry) => ({
    sign: (entry.sign * turn) as 1 | -1,
    of: entry.numeric,
  }));
  // Positive terms first, so that no line begins with a minus where it need not.
  const ordered = [
    ...moved.filter(({ sign }) => sign > 0),
    ...moved.filter(({ sign }) => sign < 0),
  ];
  const numerator = sum(...ordered);
  const under = unknown.coefficient;
  const line = (of: Expression, withLeft: boolean): StatementLine => ({
    ...(withLeft ? { left } : {}),
    chain: [{ sign: '=', of: cancelUnits(of) }],
  });
  if (under === undefined) {
    if (isBare(numerator)) return { lines: [{ ...boxed, left }] };
    return { lines: [line(numerator, true), boxed] };
  }
  const total = others.reduce((all, entry) => all + turn * entry.worth, 0);
  if (moved.length > mostOverALine) {
    return {
      lines: [
        { left: product(left, under), chain: [{ sign: '=', of: numerator }] },
        { chain: [{ sign: '=', of: solving.numerator(total) }] },
        line(quotient(solving.numerator(total), under), true),
        boxed,
      ],
    };
  }
  const middle =
    moved.length > 1 ? [line(quotient(solving.numerator(total), under), false)] : [];
  return { lines: [line(quotient(numerator, under), true), ...middle, boxed] };
}

/** More terms than this do not go over a fraction's line, where they cannot be broken. */
const mostOverALine = 4;

/** A single figure, with a minus or without: nothing is left to work out. */
function isBare(of: Expression): boolean {
  return (
    of.kind === 'figure' ||
    (of.kind === 'sum' && of.terms.length === 1 && of.terms[0]?.of.kind === 'figure')
  );
}

/** Both printed lines of a sum: in symbols, and with numbers; each ends in `= 0`. */
export function sumStatement(
  title: Expression,
  entries: readonly Entry[],
  zero: Figure,
): Statement {
  const terms = (
    read: (entry: Entry) => Expression,
    signOf: (entry: Entry, index: number) => 1 | -1 = ({ sign }) => sign,
  ): Expression =>
    entries.length === 0
      ? zero
      : {
          kind: 'sum',
          terms: entries.map((entry, index) => ({
            sign: signOf(entry, index),
            of: read(entry),
          })),
        };
  const line = (of: Expression): StatementLine => ({
    chain: [
      { sign: '=', of: plainIfSingle(of) },
      { sign: '=', of: zero },
    ],
    recheck: 'none',
  });
  const symbols: StatementLine = {
    left: title,
    ...line(terms((entry) => entry.symbolic)),
  };
  const hasNumbers = entries.some(({ symbolic, numeric }) => symbolic !== numeric);
  if (!hasNumbers) return { lines: [symbols] };
  const isClosed = entries.every((entry) => entry.unknown === undefined);
  // A line of numbers does not open with a minus before a force that is 0.
  const numbers = line(
    terms(
      (entry) => entry.numeric,
      ({ sign, isNothing }, index) => (index === 0 && isNothing ? 1 : sign),
    ),
  );
  return { lines: [symbols, isClosed ? { ...numbers, recheck: 'closure' } : numbers] };
}

function plainIfSingle(of: Expression): Expression {
  if (of.kind !== 'sum') return of;
  const [only] = of.terms;
  return of.terms.length === 1 && only?.sign === 1 ? only.of : of;
}
