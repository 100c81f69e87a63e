import type { ProjectFile } from '../project-file/project-file.ts';
import type { OpenFile } from '../reading.ts';

/**
 * Remarks on a superseded package that does not say by what, and on one that says so and goes on as
 * if nothing had replaced it: a reader of either may build from the wrong sheets.
 */
export function remarkOnSuccessor({ parts, reading }: OpenFile<ProjectFile>): void {
  const { status, superseded_by: successor } = parts.project ?? {};
  if (status === undefined) return;
  const isSuperseded = status.value === 'superseded';
  const isNamed =
    successor?.value.number !== undefined || successor?.value.revision !== undefined;
  if (isSuperseded && !isNamed && status.span !== undefined)
    reading.report({
      code: 'successor-unnamed',
      severity: 'remark',
      message: 'the package is superseded and does not say by what',
      span: status.span,
      hints: [
        'name what replaces it, beside the status: superseded_by: { number: "2031-014", revision: B }',
      ],
    });
  if (successor !== undefined && !isSuperseded && status.value !== 'void')
    reading.report({
      code: 'successor-unheeded',
      severity: 'remark',
      message: `something replaces this package, and yet its status is ${status.value}`,
      span: successor.span,
      hints: ['write status: superseded, or take superseded_by out'],
    });
}
