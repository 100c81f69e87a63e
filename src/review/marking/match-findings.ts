import type { Match } from '../matching/match-terms.ts';
import type { Finding } from '../verdict.ts';
import { slipFindings } from './slip-findings.ts';
import type { SlipFinding } from './same-slip.ts';
import { orElse, type Speech } from './speech.ts';

/** The slips of the cheapest explanation in words; of others that serve as well, what they say otherwise. */
export function matchFindings(
  matches: readonly Match[],
  speech: Speech,
): readonly SlipFinding[] {
  const [first, ...others] = matches.map(({ slips }) => slipFindings(slips, speech));
  if (first === undefined) return [];
  const said = new Set(first.map(textOf));
  const otherwise = others.flatMap((findings) =>
    findings.filter((finding) => {
      const isNew = !said.has(textOf(finding));
      said.add(textOf(finding));
      return isNew;
    }),
  );
  return [...first, ...otherwise.map((one) => (isOtherwise(one) ? one : orElse(one)))];
}

function textOf({ kind, term, message }: Finding): string {
  return JSON.stringify([kind, term, message]);
}

function isOtherwise({ message }: Finding): boolean {
  return message.startsWith('Or else: ');
}
