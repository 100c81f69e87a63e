import type { DirectionWord } from '../reading/written.ts';
import { isClose, isSame } from '../matching/closeness.ts';
import type { Finding } from '../verdict.ts';

/** What a concluded value is judged against; both in the sense of the value itself. */
export interface Standard {
  /** The true value. */
  readonly truth: number;
  /** What follows from the worker's own line and earlier figures; absent where nothing does. */
  readonly own?: number;
  /** What the line alone gives, with the truth for all that was concluded before; absent where nothing does. */
  readonly line?: number;
  /** One of the unit that it was written in, SI: its figures are counted in that unit. */
  readonly unit: number;
  /** Significant figures that it must be right to. */
  readonly figures: number;
  /** True where a plain magnitude is as good: moments, shears, deflections of a member. */
  readonly takesMagnitude: boolean;
}

/** How a value stands: right, rightly worked from a wrong one, or wrong; and what is said. */
export interface Judged {
  readonly standing: 'right' | 'follows' | 'wrong';
  readonly findings: readonly Finding[];
  /** True where the size is right and the sense is the other one, and that is no fault. */
  readonly isMagnitude: boolean;
}

/** So much of a value may be rounded off before it is another value: 80 for 75 is no rounding. */
const coarsest = 0.05;

const conversions = [12, 144, 1000, 100, 1e6];

/**
 * Judges a concluded value: right within one unit of the last of so many figures of the truth or of
 * the worker's own figures, rounded or cut off. `show` words a value for the findings.
 */
export function judgeValue(
  value: number,
  standard: Standard,
  show: (si: number) => string,
): Judged {
  const { unit, own, line } = standard;
  const counted = {
    ...standard,
    truth: standard.truth / unit,
    ...(own === undefined ? {} : { own: own / unit }),
    ...(line === undefined ? {} : { line: line / unit }),
  };
  return judgeCount(value / unit, counted, (count) => show(count * unit));
}

/** The same for counts of the unit that the value was written in. */
function judgeCount(
  value: number,
  standard: Standard,
  show: (count: number) => string,
): Judged {
  const { truth, own } = standard;
  return (
    asExact(value, standard) ??
    asRounded(value, standard, show) ?? {
      standing: 'wrong',
      findings: [
        wrongValue(value, { truth, ...(own === undefined ? {} : { own }) }, show),
      ],
      isMagnitude: false,
    }
  );
}

/** A value to the figures asked of the truth, else of what the worker's own figures give; as a size where that will do. */
function asExact(value: number, standard: Standard): Judged | undefined {
  const { truth, own, figures, takesMagnitude } = standard;
  const judged = (standing: Judged['standing'], isMagnitude: boolean): Judged => ({
    standing,
    findings: [],
    isMagnitude,
  });
  const senses = takesMagnitude ? [1, -1] : [1];
  const senseOf = (right: number): number | undefined =>
    senses.find((sense) => isClose(value, sense * right, figures));
  const sense = isNothing(value, truth, own) ? 1 : senseOf(truth);
  if (sense !== undefined) return judged('right', sense < 0);
  if (own === undefined || isRoundedLine(value, standard)) return undefined;
  const ownSense = senseOf(own);
  return ownSense === undefined ? undefined : judged('follows', ownSense < 0);
}

/** A value that is right but for rounding, with what is said of it. */
function asRounded(
  value: number,
  standard: Standard,
  show: (count: number) => string,
): Judged | undefined {
  const { truth, own, takesMagnitude } = standard;
  const right = (message: string, isMagnitude: boolean): Judged => ({
    standing: 'right',
    findings: [{ kind: 'rounding', message }],
    isMagnitude,
  });
  if (isRoundedLine(value, standard))
    return right(
      `${show(value)} comes of rounded figures in this line; unrounded it is ${show(truth)}.`,
      false,
    );
  const isTurned = takesMagnitude && Math.sign(value) !== Math.sign(truth);
  const size = isTurned ? -value : value;
  const coarse = [truth, own].find((one) => one !== undefined && isCoarse(size, one));
  if (coarse === undefined) return undefined;
  const whole = show(isTurned ? -coarse : coarse);
  return right(
    `${show(value)} is ${whole} rounded to too few figures; steps that go on from it may leave the tolerance.`,
    isTurned,
  );
}

// Beside what the member carries, rounding alone gives a value that is truly 0.
function isNothing(value: number, truth: number, own: number | undefined): boolean {
  return value === 0 && Math.abs(truth) <= 1e-9 * Math.abs(own ?? 1);
}

// The worker's own figures, rightly rounded, are as good as the unrounded ones: 8.65 from 17.3 / 2, where 17.32 / 2 is 8.66.
function isRoundedLine(value: number, { truth, line, figures }: Standard): boolean {
  if (line === undefined || !isClose(value, line, figures)) return false;
  return isClose(line, truth, 2) && Math.sign(line) === Math.sign(truth);
}

/** True where a value is the truth rightly rounded to fewer figures than asked: 8.5 for 8.533. */
function isCoarse(value: number, truth: number): boolean {
  const isRounded = [2, 1].some((figures) =>
    isSame(value, Number(truth.toPrecision(figures))),
  );
  return isRounded && Math.abs(value - truth) <= coarsest * Math.abs(truth);
}

/** What is wrong with a value, beside what its line gives; where it has no line, beside the truth. */
function wrongValue(
  value: number,
  { truth, own }: Pick<Standard, 'truth' | 'own'>,
  show: (si: number) => string,
): Finding {
  const right = own ?? truth;
  const gives = own === undefined ? 'it is' : 'the line gives';
  if (isClose(value, -right))
    return {
      kind: 'sign',
      message: `The size is right and the sign is not: it is ${show(right)}.`,
    };
  const slipped = conversionOf(value, right);
  if (slipped !== undefined)
    return {
      kind: 'unit',
      message: `${show(value)} is out by a factor of ${slipped}: ${gives} ${show(right)}.`,
    };
  return own === undefined
    ? { kind: 'magnitude', message: `It is ${show(right)}, not ${show(value)}.` }
    : {
        kind: 'arithmetic',
        message: `The line gives ${show(right)}, not ${show(value)}.`,
      };
}

/** The factor of a conversion that a value is out by, whichever way; undefined for any other. */
export function conversionOf(value: number, right: number): number | undefined {
  const ratio = right === 0 ? 0 : Math.abs(value / right);
  return conversions.find(
    (one) => isClose(ratio, one, 3) || isClose(ratio, 1 / one, 3),
  );
}

/** The sign that a direction in words gives a force or turn in the solver's senses; undefined where it says nothing of it. */
export function senseOfWord(word: DirectionWord): 1 | -1 {
  const positive: readonly DirectionWord[] = [
    'up',
    'right',
    'counterclockwise',
    'sagging',
    'tension',
  ];
  return positive.includes(word) ? 1 : -1;
}
