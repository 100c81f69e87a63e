import type { CaseContext } from '../case-context.ts';
import { reactionsFound } from '../narrators/reactions-found.ts';
import type { Step } from '../steps.ts';

/** The force method for one case. */
export function narrateForceMethod(context: CaseContext): readonly Step[] {
  return [reactionsFound(context)];
}
