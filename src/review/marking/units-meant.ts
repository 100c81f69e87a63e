import { balanceOf, holds } from '../matching/truth.ts';
import { termsOfLine } from '../matching/worker-terms.ts';
import type { Meanings } from '../reading/linear-form.ts';
import type { WrittenLine } from '../reading/written.ts';
import type { Finding } from '../verdict.ts';
import { faultOf } from './explain-line.ts';
import { withUnits } from './lacking-units.ts';
import type { MarkedEquation } from './mark-equation.ts';

/** A line that would hold if its bare numbers had their units: wrong, and one sees what was meant. */
export function unitsMeant(
  readings: readonly WrittenLine[],
  meanings: Meanings,
  truths: (key: string) => number | undefined,
): MarkedEquation | undefined {
  for (const { line, meant } of readings.flatMap(withUnits)) {
    const { terms } = termsOfLine(line, meanings);
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
      isRight: false,
      isFollowing: false,
      findings,
      explained: { ...explained, isTrue: false, isComplete: true },
    };
  }
  return undefined;
}
