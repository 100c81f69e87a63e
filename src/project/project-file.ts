import type {
  Assumption,
  CrossSection,
  DesignLoad,
  Material,
  Reference,
  Stated,
  Status,
} from './definitions.ts';
import { limitsMap, memberMark, type LimitEntry } from './names.ts';
import { materialValues, sectionValues } from './section-entry.ts';
import { date } from './shape/date.ts';
import { listOf } from './shape/list.ts';
import { mapOf, type Named } from './shape/map-of.ts';
import { numberFrom } from './shape/number.ts';
import {
  defaulted,
  objectOf,
  optional,
  required,
  type ObjectShape,
} from './shape/object.ts';
import { placed, type Placed, type Shape } from './shape/shape.ts';
import { nameOf, oneOf, text, truth } from './shape/text.ts';

/** A person as written. */
export interface PersonEntry {
  readonly name: string;
  readonly initials: string;
  readonly date?: string;
  readonly licence?: string;
}

/** A row of the record of revisions as written. */
export interface RevisionEntry {
  readonly mark: string;
  readonly date?: string;
  readonly note?: string;
  readonly reason?: string;
  readonly prepared?: string;
  readonly checked?: string;
  readonly sheets?: string;
}

/** `people:` as written. */
export interface PeopleEntry {
  readonly prepared?: Placed<PersonEntry>;
  readonly checked?: Placed<PersonEntry>;
  readonly approved?: Placed<PersonEntry>;
}

/** `supersedes:` as written. */
export interface SupersededEntry {
  readonly number?: string;
  readonly revision?: string;
  readonly bag?: string;
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
}

/** `conventions:` as written. */
export interface ConventionsEntry {
  readonly moments: Stated<'counterclockwise' | 'clockwise'>;
  readonly horizontal: Stated<'right' | 'left'>;
  readonly vertical: Stated<'up' | 'down'>;
  readonly moment_diagram?: Placed<'compression' | 'tension'>;
}

/** `criteria:` as written. */
export interface CriteriaEntry {
  readonly standards?: readonly string[];
  readonly deflection_limits?: readonly Named<LimitEntry>[];
  readonly design_loads?: readonly DesignLoad[];
}

/** project.yaml as written: every value of the right form, nothing compared with anything else yet. */
export interface ProjectFile {
  readonly project: IdentityEntry;
  readonly people?: PeopleEntry;
  readonly revisions?: readonly Placed<RevisionEntry>[];
  readonly units: 'us' | 'si';
  readonly lengths: Stated<'decimal' | 'feet-inches'>;
  readonly paper?: Placed<'letter' | 'a4'>;
  readonly figures: Stated<number>;
  readonly conventions?: ConventionsEntry;
  readonly criteria?: CriteriaEntry;
  readonly assumptions?: readonly Placed<Assumption>[];
  readonly references?: readonly Placed<Reference>[];
  readonly cautions?: readonly string[];
  readonly methods?: MethodsEntry;
  readonly sheet_order?: readonly Placed<string>[];
  readonly sections?: readonly Named<Omit<CrossSection, 'name'>>[];
  readonly materials?: readonly Named<Omit<Material, 'name'>>[];
}

/** `methods:` as written. */
export interface MethodsEntry {
  readonly continuous?: string;
}

const person: Shape<PersonEntry> = objectOf<PersonEntry>(
  'a person: a map of name and initials',
  {
    name: required(text, "the person's name"),
    initials: required(text, 'the initials for the boxes of the sheets'),
    date: optional(
      date,
      "the person's own date for this revision; without it no initials are printed",
    ),
    licence: optional(text, 'the licence number'),
  },
);

const revision: Shape<RevisionEntry> = objectOf<RevisionEntry>(
  'a revision: a map that begins with its mark',
  {
    mark: required(text, 'the mark of the revision, such as A'),
    date: optional(date, 'its date'),
    note: optional(text, 'what was changed'),
    reason: optional(text, 'why'),
    prepared: optional(text, 'initials of who prepared it'),
    checked: optional(text, 'initials of who checked it'),
    sheets: optional(text, 'the sheets affected, or all'),
  },
);

const identity: Shape<IdentityEntry> = objectOf<IdentityEntry>(
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
        bag: optional(text, 'where it is archived'),
      }),
      'the package that this one replaces',
    ),
  },
);

