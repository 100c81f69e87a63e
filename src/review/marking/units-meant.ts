import { balanceOf, holds } from '../matching/truth.ts';
import { termsOfLine } from '../matching/worker-terms.ts';
import type { Meanings } from '../reading/linear-form.ts';
import type { WrittenLine } from '../reading/written.ts';
import type { Finding } from '../verdict.ts';
import { isSpent, spend, type Effort } from '../matching/effort.ts';
import { faultOf, type Explained } from './explain-line.ts';
import { withUnits, type Mended } from './lacking-units.ts';

/** Working out a term takes about as long as so many comparisons. */
const comparisonsATerm = 10;

/** A line with the units that were meant. */
export interface MeantUnits {
  readonly findings: readonly Finding[];
  readonly explained: Explained;
}

/** A line that would hold if its bare numbers had their units: wrong, and one sees what was meant. */
export function unitsMeant(
  readings: readonly WrittenLine[],
  meanings: Meanings,
  truths: (key: string) => number | undefined,
  effort: Effort,
): MeantUnits | undefined {
  for (const { line, meant } of meantIn(readings)) {
    if (isSpent(effort)) return undefined;
    const { terms } = termsOfLine(line, meanings);
    spend(effort, comparisonsATerm * (1 + (terms?.length ?? 0)));
    if (terms === undefined || faultOf(terms) !== undefined) continue;
    const balance = balanceOf(terms, truths);
    if (meant.length === 0 || balance === undefined || !holds(balance)) continue;
    const findings = meant.map((text): Finding => ({
      kind: 'unit',
      term: text.split(' ')[0] ?? text,
      message: `This number lacks its unit: ${text} is meant.`,
    }));
    const explained = { reading: line, terms, atoms: [], scale: 1, matches: [] };
    return {
      findings,
      explained: { ...explained, isTrue: false, isComplete: true },
    };
  }
  return undefined;
}

/** One after the other: a line that is found early is worth no more work. */
function* meantIn(readings: readonly WrittenLine[]): Generator<Mended> {
  for (const reading of readings) yield* withUnits(reading);
}
