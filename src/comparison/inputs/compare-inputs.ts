import type { InputChange } from '../comparison.ts';
import type { Project } from '../../project/index.ts';
import { compareMembers } from './compare-members.ts';
import { diffEntries } from './diff-entries.ts';
import type { Entry } from './entry.ts';
import { casesOf, findNames } from './find-names.ts';
import {
  pictureEntries,
  templateEntries,
  themeEntries,
  workedEntries,
} from './folder-entries.ts';
import { areaEntries, caseEntries, combinationEntries } from './loads-entries.ts';
import { laterNames, type Names } from './names.ts';
import {
  assumptionEntries,
  conventionEntries,
  criteriaEntries,
  identityEntries,
  methodEntries,
  peopleEntries,
  referenceEntries,
  revisionEntries,
} from './project-entries.ts';
import { materialEntries, sectionEntries } from './property-entries.ts';
import { diffTexts } from './text-entries.ts';

/**
 * What changed between the inputs of two projects, by meaning: order, comments and spellings are no
 * change, and what was only renamed is told once. In reading order of the folder.
 */
export function compareInputs(
  earlier: Project,
  later: Project,
): readonly InputChange[] {
  const names = findNames(earlier, later);
  return [
    ...projectChanges(earlier, later, names),
    ...loadsChanges(earlier, later, names),
    ...memberChanges(earlier, later, names),
    ...diffEntries(workedEntries(earlier, names), workedEntries(later, laterNames)),
    ...diffEntries(pictureEntries(earlier), pictureEntries(later)),
    ...diffEntries(templateEntries(earlier), templateEntries(later)),
    ...diffEntries(themeEntries(earlier), themeEntries(later)),
  ];
}

function projectChanges(
  { definition: before }: Project,
  { definition: after }: Project,
  names: Names,
): readonly InputChange[] {
  const both = (entries: (of: typeof before, names: Names) => readonly Entry[]) =>
    diffEntries(entries(before, names), entries(after, laterNames));
  return [
    ...both(identityEntries),
    ...both(peopleEntries),
    ...both(revisionEntries),
    ...both(conventionEntries),
    ...diffTexts(before.standards, after.standards, {
      part: 'criteria',
      what: 'standard',
    }),
    ...both(criteriaEntries),
    ...diffEntries(assumptionEntries(before), assumptionEntries(after)),
    ...diffEntries(referenceEntries(before), referenceEntries(after)),
    ...diffTexts(before.cautions, after.cautions, {
      part: 'cautions',
      what: 'caution',
    }),
    ...both(methodEntries),
    ...withRenames(sectionEntries, { before, after, names }),
    ...withRenames(materialEntries, { before, after, names }),
  ];
}

/**
 * Entries whose own renaming is to be told: the earlier side keeps its names for them here, and the
 * pairing finds anew what `findNames` found.
 */
function withRenames<T>(
  entries: (of: T, names: Names) => readonly Entry[],
  {
    before,
    after,
    names,
  }: { readonly before: T; readonly after: T; readonly names: Names },
): readonly InputChange[] {
  const own: Names = { ...names, section: same, material: same, area: same };
  return diffEntries(entries(before, own), entries(after, laterNames));
}

const same = (name: string): string => name;

function loadsChanges(
  { loads: before, ...earlier }: Project,
  later: Project,
  names: Names,
): readonly InputChange[] {
  const { loads: after } = later;
  const marks = [
    ...new Set([
      ...casesOf({ ...earlier, loads: before }).map(names.case),
      ...casesOf(later),
    ]),
  ];
  // Cases that only the loads name come and go with them.
  const cases =
    before.given || after.given
      ? diffEntries(caseEntries(before, laterNames), caseEntries(after, laterNames))
      : [];
  return [
    ...cases,
    ...withRenames((of, by) => areaEntries(of, by, marks), { before, after, names }),
    ...diffEntries(
      combinationEntries(before, names, marks),
      combinationEntries(after, laterNames, marks),
    ),
  ];
}

