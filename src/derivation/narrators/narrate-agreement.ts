import type { CaseContext } from '../case-context.ts';
import { handDifference } from '../sense-checks/hand-agrees.ts';
import { powerFigure } from '../printing.ts';
import type { ReasonStep } from '../steps.ts';

/** The agreement of both ways of solving an indeterminate member, and of the hand method; nothing of a determinate one. */
export function narrateAgreement(context: CaseContext): readonly ReasonStep[] {
  const { method, result } = context;
  const byHand = handDifference(context);
  if (method === undefined || result.agreement === undefined || byHand === undefined)
    return [];
  const { difference, allowed, condition } = result.agreement;
  return [
    {
      kind: 'ways-agree',
      method: method.method,
      difference: powerFigure(difference),
      allowed: powerFigure(allowed),
      condition: powerFigure(condition),
      byHand: powerFigure(byHand.difference),
      byHandAllowed: powerFigure(byHand.allowed),
    },
  ];
}
