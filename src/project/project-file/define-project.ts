import type { Conventions, ProjectDefinition, Stated } from '../definitions.ts';
import { pathWithin } from '../folder/path-within.ts';
import type { ReadLimits } from '../limits.ts';
import { namedEntries } from '../section-entry.ts';
import { recordOf } from '../shape/map-of.ts';
import { present } from '../shape/present.ts';
import type { Placed } from '../shape/shape.ts';
import type { ConventionsEntry } from './conventions-entry.ts';
import type { IdentityEntry, SupersededEntry } from './identity-entry.ts';
import type { ProjectFile } from './project-file.ts';

/** project.yaml as a definition, defaults that lean on the units put in. The file must be free of errors. */
export function defineProject(
  file: ProjectFile,
  limits: ReadLimits,
): ProjectDefinition {
  const { units, people = {} } = file;
  return present<ProjectDefinition>({
    ...defineIdentity(file.project),
    people: present<ProjectDefinition['people']>({
      prepared: people.prepared?.value,
      checked: people.checked?.value,
      approved: people.approved?.value,
    }),
    revisions: file.revisions.map(({ value, span }) => ({ ...value, span })),
    units,
    lengths: file.lengths,
    paper: given(file.paper, units === 'us' ? 'letter' : 'a4'),
    figures: file.figures,
    conventions: defineConventions(file.conventions, units),
    standards: file.criteria?.standards ?? [],
    deflectionLimits: limits.limits,
    cantilevers: limits.cantilevers,
    designLoads: file.criteria?.design_loads ?? [],
    assumptions: valuesOf(file.assumptions),
    references: valuesOf(file.references),
    cautions: file.cautions,
    methods: file.methods,
    sheetOrder: file.sheet_order && valuesOf(file.sheet_order),
    sections: recordOf(namedEntries(file.sections)),
    materials: recordOf(namedEntries(file.materials)),
  });
}

type Identity = Pick<
  ProjectDefinition,
  keyof Omit<IdentityEntry, 'superseded_by'> | 'supersededBy'
>;

function defineIdentity(entry: IdentityEntry): Identity {
  const { logo, supersedes, superseded_by: successor, ...identity } = entry;
  return present<Identity>({
    ...identity,
    logo: logo && pathWithin(logo.value),
    supersedes: supersedes && defineSuperseded(supersedes),
    supersededBy: successor?.value,
  });
}

function defineSuperseded({
  bag,
  ...named
}: SupersededEntry): ProjectDefinition['supersedes'] {
  return bag === undefined ? named : { ...named, bag: bag.value, span: bag.span };
}

const valuesOf = <T>(list: readonly Placed<T>[]): readonly T[] =>
  list.map((one) => one.value);

function given<T>(placed: Placed<T> | undefined, otherwise: T): Stated<T> {
  if (placed === undefined) return { value: otherwise, origin: 'default' };
  return { value: placed.value, origin: 'given', span: placed.span };
}

function defineConventions(
  entry: ConventionsEntry | undefined,
  units: 'us' | 'si',
): Conventions {
  return {
    moments: entry?.moments ?? { value: 'counterclockwise', origin: 'default' },
    horizontal: entry?.horizontal ?? { value: 'right', origin: 'default' },
    vertical: entry?.vertical ?? { value: 'up', origin: 'default' },
    momentDiagram: given(
      entry?.moment_diagram,
      units === 'us' ? 'compression' : 'tension',
    ),
  };
}
