import type { CaseContext } from '../case-context.ts';
import { reactionsFound } from '../narrators/reactions-found.ts';
import type { Step } from '../steps.ts';

/** Slope-deflection for one case. */
export function narrateSlopeDeflection(context: CaseContext): readonly Step[] {
  return [reactionsFound(context)];
}
