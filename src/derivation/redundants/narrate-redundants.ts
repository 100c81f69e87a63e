import type { CaseContext } from '../case-context.ts';
import type { Step } from '../steps.ts';
import { narrateForceMethod } from './narrate-force-method.ts';
import { narrateMomentDistribution } from './narrate-moment-distribution.ts';
import { narrateSlopeDeflection } from './narrate-slope-deflection.ts';
import { narrateThreeMoment } from './narrate-three-moment.ts';

/**
 * The redundants of one case by the member's hand method: every step from the unknowns to all
 * reactions, which the last step, `reactions-found`, lists.
 *
 * @throws RangeError where statics alone solves the member, so that it has no such method.
 */
export function narrateRedundants(context: CaseContext): readonly Step[] {
  const { method } = context;
  if (method === undefined) throw new RangeError('the member has no redundants');
  switch (method.method) {
    case 'three-moment':
      return narrateThreeMoment(context);
    case 'moment-distribution':
      return narrateMomentDistribution(context);
    case 'slope-deflection':
      return narrateSlopeDeflection(context);
    case 'force':
      return narrateForceMethod(context);
  }
}
