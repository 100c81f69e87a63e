import { nearest } from '../diagnostics/index.ts';

/** A command line that cannot be taken: what is wrong with it, and what to write instead. */
export interface UsageFault {
  readonly message: string;
  readonly hints: readonly string[];
}

/** A word that is none of those known: the nearest is suggested, or all are listed. */
export function unknownWord(
  what: string,
  word: string,
  known: readonly string[],
): UsageFault {
  const near = nearest(word, known);
  return {
    message: `there is no ${what} ${word}`,
    hints: [near === undefined ? `known: ${known.join(', ')}` : `write ${near}`],
  };
}
