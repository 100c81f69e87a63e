import type { Revision } from '../definitions.ts';
import { date } from '../shape/date.ts';
import { optional, required } from '../shape/field.ts';
import { objectOf } from '../shape/object.ts';
import type { Shape } from '../shape/shape.ts';
import { text } from '../shape/text.ts';

/** A row as written; where it stands is known to the list that it is in. */
export type RevisionEntry = Omit<Revision, 'span'>;

/** One entry of `revisions:` of project.yaml. */
export const revisionEntry: Shape<RevisionEntry> = objectOf<RevisionEntry>(
  'a revision: a map that begins with its mark',
  {
    mark: required(text, 'the mark of the revision, such as A'),
    date: optional(date, 'its date'),
    note: optional(text, 'what was changed'),
    reason: optional(text, 'why it was changed'),
    prepared: optional(text, 'initials of who prepared it'),
    checked: optional(text, 'initials of who checked it'),
    sheets: optional(text, 'the sheets affected, or all'),
  },
);
