import type { Diagnostic, Outcome } from '../../src/diagnostics/index.ts';
import { placeAt } from '../../src/diagnostics/index.ts';
import {
  readProject,
  type BeamDefinition,
  type Project,
} from '../../src/project/index.ts';
import { memoryWorld } from '../../src/world/index.ts';

/** The shortest project.yaml that there is. */
export const shortProject = 'project: { title: Weir crossing }\nunits: us\n';

/** Reads a project folder given as texts by path; project.yaml may be left out. */
export function readFolder(
  files: Readonly<Record<string, string | Uint8Array>>,
): Outcome<Project> {
  const all = { 'project.yaml': shortProject, ...files };
  const placed = Object.entries(all).map(
    ([path, text]) => [`p/${path}`, text] as const,
  );
  return readProject(memoryWorld(Object.fromEntries(placed)), 'p');
}

/** The project of a folder without any error; throws with the errors where there are some. */
export function soundFolder(
  files: Readonly<Record<string, string | Uint8Array>>,
): Project {
  const { value, diagnostics } = readFolder(files);
  const errors = diagnostics.filter((one) => one.severity === 'error');
  if (value === undefined || errors.length > 0)
    throw new Error(errors.map((one) => `${one.code}: ${one.message}`).join('\n'));
  return value;
}

/** A beam's file: `rest` replaces what it names of points, supports and loads. */
export function beamYaml(rest: Readonly<Record<string, string>> = {}): string {
  const keys = {
    mark: 'B1',
    kind: 'beam',
    points: '{ A: 0 ft, B: 6 ft, C: 20 ft }',
    supports: '{ A: pin, C: roller }',
    ...rest,
  };
  return Object.entries(keys)
    .map(([key, value]) => `${key}: ${value}\n`)
    .join('');
}

/** The definition of a sound beam. */
export function soundBeam(
  rest: Readonly<Record<string, string>>,
  files: Readonly<Record<string, string>> = {},
): BeamDefinition {
  const beam = soundFolder({ ...files, 'members/b1.yaml': beamYaml(rest) }).members[0];
  if (beam === undefined) throw new Error('no beam');
  return beam;
}

/** Findings on a folder of one beam as `code line:column message`. */
export function findingsOn(
  rest: Readonly<Record<string, string>>,
  files: Readonly<Record<string, string>> = {},
): readonly string[] {
  const text = beamYaml(rest);
  const { diagnostics } = readFolder({ ...files, 'members/b1.yaml': text });
  return diagnostics.map(
    (one) => `${one.code} ${placeOf(one, { 'members/b1.yaml': text, ...files })}`,
  );
}

function placeOf(
  { span, message }: Diagnostic,
  files: Readonly<Record<string, string>>,
): string {
  if (span === undefined) return message;
  const { line, column } = placeAt(
    { path: span.file, text: files[span.file] ?? '' },
    span.start,
  );
  return `${line}:${column} ${message}`;
}
