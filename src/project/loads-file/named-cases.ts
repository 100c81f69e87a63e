import type { BeamFile } from '../kinds/beam/beam-file.ts';
import type { LoadLine } from '../kinds/beam/load-line.ts';
import type { LoadCase } from '../definitions.ts';

/**
 * The load cases of a project without a list of them: those that its loads name, in the order in
 * which they come up, project-wide; where they name none there is one, marked `all`.
 */
export function namedCases(files: readonly Partial<BeamFile>[]): readonly LoadCase[] {
  const marks = files.flatMap((file) => [
    ...(file.loads ?? []).flatMap((line) => marksOfLine(line)),
    ...(file.self_weight === undefined ? [] : [file.self_weight.value]),
    ...(file.supports?.value ?? []).flatMap((entry) => entry.value?.case?.value ?? []),
  ]);
  const cases = marks.length === 0 ? ['all'] : [...new Set(marks)];
  return cases.map((mark) => ({ mark, pattern: false }));
}

function marksOfLine(line: LoadLine): readonly string[] {
  if (line.kind === 'reaction' || line.kind === 'area') return [];
  const sizes =
    line.kind === 'point'
      ? line.point
      : line.kind === 'uniform'
        ? line.uniform
        : line.kind === 'varying'
          ? line.varying
          : line.couple;
  const byCase =
    sizes.kind === 'cases' ? sizes.cases.map((entry) => entry.name.value) : [];
  return line.case === undefined ? byCase : [line.case.value, ...byCase];
}
