import { recordOf, type Named } from './shape/map-of.ts';
import type { CrossSection, Material, ProjectDefinition } from './definitions.ts';
import { pathWithin } from './folder/path-within.ts';
import { checkPeople } from './check-people.ts';
import type { ReadLimits } from './limits.ts';
import type { ConventionsEntry, IdentityEntry, ProjectFile } from './project-file.ts';
import type { Reading } from './reading.ts';
import type { Placed } from './shape/shape.ts';

/**
 * Turns project.yaml into its definition. `limits` are its deflection limits, which lean on
 * loads.yaml and so are read apart. Undefined where a required part could not be read.
 */
export function checkProject(
  file: Partial<ProjectFile>,
  limits: ReadLimits,
  reading: Reading,
): ProjectDefinition | undefined {
  reportTwins(file.assumptions ?? [], file.references ?? [], reading);
  checkPeople(file, reading);
  const identity =
    file.project === undefined ? undefined : readIdentity(file.project, reading);
  const { units, lengths, figures } = file;
  if (
    identity === undefined ||
    units === undefined ||
    lengths === undefined ||
    figures === undefined
  )
    return undefined;
  return {
    ...identity,
    people: readPeople(file.people),
    revisions: (file.revisions ?? []).map((revision) => revision.value),
    units,
    lengths,
    paper: given(file.paper) ?? {
      value: units === 'us' ? 'letter' : 'a4',
      origin: 'default',
    },
    figures,
    conventions: readConventions(file.conventions, units),
    standards: file.criteria?.standards ?? [],
    deflectionLimits: limits.limits,
    ...(limits.cantilevers === undefined ? {} : { cantilevers: limits.cantilevers }),
    designLoads: file.criteria?.design_loads ?? [],
    assumptions: (file.assumptions ?? []).map((assumption) => assumption.value),
    references: (file.references ?? []).map((reference) => reference.value),
    cautions: file.cautions ?? [],
    methods: recordOf(Object.entries<string>({ ...file.methods })),
    ...(file.sheet_order === undefined
      ? {}
      : { sheetOrder: file.sheet_order.map((mark) => mark.value) }),
    sections: recordOf(ownSections(file.sections ?? [])),
    materials: recordOf(ownMaterials(file.materials ?? [])),
  };
}

/** Cross-sections of the project's own, by name. */
export function ownSections(
  entries: readonly Named<Omit<CrossSection, 'name'>>[],
): readonly (readonly [string, CrossSection])[] {
  return entries.flatMap(({ name, value }) =>
    value === undefined ? [] : [[name.value, { ...value, name: name.value }] as const],
  );
}

/** Materials of the project's own, by name. */
export function ownMaterials(
  entries: readonly Named<Omit<Material, 'name'>>[],
): readonly (readonly [string, Material])[] {
  return entries.flatMap(({ name, value }) =>
    value === undefined ? [] : [[name.value, { ...value, name: name.value }] as const],
  );
}

function given<T>(
  placed: Placed<T> | undefined,
):
  | { readonly value: T; readonly origin: 'given'; readonly span: Placed<T>['span'] }
  | undefined {
  return placed === undefined
    ? undefined
    : { value: placed.value, origin: 'given', span: placed.span };
}

function readIdentity(
  entry: IdentityEntry,
  reading: Reading,
): Omit<IdentityEntry, 'logo'> & { readonly logo?: string } {
  const { logo, ...rest } = entry;
  if (logo === undefined) return rest;
  const path = pathWithin(logo.value);
  if (path !== undefined) return { ...rest, logo: path };
  reading.report({
    code: 'path-outside-folder',
    message: `the path ${logo.value} leads out of the project folder`,
    span: logo.span,
    hints: ['put the picture into images/ and name it from the project folder on'],
  });
  return rest;
}

function readConventions(
  entry: ConventionsEntry | undefined,
  units: 'us' | 'si',
): ProjectDefinition['conventions'] {
  return {
    moments: entry?.moments ?? { value: 'counterclockwise', origin: 'default' },
    horizontal: entry?.horizontal ?? { value: 'right', origin: 'default' },
    vertical: entry?.vertical ?? { value: 'up', origin: 'default' },
    momentDiagram: given(entry?.moment_diagram) ?? {
      value: units === 'us' ? 'compression' : 'tension',
      origin: 'default',
    },
  };
}

function readPeople(people: ProjectFile['people']): ProjectDefinition['people'] {
  const { prepared, checked, approved } = people ?? {};
  return {
    ...(prepared === undefined ? {} : { prepared: prepared.value }),
    ...(checked === undefined ? {} : { checked: checked.value }),
    ...(approved === undefined ? {} : { approved: approved.value }),
  };
}

/** An id must tell one assumption or reference from all others. */
function reportTwins(
  assumptions: readonly Placed<{ readonly id: string }>[],
  references: readonly Placed<{ readonly id: string }>[],
  reading: Reading,
): void {
  const all = [...assumptions, ...references];
  for (const [index, { value, span }] of all.entries()) {
    if (all.findIndex((other) => other.value.id === value.id) === index) continue;
    reading.report({
      code: 'id-taken',
      message: `the id \`${value.id}\` is given to two assumptions or references`,
      span,
      hints: ['give one of the two another id'],
    });
  }
}
