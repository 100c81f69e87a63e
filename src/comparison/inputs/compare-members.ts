import type { InputChange } from '../comparison.ts';
import type { BeamDefinition, Project } from '../../project/index.ts';
import { diffEntries } from './diff-entries.ts';
import { diffLoads } from './diff-loads.ts';
import { diffPoints, pointsByStation, renamedPoints } from './diff-points.ts';
import { diffSections } from './diff-sections.ts';
import { loadItems } from './load-items.ts';
import { memberEntries } from './member-entries.ts';
import { laterNames, type Names } from './names.ts';
import { axisOf } from './places.ts';
import { diffTexts } from './text-entries.ts';

/** A member of one side with its project. */
export interface MemberSide {
  readonly project: Project;
  readonly beam: BeamDefinition;
}

/** What differs between two states of a member, its mark apart. `names` are for the earlier side. */
export function compareMembers(
  earlier: MemberSide,
  later: MemberSide,
  names: Names,
): readonly InputChange[] {
  const { mark, points } = later.beam;
  const [before, after] = [axisOf(earlier.beam, names), axisOf(later.beam, laterNames)];
  const length = (points.at(-1)?.x ?? 0) - (points[0]?.x ?? 0);
  const isFeetInches = ({ project }: MemberSide): boolean =>
    project.definition.lengths.value === 'feet-inches';
  return [
    ...diffPoints(
      earlier.beam,
      later.beam,
      (name) => names.point(earlier.beam.mark, name),
      {
        earlier: { isFeetInches: isFeetInches(earlier) },
        later: { isFeetInches: isFeetInches(later) },
      },
    ),
    ...diffEntries(memberEntries(before, mark), memberEntries(after, mark)),
    ...diffLoads(loadItems(before), loadItems(after), { mark, length }),
    ...diffSections(before, after, mark),
    ...diffTexts(earlier.beam.cautions, later.beam.cautions, {
      part: 'members',
      member: mark,
      what: `caution on ${mark}`,
    }),
  ];
}

/**
 * How the points of a member are called now, earlier name to later: of the two readings, by names and by
 * stations, the one under which less has changed.
 */
export function pointNamesFor(
  earlier: MemberSide,
  later: MemberSide,
  names: Names,
): ReadonlyMap<string, string> {
  const byName = renamedPoints(earlier.beam, later.beam);
  const byStation = pointsByStation(earlier.beam, later.beam);
  const differs =
    byStation !== undefined &&
    [...byStation].some(([name, to]) => (byName.get(name) ?? name) !== to);
  if (!differs) return byName;
  const changesUnder = (points: ReadonlyMap<string, string>): number =>
    compareMembers(earlier, later, withPoints(names, earlier.beam.mark, points)).length;
  return changesUnder(byStation) < changesUnder(byName) ? byStation : byName;
}

/** Names in which the points of one member are called otherwise. */
function withPoints(
  names: Names,
  mark: string,
  points: ReadonlyMap<string, string>,
): Names {
  return {
    ...names,
    point: (member, name) =>
      member === mark ? (points.get(name) ?? name) : names.point(member, name),
  };
}

/**
 * How much of a member two definitions have in common, 0 to 1: all that is said of either, less what
 * differs. Points that only changed names count as one.
 */
export function likeness(earlier: MemberSide, later: MemberSide, names: Names): number {
  const points = pointNamesFor(earlier, later, names);
  const own = withPoints(names, earlier.beam.mark, points);
  const differing = compareMembers(earlier, later, own).length;
  const said = Math.max(saidIn(earlier.beam), saidIn(later.beam));
  return Math.max(0, 1 - differing / said);
}

/** How many things a member says. */
function saidIn(beam: BeamDefinition): number {
  const { points, supports, hinges, loads, temperatures, trains, carried } = beam;
  const lists = [points, supports, hinges, loads, temperatures, trains, carried];
  const keys = [beam.title, beam.where, beam.material, beam.bracing, beam.typical];
  return (
    lists.reduce((sum, list) => sum + list.length, 0) +
    beam.sections.length +
    keys.filter((key) => key !== undefined).length
  );
}
