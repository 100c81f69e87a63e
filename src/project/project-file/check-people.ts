import type { Person } from '../definitions.ts';
import type { ProjectFile } from './project-file.ts';
import type { Reading } from '../reading.ts';
import type { Placed } from '../shape/shape.ts';

/** Nobody checks calculations of their own: the same name or the same initials twice is an error, on the people and on every revision. */
export function checkPeople(file: Partial<ProjectFile>, reading: Reading): void {
  const { prepared, checked } = file.people ?? {};
  if (
    prepared !== undefined &&
    checked !== undefined &&
    isOnePerson(prepared.value, checked.value)
  )
    report(checked, `${checked.value.name} both prepares and checks`, reading);
  for (const revision of file.revisions ?? []) {
    const { prepared: by, checked: against, mark } = revision.value;
    if (by !== undefined && against !== undefined && folded(by) === folded(against))
      report(
        revision,
        `revision ${mark} is prepared and checked by one person, ${against}`,
        reading,
      );
  }
}

function isOnePerson(one: Person, other: Person): boolean {
  return (
    folded(one.name) === folded(other.name) ||
    folded(one.initials) === folded(other.initials)
  );
}

// A. Quill and a quill are one person; so are AQ and A.Q.
const folded = (name: string): string => name.toLowerCase().replace(/[\s.]/g, '');

function report(at: Placed<unknown>, message: string, reading: Reading): void {
  reading.report({
    code: 'same-person',
    message,
    span: at.span,
    hints: [
      'name somebody else as checker, or leave `checked` out until somebody has checked',
    ],
  });
}
