import { lineEffort } from '../matching/effort.ts';
import { costs } from '../matching/slips.ts';
import { balanceOf } from '../matching/truth.ts';
import type { Explained } from './explain-line.ts';
import { words } from './phrases.ts';
import { displayOf } from './shown-as.ts';
import type { StepRequest } from './step-mark.ts';
import { truthOf } from './truth-of.ts';

/** What is said of a line that was too long to be explained; not wrong where nobody can tell. */
export interface TooLong {
  readonly isWrong: boolean;
  readonly message: string;
}

/** True where a search had to stop, and what it found until then is more than one slip. */
export function isTooLong({ isComplete, matches: [first] }: Explained): boolean {
  return !isComplete && (first?.cost ?? Infinity) > costs.missing + 0.1;
}

/** A line is surely wrong where its sides are further apart than this share of its greatest term. */
const surelyApart = 0.02;

/** Says how far the sides of such a line are apart, and how to break it up. */
export function tooLong(request: StepRequest, { terms }: Explained): TooLong {
  const balance = balanceOf(terms, (key) => truthOf(request, key));
  const dimension = terms.find((term) => term.dimension !== undefined)?.dimension;
  const isSheetSpent = request.effort.limit - request.effort.spent < lineEffort;
  const subject = isSheetSpent ? 'With the lines beside it this one is' : 'The line is';
  const long = `${terms.length} terms are too many to say which of them is wrong: break the line up into subtotals, each on a line of its own.`;
  if (balance === undefined || dimension === undefined)
    return { isWrong: false, message: `${subject} too long to be explained. ${long}` };
  const apart = Math.abs(balance.residual);
  const by = words(request.context, displayOf({ dimension }), apart);
  return {
    // Rounding never moves a line so far: it is wrong, whichever term is.
    isWrong: apart > surelyApart * balance.size,
    message: `${subject} too long to be explained; its sides differ by ${by}. ${long}`,
  };
}
