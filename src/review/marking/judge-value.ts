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
  const { truth, own, figures, takesMagnitude } = standard;
  const right = (findings: readonly Finding[] = [], isMagnitude = false): Judged => ({
    standing: 'right',
    findings,
    isMagnitude,
  });
  if (isClose(value, truth, figures) || isNothing(value, truth, own)) return right();
  if (takesMagnitude && isClose(value, -truth, figures)) return right([], true);
  if (isRoundedLine(value, standard))
    return right([
      {
        kind: 'rounding',
        message: `${show(value)} comes of rounded figures in this line; unrounded it is ${show(truth)}.`,
      },
    ]);
  if (own !== undefined && isClose(value, own, figures))
    return { standing: 'follows', findings: [], isMagnitude: false };
  if (takesMagnitude && own !== undefined && isClose(value, -own, figures))
    return { standing: 'follows', findings: [], isMagnitude: true };
  const coarse = [truth, own].find((one) => one !== undefined && isCoarse(value, one));
  if (coarse !== undefined)
    return right([
      {
        kind: 'rounding',
        message: `${show(value)} is ${show(coarse)} rounded to few figures; steps that go on from it may leave the tolerance.`,
      },
    ]);
  return {
    standing: 'wrong',
    findings: [wrongValue(value, own ?? truth, show)],
    isMagnitude: false,
  };
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

function wrongValue(
  value: number,
  right: number,
  show: (si: number) => string,
): Finding {
  if (isClose(value, -right))
    return {
      kind: 'sign',
      message: `The size is right and the sign is not: it is ${show(right)}.`,
    };
  const slipped = conversionOf(value, right);
  return slipped === undefined
    ? {
        kind: 'arithmetic',
        message: `The line gives ${show(right)}, not ${show(value)}.`,
      }
    : {
        kind: 'unit',
        message: `${show(value)} is out by a factor of ${slipped}: the line gives ${show(right)}.`,
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
