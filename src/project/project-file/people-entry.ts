import type { Person } from '../definitions.ts';
import { date } from '../shape/date.ts';
import { optional, required } from '../shape/field.ts';
import { objectOf } from '../shape/object.ts';
import { placed, type Placed, type Shape } from '../shape/shape.ts';
import { text } from '../shape/text.ts';

/** `people:` as written. */
export interface PeopleEntry {
  readonly prepared?: Placed<Person>;
  readonly checked?: Placed<Person>;
  readonly approved?: Placed<Person>;
}

const person: Shape<Person> = objectOf<Person>('a person: a map of name and initials', {
  name: required(text, "the person's name"),
  initials: required(text, 'the initials for the boxes of the sheets'),
  date: optional(
    date,
    "the person's own date for this revision; without it no initials are printed",
  ),
  licence: optional(text, 'the licence number'),
});

/** `people:` of project.yaml. */
export const peopleEntry: Shape<PeopleEntry> = objectOf<PeopleEntry>(
  'a map of prepared, checked and approved',
  {
    prepared: optional(placed(person), 'who prepared the calculations'),
    checked: optional(placed(person), 'who checked them'),
    approved: optional(placed(person), 'who approved them'),
  },
);
