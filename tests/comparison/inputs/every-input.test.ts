import { describe, expect, test } from 'vitest';
import { compareInputs } from '../../../src/comparison/inputs/compare-inputs.ts';
import type { InputChange } from '../../../src/comparison/index.ts';
import type { BeamDefinition, Project } from '../../../src/project/index.ts';
import { demoFiles, projectOf } from '../../support/demo-edit.ts';

type Path = readonly (string | number)[];

/** Keys that say nothing of their own: places in files, how a value was written, what names it inside the program. */
const silentKeys = [
  'span',
  'markSpan',
  'supportsSpan',
  'file',
  'id',
  'origin',
  'unit',
  'compound',
  'dimension',
  'relative',
  'given',
  'taken',
];

/** Lists whose texts are prose or limits, not the spelling of a quantity. */
const proseLists = ['assumptions', 'references', 'deflectionLimits'];

function isSilent(path: Path, leaf: unknown): boolean {
  const last = path.at(-1);
  if (path.some((key) => silentKeys.includes(String(key)))) return true;
  if (last === 'text' && !path.some((key) => proseLists.includes(String(key))))
    return true;
  // A sort cannot be changed alone; that of a case is a word like others.
  if (last === 'kind' && !path.includes('cases')) return true;
  return typeof leaf === 'object' && !isPlace(leaf);
}

/** What follows from another key of the project: the order from the list that lays it down, a name from its key. */
function followsInProject([, list, , key]: Path): boolean {
  const isNamed = list === 'sections' || list === 'materials' || list === 'areas';
  return list === 'sheetOrder' || list === 'given' || (isNamed && key === 'name');
}

/** What follows from another key of a member. */
function followsInMember(path: Path, beam: BeamDefinition): boolean {
  const [list, , key] = path;
  switch (String(list)) {
    case 'loads':
      return followsInLoad(path, beam);
    case 'temperatures':
      return key === 'depth' || key === 'expansion';
    case 'hinges':
      return key === 'x';
    case 'material':
      return path[1] !== 'name' && beam.material?.name !== undefined;
    case 'sections':
      return followsInSections(path, beam);
    default:
      return false;
  }
}

function followsInLoad([, place, key, ...rest]: Path, beam: BeamDefinition): boolean {
  const load = beam.loads[Number(place)];
  if (load?.from?.kind === 'self-weight') return true;
  if (load?.from?.kind !== 'area') return false;
  // Its intensity follows from the area load, and its first case speaks for its line.
  const first = beam.loads.find(({ span }) => span.start === load.span.start);
  return (
    first !== load || key === 'sizes' || key === 'case' || rest.includes('pressure')
  );
}

// Stretches follow one another from the first point to the last; a name stands for its values.
function followsInSections([, place, key, inner]: Path, beam: BeamDefinition): boolean {
  if (key !== 'section') return key === 'to' || place === 0;
  return beam.sections[Number(place)]?.section.name !== undefined && inner !== 'name';
}

function isPlace(value: unknown): value is { readonly x: number } {
  return (
    typeof value === 'object' && value !== null && 'x' in value && !('span' in value)
  );
}

/** Every leaf of a value with its path; a place on a beam is one. */
function leavesOf(
  value: unknown,
  path: Path = [],
): readonly (readonly [Path, unknown])[] {
  if (typeof value !== 'object' || value === null || isPlace(value))
    return [[path, value]];
  return Object.entries(value).flatMap(([key, inner]) =>
    leavesOf(inner, [...path, Array.isArray(value) ? Number(key) : key]),
  );
}

/** True where a change was told, and no other besides; a name that changes alone leaves others that still speak of it. */
function isTold(changes: readonly InputChange[], path: Path): boolean {
  const isName =
    ['mark', 'name', 'entry'].includes(String(path.at(-1))) ||
    path.includes('alternatives');
  return isName ? changes.length > 0 : changes.length === 1;
}

function changedAt(value: unknown, [key, ...rest]: Path): unknown {
  if (key === undefined) return otherThan(value);
  if (Array.isArray(value))
    return value.map((one: unknown, place) =>
      place === key ? changedAt(one, rest) : one,
    );
  const known = value as Readonly<Record<string, unknown>>;
  return { ...known, [key]: changedAt(known[key], rest) };
}

function otherThan(leaf: unknown): unknown {
  if (isPlace(leaf)) return { x: leaf.x + 0.137 };
  if (typeof leaf === 'number') return leaf * 1.25 + 0.1;
  if (typeof leaf === 'boolean') return !leaf;
  return `${String(leaf)} otherwise`;
}

describe.each(['tarn-boathouse', 'quarry-road-depot'])('%s', (name) => {
  const project = projectOf(demoFiles(name));

  test('every input of project.yaml and loads.yaml is told once where it changes', () => {
    const { definition, loads } = project;
    const alone: Project = { ...project, members: [] };
    const paths = leavesOf({ definition, loads })
      .filter(([path, leaf]) => !isSilent(path, leaf) && !followsInProject(path))
      .map(([path]) => path);
    expect(paths.length).toBeGreaterThan(50);
    const untold = paths.filter((path) => {
      const other = changedAt(alone, path) as Project;
      return !isTold(compareInputs(alone, other), path);
    });
    expect(untold.map((path) => path.join('.'))).toEqual([]);
  });

  test('every input of a member is told once where it changes', () => {
    const untold = project.members.flatMap((beam) => {
      const paths = leavesOf(beam)
        .filter(([path, leaf]) => !isSilent(path, leaf) && !followsInMember(path, beam))
        .map(([path]) => path);
      expect(paths.length).toBeGreaterThan(12);
      const alone: Project = { ...project, members: [beam] };
      return paths
        .filter((path) => {
          const other = changedAt(alone, ['members', 0, ...path]) as Project;
          return !isTold(compareInputs(alone, other), path);
        })
        .map((path) => `${beam.mark} ${path.join('.')}`);
    });
    expect(untold).toEqual([]);
  });
});
