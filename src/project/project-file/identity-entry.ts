import type { Stated, Status } from '../definitions.ts';
import { date } from '../shape/date.ts';
import { defaulted, optional, required } from '../shape/field.ts';
import { objectOf } from '../shape/object.ts';
import { placed, type Placed, type Shape } from '../shape/shape.ts';
import { oneOf, text } from '../shape/text.ts';

/** `supersedes:` as written. */
export interface SupersededEntry {
  readonly number?: string;
  readonly revision?: string;
  readonly bag?: Placed<string>;
}

/** `superseded_by:` as written. */
export interface SuccessorEntry {
  readonly number?: string;
  readonly revision?: string;
  readonly date?: string;
}

/** `project:` as written. */
export interface IdentityEntry {
  readonly number?: string;
  readonly title: string;
  readonly discipline: Stated<string>;
  readonly client?: string;
  readonly location?: string;
  readonly office?: string;
  readonly stage?: string;
  readonly logo?: Placed<string>;
  readonly status: Stated<Status>;
  readonly supersedes?: SupersededEntry;
  readonly superseded_by?: Placed<SuccessorEntry>;
}

/** `project:` of project.yaml. */
export const identityEntry: Shape<IdentityEntry> = objectOf<IdentityEntry>(
  'a map of number, title and so on',
  {
    number: optional(text, 'the project number'),
    title: required(text, 'the title of the project'),
    discipline: defaulted(
      text,
      'structural',
      'the discipline that the calculations are for',
    ),
    client: optional(text, 'whom the work is for'),
    location: optional(text, 'where it stands'),
    office: optional(text, 'who prepares the calculations'),
    stage: optional(text, "the submittal stage, in the user's own word"),
    logo: optional(
      placed(text),
      'a PNG or JPEG picture for the cover, by its path in the folder',
    ),
    status: defaulted(
      oneOf('preliminary', 'for review', 'issued', 'superseded', 'void'),
      'preliminary',
      'where the package stands',
    ),
    supersedes: optional(
      objectOf<SupersededEntry>('a map of number, revision and bag', {
        number: optional(text, 'the number of the package that this one replaces'),
        revision: optional(text, 'its revision'),
        bag: optional(
          placed(text),
          'the bag that it is archived in, by its path from the project folder',
        ),
      }),
      'the package that this one replaces',
    ),
    superseded_by: optional(
      placed(
        objectOf<SuccessorEntry>('a map of number, revision and date', {
          number: optional(text, 'the number of the package that replaces this one'),
          revision: optional(text, 'its revision'),
          date: optional(date, 'the date since when it does'),
        }),
      ),
      'the package that replaces this one, where the status is superseded',
    ),
  },
);
