import type { Span } from '../diagnostics/index.ts';
import type { OpenMember } from './check-members.ts';
import type {
  BeamDefinition,
  LoadsDefinition,
  ProjectDefinition,
} from './definitions.ts';
import type { Folder } from './folder/gather.ts';
import type { LoadsFile } from './loads-file.ts';
import type { ProjectFile } from './project-file.ts';
import type { OpenFile } from './reading.ts';

/** What was read of a folder, as far as one can tell from it what nothing uses. */
export interface ReadFolder {
  readonly definition: ProjectDefinition;
  readonly loads: LoadsDefinition;
  readonly members: readonly OpenMember[];
  readonly folder: Folder;
}

/**
 * Remarks on points, cases, assumptions, references and pictures that nothing uses. Where a
 * member is at fault nobody knows what it would have used, so that only points are looked at.
 */
export function remarkOnUnused(
  read: ReadFolder,
  files: {
    readonly project: OpenFile<ProjectFile>;
    readonly loads: OpenFile<LoadsFile> | undefined;
  },
): void {
  for (const { definition, file } of read.members)
    if (definition !== undefined)
      for (const point of unusedPoints(definition))
        file.reading.report({
          code: 'point-unused',
          severity: 'remark',
          message: `nothing stands at point \`${point.name}\``,
          span: point.span,
          hints: ['leave it if the diagrams should name it'],
        });
  remarkOnPictures(read, files.project);
  if (read.members.some(({ definition }) => definition === undefined)) return;
  remarkOnIds(read, files.project);
  if (files.loads !== undefined) remarkOnCases(read, files.loads);
}

function unusedPoints(beam: BeamDefinition): BeamDefinition['points'] {
  const places = [
    ...beam.loads.flatMap((load) =>
      load.kind === 'distributed' ? [load.start, load.end] : [load.at],
    ),
    ...beam.carried.map((reaction) => reaction.at),
    ...beam.sections.flatMap(({ from, to }) => [from, to]),
  ];
  const used = new Set([
    beam.points[0]?.name,
    beam.points.at(-1)?.name,
    ...beam.supports.map((support) => support.point),
    ...beam.hinges.map((hinge) => hinge.point),
    ...places.map((place) => place.point),
    ...Object.values(beam.bracing ?? {}).flatMap((braced) => braced.split(', ')),
  ]);
  return beam.points.filter((point) => !used.has(point.name));
}

function remarkOnIds(read: ReadFolder, project: OpenFile<ProjectFile>): void {
  const used = new Set(
    read.members.flatMap(({ definition }) =>
      definition === undefined
        ? []
        : [definition, ...definition.loads, ...definition.carried].flatMap(
            (one) => one.uses,
          ),
    ),
  );
  const remark = (kind: 'assumption' | 'reference', id: string, span: Span): void =>
    project.reading.report({
      code: `${kind}-unused`,
      severity: 'remark',
      message: `no member says that it leans on ${kind} ${id}`,
      span,
      hints: [`name it with \`uses: ${id}\` where it counts`],
    });
  for (const { value, span } of project.parts.assumptions ?? [])
    if (!used.has(value.id)) remark('assumption', value.id, span);
  for (const { value, span } of project.parts.references ?? [])
    if (!used.has(value.id)) remark('reference', value.id, span);
}

function remarkOnCases(read: ReadFolder, loads: OpenFile<LoadsFile>): void {
  const used = new Set(
    read.members.flatMap(({ definition }) => [
      ...(definition?.loads ?? []).map((load) => load.case),
      ...(definition?.supports ?? []).map((support) => support.settlement?.case),
    ]),
  );
  for (const { name } of loads.parts.cases ?? [])
    if (!used.has(name.value))
      loads.reading.report({
        code: 'case-unused',
        severity: 'remark',
        message: `no member carries a load of case ${name.value}`,
        span: name.span,
        hints: ['its results are 0 all through'],
      });
}

function remarkOnPictures(read: ReadFolder, project: OpenFile<ProjectFile>): void {
  const { images, sheets, templates } = read.folder;
  const texts = [...sheets, ...Object.values(templates)];
  for (const path of Object.keys(images)) {
    const name = path.slice(path.lastIndexOf('/') + 1);
    if (path === read.definition.logo || texts.some((text) => text.includes(name)))
      continue;
    project.reading.report({
      code: 'picture-unused',
      severity: 'remark',
      message: `nothing places the picture ${path}`,
      span: { file: project.reading.file, start: 0, end: 0 },
    });
  }
}
