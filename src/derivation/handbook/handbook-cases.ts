import { cantileverPointCases } from './cantilever-points.ts';
import { cantileverSpreadCases } from './cantilever-spread.ts';
import { fixedPointCases } from './fixed-points.ts';
import { fixedSpreadCases } from './fixed-spread.ts';
import type { HandbookCase } from './handbook-case.ts';
import { moreSpanCases } from './more-spans.ts';
import { overhangCases } from './overhangs.ts';
import { proppedPointCases } from './propped-points.ts';
import { proppedSpreadCases } from './propped-spread.ts';
import { simpleCoupleCases } from './simple-couples.ts';
import { simplePointCases } from './simple-points.ts';
import { simpleUniformCases } from './simple-uniform.ts';
import { simpleVaryingCases } from './simple-varying.ts';
import { twoSpanCases } from './two-spans.ts';

/** Every case, special ones before the general ones that hold them too: the first that fits is quoted. */
export const handbookCases: readonly HandbookCase[] = [
  ...simpleUniformCases,
  ...simpleVaryingCases,
  ...simplePointCases,
  ...simpleCoupleCases,
  ...cantileverSpreadCases,
  ...cantileverPointCases,
  ...overhangCases,
  ...proppedSpreadCases,
  ...proppedPointCases,
  ...fixedSpreadCases,
  ...fixedPointCases,
  ...twoSpanCases,
  ...moreSpanCases,
];
