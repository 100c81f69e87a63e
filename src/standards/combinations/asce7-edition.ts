import type { CombinationProblem, NamedSetName, SetNote } from './named-set.ts';

/** The editions of ASCE 7 whose combinations the program knows. */
export type Asce7Edition = '7-10' | '7-16' | '7-22';

/** The edition that a project's sets follow, and what must be said of the choice. */
export interface EditionChoice {
  /** Absent where the project names one that is not known, or several. */
  readonly edition?: Asce7Edition;
  readonly notes: readonly SetNote[];
  readonly problems: readonly CombinationProblem[];
}

const known: readonly Asce7Edition[] = ['7-10', '7-16', '7-22'];

/** Finds the edition of ASCE 7 among the project's standards; none named is 7-22, as an assumption. */
export function findAsce7Edition(
  standards: readonly string[],
  set: NamedSetName,
): EditionChoice {
  const named = [...new Set(standards.flatMap((text) => editionsIn(text)))];
  const [first] = named;
  if (first === undefined) {
    const text =
      'No edition of ASCE 7 is named among the standards; load combinations follow ASCE/SEI 7-22.';
    return { edition: '7-22', notes: [{ kind: 'assumption', text }], problems: [] };
  }
  const edition = known.find((entry) => entry === first);
  if (named.length === 1 && edition !== undefined) {
    return { edition, notes: [], problems: [] };
  }
  const message =
    named.length > 1
      ? `the standards name ASCE ${named.join(' and ASCE ')}; combinations can follow only one edition`
      : `the combinations of ASCE ${first} are not known; known editions are ${known.join(', ')}`;
  return { notes: [], problems: [{ kind: 'edition', subject: set, message }] };
}

// `ASCE/SEI 7-22`, `ASCE 7-16`, `asce7-22`, with a hyphen or a dash.
function editionsIn(text: string): readonly string[] {
  const found = text.matchAll(/\bASCE(?:\s*\/\s*SEI)?\s*7\s*[-–]\s*(\d{2})\b/gi);
  return [...found].map((match) => `7-${match[1] ?? ''}`);
}
