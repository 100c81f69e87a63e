import type { RelationSign, StatementLine } from './statement.ts';
import { toTex } from './to-tex.ts';

const relations: Readonly<Record<RelationSign, string>> = {
  '=': '=',
  '≈': '\\approx',
  '≤': '\\le',
  '≥': '\\ge',
  '<': '<',
  '>': '>',
  '≠': '\\ne',
};

/** A line as the two halves that stacked lines are aligned by. */
export interface TexLine {
  /** What stands before the first relation sign; empty where the line continues the one above. */
  readonly left: string;
  /** From the first relation sign on. */
  readonly right: string;
}

/** A statement line as TeX; where it is boxed the box goes round its whole last expression. */
export function lineToTex(line: StatementLine): TexLine {
  const last = line.chain.length - 1;
  const right = line.chain.map(({ sign, of }, index) => {
    const written = toTex(of);
    const boxed = line.boxed === true && index === last;
    return `${relations[sign]} ${boxed ? `\\boxed{${written}}` : written}`;
  });
  return {
    left: line.left === undefined ? '' : toTex(line.left),
    right: right.join(' '),
  };
}
