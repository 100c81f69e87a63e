import type { Reading } from '../reading.ts';
import type { Placed } from '../shape/shape.ts';
import { checkPeople } from './check-people.ts';
import type { ProjectFile } from './project-file.ts';

/** Reports what the parts of project.yaml say against one another; parts that could not be read are left aside. */
export function checkProject(file: Partial<ProjectFile>, reading: Reading): void {
  checkPeople(file, reading);
  reportTwins([...(file.assumptions ?? []), ...(file.references ?? [])], reading);
}

/** An id must tell one assumption or reference from all others. */
function reportTwins(
  entries: readonly Placed<{ readonly id: string }>[],
  reading: Reading,
): void {
  for (const [index, { value, span }] of entries.entries()) {
    if (entries.findIndex((other) => other.value.id === value.id) === index) continue;
    reading.report({
      code: 'id-taken',
      message: `the id \`${value.id}\` is given to two assumptions or references`,
      span,
      hints: ['give one of the two another id'],
    });
  }
}
