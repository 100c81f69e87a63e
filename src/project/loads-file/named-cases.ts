import type { BeamFile } from '../kinds/beam/beam-file.ts';
import type { LoadLine, PerCase } from '../kinds/beam/load-line.ts';
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
  if (line.kind === 'reaction') return [];
  const sizes = sizesOf(line);
  const byCase =
    sizes?.kind === 'cases' ? sizes.cases.map((entry) => entry.name.value) : [];
  const own = line.kind === 'area' ? undefined : line.case;
  return own === undefined ? byCase : [own.value, ...byCase];
}

/** What may be given by case; undefined for lines of one case, and for areas, which name none themselves. */
function sizesOf(
  line: Exclude<LoadLine, { kind: 'reaction' }>,
): PerCase<unknown> | undefined {
  switch (line.kind) {
    case 'point':
      return line.point;
    case 'uniform':
      return line.uniform;
    case 'varying':
      return line.varying;
    case 'couple':
      return line.couple;
    case 'area':
    case 'temperature':
    case 'axles':
      return undefined;
  }
}
