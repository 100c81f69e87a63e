import type { Diagnostic } from '../../diagnostics/index.ts';
import type { DerivedMember } from '../derive-members.ts';
import { projectClosure, type ProjectClosure } from './project-closure.ts';

/**
 * The closures of a project over its members with results: vertical, and horizontal where anything acts along
 * a member. None where nothing is carried: each member's own sums say it all.
 */
export function closeProject(
  members: readonly DerivedMember[],
): readonly ProjectClosure[] {
  const works = members.flatMap((one) => (one.kind === 'derived' ? [one.work] : []));
  if (works.every(({ definition }) => definition.carried.length === 0)) return [];
  const horizontal = projectClosure(works, 'x');
  return [
    projectClosure(works, 'y'),
    ...(horizontal.sums.some(({ scale }) => scale > 0) ? [horizontal] : []),
  ];
}

/** One error for each case in which a project does not close: some member's results are then wrong. */
export function closureFaults(
  closures: readonly ProjectClosure[],
): readonly Diagnostic[] {
  return closures.flatMap(({ along, sums, closes }) =>
    closes
      ? []
      : sums
          .filter(({ closes: one }) => !one)
          .map(({ case: mark, residual, scale }): Diagnostic => ({
            severity: 'error',
            code: 'check-failed',
            message: `case ${mark}: over the whole project the ${along === 'y' ? 'vertical' : 'horizontal'} forces do not close, by ${(Math.abs(residual) / scale).toExponential(1)} of the sum of their sizes`,
            hints: ['do not use the results; report this with the definition files'],
          })),
  );
}
