import type { Person, ProjectDefinition, Revision } from '../../project/index.ts';
import { claimField, numberField, textField, type Entry, type Field } from './entry.ts';
import { sumIn, type Names } from './names.ts';

type Part = Entry['part'];

/** A thing that is always there: its fields are told, never the whole. */
function standing(part: Part, key: string, fields: readonly Field[]): Entry {
  return { part, key, what: key, fields };
}

/** Who and what: the heads of project.yaml. */
export function identityEntries(of: ProjectDefinition): readonly Entry[] {
  const { supersedes, supersededBy } = of;
  return [
    standing('identity', 'project', [
      textField('number of the project', of.number),
      textField('title of the project', of.title),
      textField('discipline', of.discipline.value),
      textField('client', of.client),
      textField('location', of.location),
      textField('office', of.office),
      textField('stage', of.stage),
      textField('logo', of.logo),
      textField('status', of.status.value),
      textField('number of the superseded package', supersedes?.number),
      textField('revision of the superseded package', supersedes?.revision),
      textField('bag of the superseded package', supersedes?.bag),
      textField('number of the package that supersedes this one', supersededBy?.number),
      textField(
        'revision of the package that supersedes this one',
        supersededBy?.revision,
      ),
      textField('date since when this package is superseded', supersededBy?.date),
    ]),
  ];
}

/** The people of the project, by what they do. */
export function peopleEntries({ people }: ProjectDefinition): readonly Entry[] {
  const roles = ['prepared', 'checked', 'approved'] as const;
  return roles.flatMap((role) => {
    const person = people[role];
    return person === undefined ? [] : [personEntry(role, person)];
  });
}

function personEntry(role: string, { name, initials, date, licence }: Person): Entry {
  const who = `person who ${role} the package`;
  return {
    part: 'people',
    key: role,
    what: who,
    whole: `${name} (${initials})`,
    fields: [
      textField(who, name),
      textField(`initials of the ${who}`, initials),
      textField(`date of the ${who}`, date),
      textField(`licence of the ${who}`, licence),
    ],
  };
}

/** Rows of the record of revisions. */
export function revisionEntries({ revisions }: ProjectDefinition): readonly Entry[] {
  return revisions.map((revision) => {
    const what = `revision ${revision.mark}`;
    const whole = [revision.date, revision.note, revision.reason]
      .filter((one) => one !== undefined)
      .join(', ');
    return {
      part: 'revisions',
      key: revision.mark,
      what,
      ...(whole === '' ? {} : { whole }),
      fields: revisionFields(what, revision),
    };
  });
}

function revisionFields(what: string, of: Revision): readonly Field[] {
  return [
    textField(`date of ${what}`, of.date),
    textField(`note on ${what}`, of.note),
    textField(`reason of ${what}`, of.reason),
    textField(`initials of who prepared ${what}`, of.prepared),
    textField(`initials of who checked ${what}`, of.checked),
    textField(`sheets of ${what}`, of.sheets),
  ];
}

/** How the package prints: units, paper, positive senses. */
export function conventionEntries(of: ProjectDefinition): readonly Entry[] {
  const { conventions } = of;
  return [
    standing('conventions', 'conventions', [
      textField('units of the package', of.units),
      textField('manner of lengths', of.lengths.value),
      textField('paper', of.paper.value),
      numberField('significant figures', of.figures.value),
      textField('positive turn of moments', conventions.moments.value),
      textField('positive horizontal direction', conventions.horizontal.value),
      textField('positive vertical direction', conventions.vertical.value),
      textField('side of moment diagrams', conventions.momentDiagram.value),
    ]),
  ];
}

/** Limits and design loads; standards are a list of texts and stand apart. */
export function criteriaEntries(of: ProjectDefinition, names: Names): readonly Entry[] {
  return [
    ...limitEntries(of.deflectionLimits, '', names).map((entry): Entry => ({
      ...entry,
      part: 'criteria',
    })),
    standing('criteria', 'cantilevers', [
      textField('length of cantilevers in limits', of.cantilevers ?? 'doubled'),
    ]),
    ...of.designLoads.map((load): Entry => {
      const what = `design load ${load.item}`;
      return {
        part: 'criteria',
        key: `design load ${load.item}`,
        what,
        whole: load.value,
        rekeyed: { kind: 'renamed', name: load.item },
        fields: [
          textField(what, load.value),
          textField(`symbol of ${what}`, load.symbol),
          textField(`source of ${what}`, load.source),
          textField(`level of ${what}`, load.level),
        ],
      };
    }),
  ];
}

/** Deflection limits of the project, or of a member (`of` then ends in its mark: ` of B1`). */
export function limitEntries(
  limits: ProjectDefinition['deflectionLimits'],
  of: string,
  names: Names,
): readonly Omit<Entry, 'part'>[] {
  return limits.map(({ entry, text }) => {
    const what = `deflection limit ${entry.replace(/\s+/gu, '')}${of}`;
    const limit = text.replace(/\s*\/\s*/gu, '/');
    return {
      key: `limit ${sumIn(names, entry)}`,
      what,
      whole: limit,
      fields: [textField(what, limit)],
    };
  });
}

/** What the engineer assumes. */
export function assumptionEntries(of: ProjectDefinition): readonly Entry[] {
  return of.assumptions.map(({ id, text, basis, confirmed, track }) => {
    const what = `assumption ${id}`;
    return {
      part: 'assumptions',
      key: id,
      what,
      whole: text,
      rekeyed: { kind: 'renamed', name: id },
      fields: [
        textField(what, text),
        textField(`basis of ${what}`, basis),
        claimField(`confirmation of ${what}`, confirmed),
        textField(`track of ${what}`, track),
      ],
    };
  });
}

/** What the package leans on. */
export function referenceEntries(of: ProjectDefinition): readonly Entry[] {
  return of.references.map(({ id, text }) => ({
    part: 'references',
    key: id,
    what: `reference ${id}`,
    whole: text,
    rekeyed: { kind: 'renamed', name: id },
    fields: [textField(`reference ${id}`, text)],
  }));
}

/** Which hand methods are preferred. */
export function methodEntries({ methods }: ProjectDefinition): readonly Entry[] {
  return [
    standing('methods', 'methods', [
      textField('preferred method for continuous beams', methods.continuous),
    ]),
  ];
}
