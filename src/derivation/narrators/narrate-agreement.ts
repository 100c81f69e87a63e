import type { CaseContext } from '../case-context.ts';
import { handDifference } from '../sense-checks/hand-agrees.ts';
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
      difference: shareText(difference),
      allowed: shareText(allowed),
      condition: shareText(condition),
      byHand: shareText(byHand.difference),
      byHandAllowed: shareText(byHand.allowed),
    },
  ];
}

/** `3.1 × 10⁻¹⁶` as plain digits: `3.1e-16`; an exact 0 as such. */
function shareText(share: number): string {
  return share === 0 ? '0' : share.toExponential(1);
}
