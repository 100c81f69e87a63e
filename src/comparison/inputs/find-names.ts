import type { Project } from '../../project/index.ts';
import { pointNamesFor } from './compare-members.ts';
import { rekeyedPairs } from './diff-entries.ts';
import type { Entry } from './entry.ts';
import { areaEntries, caseEntries } from './loads-entries.ts';
import { renamedMembers } from './match-members.ts';
import { laterNames, translation, type Names } from './names.ts';
import { assumptionEntries, referenceEntries } from './project-entries.ts';
import { materialEntries, sectionEntries } from './property-entries.ts';

/** What was renamed between two projects: how the names of the earlier read in the later. */
export function findNames(earlier: Project, later: Project): Names {
  // Cases that only the loads name are told where they do; only a list of them can be renamed.
  const areGiven = earlier.loads.given || later.loads.given;
  const cases = areGiven
    ? renamed(
        caseEntries(earlier.loads, laterNames),
        caseEntries(later.loads, laterNames),
      )
    : laterNames.case;
  const withCases: Names = { ...laterNames, case: cases };
  const marks = [...new Set([...casesOf(earlier).map(cases), ...casesOf(later)])];
  const [before, after] = [earlier.definition, later.definition];
  const ids = renamed(
    [...assumptionEntries(before), ...referenceEntries(before)],
    [...assumptionEntries(after), ...referenceEntries(after)],
  );
  const withProperties: Names = {
    ...withCases,
    id: ids,
    area: renamed(
      areaEntries(earlier.loads, withCases, marks),
      areaEntries(later.loads, laterNames, marks),
    ),
    section: renamed(
      sectionEntries(before, laterNames),
      sectionEntries(after, laterNames),
    ),
    material: renamed(
      materialEntries(before, laterNames),
      materialEntries(after, laterNames),
    ),
  };
  const members = renamedMembers(earlier, later, withProperties);
  const member = translation(members);
  const withMembers: Names = { ...withProperties, member };
  return { ...withMembers, point: pointNames(earlier, later, withMembers) };
}

/** Marks of the cases of a project. */
export function casesOf({ loads }: Project): readonly string[] {
  return loads.cases.map(({ mark }) => mark);
}

/** Points of every member that is on both sides. */
function pointNames(earlier: Project, later: Project, names: Names): Names['point'] {
  const byMember = new Map(
    earlier.members.flatMap((beam) => {
      const other = later.members.find(({ mark }) => mark === names.member(beam.mark));
      if (other === undefined) return [];
      const points = pointNamesFor(
        { project: earlier, beam },
        { project: later, beam: other },
        names,
      );
      return [[beam.mark, points] as const];
    }),
  );
  return (mark, name) => byMember.get(mark)?.get(name) ?? name;
}

function renamed(
  earlier: readonly Entry[],
  later: readonly Entry[],
): (name: string) => string {
  const keyed = (
    entries: readonly Entry[],
    others: readonly Entry[],
  ): readonly (readonly [string, Entry])[] =>
    entries
      .filter(({ key }) => others.every((other) => other.key !== key))
      .map((entry) => [entry.key, entry]);
  const pairs = rekeyedPairs(keyed(earlier, later), keyed(later, earlier));
  return translation(
    new Map([...pairs].map(([one, other]) => [one.key, other.key] as const)),
  );
}
