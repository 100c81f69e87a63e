import type { BeamDefinition, Project } from '../../project/index.ts';
import { diffEntries } from './diff-entries.ts';
import type { Entry } from './entry.ts';
import { casesOf } from './find-names.ts';
import { areaEntries, caseEntries } from './loads-entries.ts';
import { laterNames, type Names } from './names.ts';
import {
  assumptionEntries,
  conventionEntries,
  criteriaEntries,
  methodEntries,
  referenceEntries,
} from './project-entries.ts';
import { materialEntries, sectionEntries } from './property-entries.ts';

/** What of the project's premises changed, by the later names. */
export interface ChangedPremises {
  /** Cases or what every sheet prints by: nobody is spared. */
  readonly touchesAll: boolean;
  readonly limits: boolean;
  readonly methods: boolean;
  readonly areas: ReadonlySet<string>;
  readonly sections: ReadonlySet<string>;
  readonly materials: ReadonlySet<string>;
  /** Ids of assumptions and references. */
  readonly ids: ReadonlySet<string>;
}

/** What of the project's premises changed; what only other figures can tell (combinations) is left to them. */
export function changedPremises(
  earlier: Project,
  later: Project,
  names: Names,
): ChangedPremises {
  const [before, after] = [earlier.definition, later.definition];
  const marks = [...new Set([...casesOf(earlier).map(names.case), ...casesOf(later)])];
  const changed = (
    entries: (of: Project, names: Names) => readonly Entry[],
  ): ReadonlySet<string> =>
    changedKeys(entries(earlier, names), entries(later, laterNames));
  const areGiven = earlier.loads.given || later.loads.given;
  return {
    touchesAll:
      changed(({ definition }) => conventionEntries(definition)).size > 0 ||
      (areGiven && changed(({ loads }, by) => caseEntries(loads, by)).size > 0),
    limits:
      changed(({ definition }, by) =>
        criteriaEntries(definition, by).filter(({ key }) => !key.startsWith('design')),
      ).size > 0,
    methods: diffEntries(methodEntries(before), methodEntries(after)).length > 0,
    areas: changed(({ loads }, by) => areaEntries(loads, by, marks)),
    sections: changed(({ definition }, by) => sectionEntries(definition, by)),
    materials: changed(({ definition }, by) => materialEntries(definition, by)),
    ids: new Set([
      ...changed(({ definition }) => assumptionEntries(definition)),
      ...changed(({ definition }) => referenceEntries(definition)),
    ]),
  };
}

/** True where a member, not changed itself, uses something that was. `degree`: its degree of indeterminacy. */
export function isTouched(
  beam: BeamDefinition,
  premises: ChangedPremises,
  degree: number,
): boolean {
  const { loads, temperatures, trains, carried, uses } = beam;
  const grounds = [
    ...uses,
    ...[...loads, ...temperatures, ...trains, ...carried].flatMap((one) => one.uses),
  ];
  return (
    premises.touchesAll ||
    (premises.limits && beam.deflectionLimits === undefined) ||
    (premises.methods && degree > 0) ||
    loads.some(({ from }) => from?.kind === 'area' && premises.areas.has(from.area)) ||
    beam.sections.some(({ section }) => premises.sections.has(section.name ?? '')) ||
    premises.materials.has(beam.material?.name ?? '') ||
    grounds.some((id) => premises.ids.has(id))
  );
}

/** Keys of the entries that differ or stand on one side alone; renamed ones count under both names. */
function changedKeys(
  earlier: readonly Entry[],
  later: readonly Entry[],
): ReadonlySet<string> {
  const of = (entries: readonly Entry[], key: string): readonly Entry[] =>
    entries.filter((entry) => entry.key === key);
  const keys = new Set([...earlier, ...later].map(({ key }) => key));
  return new Set(
    [...keys].filter((key) => diffEntries(of(earlier, key), of(later, key)).length > 0),
  );
}
