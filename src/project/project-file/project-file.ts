import type {
  Assumption,
  CrossSection,
  Material,
  PreferredMethods,
  Reference,
  Stated,
} from '../definitions.ts';
import { memberMark } from '../names.ts';
import { materialValues, sectionValues } from '../section-entry.ts';
import { listOf } from '../shape/list.ts';
import { mapOf, type Named } from '../shape/map-of.ts';
import { numberFrom } from '../shape/number.ts';
import { defaulted, optional, optionalOr, required } from '../shape/field.ts';
import { objectOf, type ObjectShape } from '../shape/object.ts';
import { placed, type Placed } from '../shape/shape.ts';
import { oneOf, text } from '../shape/text.ts';
import { conventionsEntry, type ConventionsEntry } from './conventions-entry.ts';
import { criteriaEntry, type CriteriaEntry } from './criteria-entry.ts';
import { identityEntry, type IdentityEntry } from './identity-entry.ts';
import { assumptionEntry, referenceEntry } from './numbered-entry.ts';
import { peopleEntry, type PeopleEntry } from './people-entry.ts';
import { revisionEntry, type RevisionEntry } from './revision-entry.ts';

/** project.yaml as written: every value of the right form, nothing compared with anything else yet. */
export interface ProjectFile {
  readonly project: IdentityEntry;
  readonly people?: PeopleEntry;
  readonly revisions: readonly Placed<RevisionEntry>[];
  readonly units: 'us' | 'si';
  readonly lengths: Stated<'decimal' | 'feet-inches'>;
  readonly paper?: Placed<'letter' | 'a4'>;
  readonly figures: Stated<number>;
  readonly conventions?: ConventionsEntry;
  readonly criteria?: CriteriaEntry;
  readonly assumptions: readonly Placed<Assumption>[];
  readonly references: readonly Placed<Reference>[];
  readonly cautions: readonly string[];
  readonly methods: PreferredMethods;
  readonly sheet_order?: readonly Placed<string>[];
  readonly sections: readonly Named<Omit<CrossSection, 'name'>>[];
  readonly materials: readonly Named<Omit<Material, 'name'>>[];
}

/** project.yaml. */
export const projectFile: ObjectShape<ProjectFile> = objectOf<ProjectFile>(
  'a map of project, units and so on',
  {
    project: required(identityEntry, 'what the package is for'),
    people: optional(peopleEntry, 'who answers for the package'),
    revisions: optionalOr(
      listOf(placed(revisionEntry)),
      [],
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
    conventions: optional(conventionsEntry, 'positive senses that the report prints'),
    criteria: optional(criteriaEntry, 'what the members are judged by'),
    assumptions: optionalOr(
      listOf(placed(assumptionEntry)),
      [],
      "the engineer's assumptions",
    ),
    references: optionalOr(
      listOf(placed(referenceEntry)),
      [],
      'documents that the package leans on',
    ),
    cautions: optionalOr(
      listOf(text),
      [],
      'cautions added to those that every package carries',
    ),
    methods: optionalOr(
      objectOf<PreferredMethods>('a map of preferred methods', {
        continuous: optional(
          oneOf('three-moment', 'moment-distribution', 'slope-deflection'),
          'the method for beams of two spans or more on simple supports. Default: three-moment',
        ),
      }),
      {},
      'the preferred hand method where several would do',
    ),
    sheet_order: optional(
      listOf(placed(memberMark)),
      'marks of members in the order of their sheets',
    ),
    sections: optionalOr(
      mapOf(text, sectionValues, 'a map of names and cross-sections'),
      [],
      'cross-sections of the project, by name',
    ),
    materials: optionalOr(
      mapOf(text, materialValues, 'a map of names and materials'),
      [],
      'materials of the project, by name',
    ),
  },
);
