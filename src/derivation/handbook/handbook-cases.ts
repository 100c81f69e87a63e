import { cantileverCases } from './cantilevers.ts';
import { fixedBothCases } from './fixed-both.ts';
import type { HandbookCase } from './handbook-case.ts';
import { moreSpanCases } from './more-spans.ts';
import { overhangCases } from './overhangs.ts';
import { proppedCases } from './propped.ts';
import { simpleCoupleCases } from './simple-couples.ts';
import { simplePointCases } from './simple-points.ts';
import { simpleSpreadCases } from './simple-spread.ts';
import { twoSpanCases } from './two-spans.ts';

/** Every case, special ones before the general ones that hold them too: the first that fits is quoted. */
export const handbookCases: readonly HandbookCase[] = [
  ...simpleSpreadCases,
  ...simplePointCases,
  ...simpleCoupleCases,
  ...cantileverCases,
  ...overhangCases,
  ...proppedCases,
  ...fixedBothCases,
  ...twoSpanCases,
  ...moreSpanCases,
];
