import type { MarkedStep } from '../marked.ts';
import type { Finding } from '../verdict.ts';
import { isSameSlip, type SlipFinding } from './same-slip.ts';

/** A marked step whose findings still know what their slips are. */
export interface StepWithSlips extends Omit<MarkedStep, 'findings' | 'lines'> {
  /** Reads what was written as equations: only once the loading is settled. */
  readonly readLines: () => MarkedStep['lines'];
  readonly findings: readonly SlipFinding[];
}

/** The steps of a file for print: a slip that is made again is wrong again, and says where it was made first. */
export function withRepeats(steps: readonly StepWithSlips[]): readonly MarkedStep[] {
  return steps.map(({ readLines, ...step }, index) => {
    const before = steps
      .slice(0, index)
      .filter(({ verdict, loads }) => verdict === 'wrong' && loads === step.loads);
    const findings = step.findings.map((finding): Finding => {
      const { kind, term, message } = finding;
      const first = before.find((one) => holds(one, step, finding));
      const isAgain = step.verdict === 'wrong' && first !== undefined;
      return {
        kind,
        ...(term === undefined ? {} : { term }),
        message: isAgain ? `${message} The same as in step ${first.step}.` : message,
      };
    });
    return { ...step, lines: readLines(), findings };
  });
}

/** True where a step has the slip of a finding of another, or says just the same of the same sum. */
function holds(
  one: StepWithSlips,
  step: Omit<StepWithSlips, 'readLines'>,
  finding: SlipFinding,
): boolean {
  const isSameSum = one.claim === step.claim && one.part === step.part;
  return one.findings.some(
    (own) =>
      isSameSlip(own, finding) ||
      (isSameSum && own.kind === finding.kind && own.message === finding.message),
  );
}
