import type { OpenFile } from '../reading.ts';
import type { ProjectFile } from '../project-file/project-file.ts';
import type { Placed } from '../shape/shape.ts';
import type { ReadFolder } from './read-folder.ts';

/** Remarks on assumptions and references that no member says it leans on. */
export function remarkOnUnusedIds(
  read: ReadFolder,
  project: OpenFile<ProjectFile>,
): void {
  const { assumptions = [], references = [] } = project.parts;
  const used = usedIds(read);
  const remark = (
    kind: 'assumption' | 'reference',
    { value, span }: Placed<{ readonly id: string }>,
  ): void => {
    if (used.has(value.id)) return;
    project.reading.report({
      code: `${kind}-unused`,
      severity: 'remark',
      message: `no member says that it leans on ${kind} ${value.id}`,
      span,
      hints: [`name it with \`uses: ${value.id}\` where it counts`],
    });
  };
  for (const entry of assumptions) remark('assumption', entry);
  for (const entry of references) remark('reference', entry);
}

function usedIds({ members }: ReadFolder): ReadonlySet<string> {
  return new Set(
    members
      .flatMap(({ definition }) =>
        definition === undefined
          ? []
          : [
              definition,
              ...definition.loads,
              ...definition.temperatures,
              ...definition.trains,
              ...definition.carried,
            ],
      )
      .flatMap((one) => one.uses),
  );
}