const conventions: Shape<ConventionsEntry> = objectOf<ConventionsEntry>(
  'a map of positive senses',
  {
    moments: defaulted(
      oneOf('counterclockwise', 'clockwise'),
      'counterclockwise',
      'which turn counts positive in sums of moments',
    ),
    horizontal: defaulted(
      oneOf('right', 'left'),
      'right',
      'which way counts positive in sums of horizontal forces',
    ),
    vertical: defaulted(
      oneOf('up', 'down'),
      'up',
      'which way counts positive in sums of vertical forces',
    ),
    moment_diagram: optional(
      placed(oneOf('compression', 'tension')),
      'the side on which moments are drawn. Default: compression for us, tension for si',
    ),
  },
);

const criteria: Shape<CriteriaEntry> = objectOf<CriteriaEntry>(
  'a map of standards, limits and loads',
  {
    standards: optional(
      listOf(text),
      'the standards that the calculations follow, with their editions',
    ),
    deflection_limits: optional(limitsMap, 'limits by case, combination or sum: L/360'),
    design_loads: optional(
      listOf(
        objectOf<DesignLoad>('a design load: a map that begins with its item', {
          item: required(text, 'what it is'),
          symbol: optional(text, 'its symbol'),
          value: required(text, 'its value, printed as given'),
          source: optional(text, 'where it comes from'),
          level: optional(text, 'strength or service, as the source has it'),
        }),
      ),
      'loads that are printed as given, whether they govern or not',
    ),
  },
);

const id: Shape<string> = nameOf(
  'an id',
  /^[^\s,[\]{}]{1,20}$/u,
  'ids are short and hold no space or comma',
);

/** project.yaml. */
export const projectFile: ObjectShape<ProjectFile> = objectOf<ProjectFile>(
  'a map of project, units and so on',
  {
    project: required(identity, 'what the package is for'),
    people: optional(
      objectOf<PeopleEntry>('a map of prepared, checked and approved', {
        prepared: optional(placed(person), 'who prepared the calculations'),
        checked: optional(placed(person), 'who checked them'),
        approved: optional(placed(person), 'who approved them'),
      }),
      'who answers for the package',
    ),
    revisions: optional(
      listOf(placed(revision)),
      'the record of revisions, oldest first',
    ),
    units: required(oneOf('us', 'si'), 'the units that the report prints, us or si'),
    lengths: defaulted(
      oneOf('decimal', 'feet-inches'),
      'decimal',
      'how the report prints lengths in feet',
    ),
    paper: optional(
      placed(oneOf('letter', 'a4')),
      'the paper. Default: letter for us, a4 for si',
    ),
    figures: defaulted(
      numberFrom({ from: 2, to: 10, whole: true }),
      4,
      'significant figures printed',
    ),
    conventions: optional(conventions, 'positive senses that the report prints'),
    criteria: optional(criteria, 'what the members are judged by'),
    assumptions: optional(
      listOf(
        placed(
          objectOf<Assumption>('an assumption: a map of id and text', {
            id: required(id, 'its short name'),
            text: required(text, 'the assumption'),
            basis: optional(text, 'what it rests on'),
            confirmed: {
              ...required(truth, 'whether it has been confirmed'),
              presence: 'optional',
              absent: false,
              shown: false,
            },
            track: optional(text, 'where its confirmation is tracked'),
          }),
        ),
      ),
      "the engineer's assumptions",
    ),
    references: optional(
      listOf(
        placed(
          objectOf<Reference>('a reference: a map of id and text', {
            id: required(id, 'its short name'),
            text: required(text, 'the document'),
          }),
        ),
      ),
      'documents that the package leans on',
    ),
    cautions: optional(
      listOf(text),
      'cautions added to those that every package carries',
    ),
    methods: optional(
      objectOf<MethodsEntry>('a map of preferred methods', {
        continuous: optional(text, 'the method for continuous beams'),
      }),
      'the preferred hand method where several would do',
    ),
    sheet_order: optional(
      listOf(placed(memberMark)),
      'marks of members in the order of their sheets',
    ),
    sections: optional(
      mapOf(text, sectionValues),
      'cross-sections of the project, by name',
    ),
    materials: optional(
      mapOf(text, materialValues),
      'materials of the project, by name',
    ),
  },
);
