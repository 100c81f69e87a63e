import type { CheckedLoads } from './loads-file/check-loads.ts';
import type { OpenFolder } from './open-folder.ts';
import type { Premises } from './premises.ts';

/** The premises of a folder's members. `loads` is absent where loads.yaml could not be read. */
export function gatherPremises(
  { project, loads: loadsFile }: Pick<OpenFolder, 'project' | 'loads'>,
  loads: CheckedLoads | undefined,
): Premises {
  const { units = 'us', sections = [], materials = [] } = project?.parts ?? {};
  const named = <T extends object>(
    entries: readonly {
      readonly name: { readonly value: string };
      readonly value: T | undefined;
    }[],
  ): ReadonlyMap<string, (T & { readonly name: string }) | undefined> =>
    new Map(
      entries.map(({ name, value }) => [
        name.value,
        value && { ...value, name: name.value },
      ]),
    );
  return {
    units,
    combinations: loads?.combinations ?? [],
    sections: named(sections),
    materials: named(materials),
    ...casesAndAreas(loads, loadsFile?.reading.hasFailed() === true),
    ...idsOf(project),
  };
}

function casesAndAreas(
  loads: CheckedLoads | undefined,
  failed: boolean,
): Pick<Premises, 'cases' | 'areas'> {
  if (loads === undefined) return {};
  const { cases, areas } = loads.definition;
  return failed ? { cases } : { cases, areas: new Map(Object.entries(areas)) };
}

function idsOf(project: OpenFolder['project']): Pick<Premises, 'ids'> {
  if (project === undefined || project.reading.hasFailed()) return {};
  const { assumptions = [], references = [] } = project.parts;
  return { ids: new Set([...assumptions, ...references].map(({ value }) => value.id)) };
}