function memberChanges(
  earlier: Project,
  later: Project,
  names: Names,
): readonly InputChange[] {
  const after = later.members.map(({ mark }) => mark);
  const before = earlier.members.map(({ mark }) => names.member(mark));
  return [
    ...orderChange(earlier, later, names),
    ...earlier.members
      .filter(({ mark }) => isGone(names.member(mark), later))
      .map(({ mark, title }): InputChange => ({
        kind: 'removed',
        part: 'members',
        member: mark,
        what: `member ${mark}`,
        ...(title === undefined ? {} : { from: title }),
      })),
    ...later.members.flatMap((beam): readonly InputChange[] => {
      const other = earlier.members[before.indexOf(beam.mark)];
      if (other === undefined)
        return isGone(beam.mark, earlier) ? [addedMember(beam)] : [];
      return [
        ...(other.mark === beam.mark ? [] : [renamedMember(other.mark, beam.mark)]),
        ...compareMembers(
          { project: earlier, beam: other },
          { project: later, beam },
          names,
        ),
      ];
    }),
    ...faultyChanges(earlier, later, after),
  ];
}

function isGone(mark: string, { members, faulty }: Project): boolean {
  return [...members, ...faulty].every((one) => one.mark !== mark);
}

function addedMember({ mark, title }: Project['members'][number]): InputChange {
  return {
    kind: 'added',
    part: 'members',
    member: mark,
    what: `member ${mark}`,
    ...(title === undefined ? {} : { to: title }),
  };
}

function renamedMember(from: string, to: string): InputChange {
  return {
    kind: 'renamed',
    part: 'members',
    member: to,
    what: `member ${from}`,
    from,
    to,
  };
}

/** Members of which one side or both cannot be read: their text alone compares. */
function faultyChanges(
  earlier: Project,
  later: Project,
  after: readonly string[],
): readonly InputChange[] {
  const marks = new Set([...earlier.faulty, ...later.faulty].map(({ mark }) => mark));
  return [...marks].flatMap((mark): readonly InputChange[] => {
    const stand = { part: 'members', member: mark } as const;
    const [from, to] = [stateOf(mark, earlier), stateOf(mark, later)];
    const what = `member ${mark}`;
    if (from === undefined)
      return [{ kind: 'added', ...stand, what, ...(to === undefined ? {} : { to }) }];
    if (to === undefined) return [{ kind: 'removed', ...stand, what, from }];
    const isSame =
      !after.includes(mark) && textOf(mark, earlier) === textOf(mark, later);
    if (isSame) return [];
    const change = { kind: 'changed', ...stand, what: `file of ${mark}` } as const;
    return [from === to ? change : { ...change, from, to }];
  });
}

/** `has errors` or `sound`; undefined where the project has no such member. */
function stateOf(mark: string, { members, faulty }: Project): string | undefined {
  if (faulty.some((one) => one.mark === mark)) return 'has errors';
  return members.some((one) => one.mark === mark) ? 'sound' : undefined;
}

function textOf(mark: string, { faulty, files }: Project): string | undefined {
  const file = faulty.find((one) => one.mark === mark)?.file;
  return files.find(({ path }) => path === file)?.text;
}

/** The order of the sheets, where either side lays it down, by the members that both have. */
function orderChange(
  earlier: Project,
  later: Project,
  names: Names,
): readonly InputChange[] {
  if (
    earlier.definition.sheetOrder === undefined &&
    later.definition.sheetOrder === undefined
  )
    return [];
  const before = earlier.members.map(({ mark }) => names.member(mark));
  const after = later.members.map(({ mark }) => mark);
  const [from, to] = [
    before.filter((mark) => after.includes(mark)).join(', '),
    after.filter((mark) => before.includes(mark)).join(', '),
  ];
  return from === to
    ? []
    : [{ kind: 'changed', part: 'members', what: 'order of the sheets', from, to }];
}
