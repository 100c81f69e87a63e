import type { CaseContext } from '../case-context.ts';
import type { CheckOutcome } from './check-outcome.ts';
import { closureChecks, usedSumsClose } from './closure.ts';
import { areaCheck, cutFromRight, hingeChecks } from './diagrams.ts';
import {
  componentsAgree,
  curvesFromTheRight,
  extremesAreGreatest,
} from './result-agrees.ts';
import { handAgrees } from './hand-agrees.ts';
import { displacementChecks } from './displacement-checks.ts';
import { spanChecks } from './span-checks.ts';
import { standardCaseChecks } from './standard-cases.ts';

/** Every kind of check, in the order of the sheet; the last six are worked without being printed. */
const checks: readonly ((context: CaseContext) => readonly CheckOutcome[])[] = [
  closureChecks,
  spanChecks,
  standardCaseChecks,
  areaCheck,
  cutFromRight,
  hingeChecks,
  usedSumsClose,
  componentsAgree,
  curvesFromTheRight,
  extremesAreGreatest,
  displacementChecks,
  handAgrees,
];

/**
 * Works every check that applies on the numbers of one case's result. They look at the structure and
 * at the values claimed, not at how these were found, so a wrong value fed in is caught.
 */
export function runChecks(context: CaseContext): readonly CheckOutcome[] {
  return checks.flatMap((check) => check(context));
}
