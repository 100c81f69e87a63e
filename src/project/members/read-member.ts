import type { Span } from '../../diagnostics/index.ts';
import { beamFile, type BeamFile } from '../kinds/beam/beam-file.ts';
import { readBeam } from '../kinds/beam/read-beam.ts';
import type { MemberDefinition, Project } from '../definitions.ts';
import type { Premises } from '../premises.ts';
import type { Reading } from '../reading.ts';
import { firstLine } from '../shape/misfit.ts';
import { present } from '../shape/present.ts';
import { oneOf } from '../shape/text.ts';
import { entryOf, type MapTree, type Tree } from '../yaml/tree.ts';

/** A member's file, read so far as it needs nothing else of the folder. */
export interface MemberFile {
  readonly reading: Reading;
  /** The mark, or the file's name where it has none. */
  readonly mark: string;
  /** The place of the mark; absent where the file gives none. */
  readonly markSpan?: Span;
  readonly kind: string;
  readonly title?: string;
  /** Absent where the file is no beam, or none that can be read. */
  readonly beam?: Partial<BeamFile>;
}

/** The mark under which a member's mistakes are reported: its own, or its file's name. */
export function markOf(tree: Tree | undefined, path: string): string {
  const written = tree?.kind === 'map' ? entryOf(tree, 'mark') : undefined;
  const name = path.replace(/^.*\//, '').replace(/\.yaml$/, '');
  return written?.kind === 'text' && written.text !== '' ? written.text : name;
}

const notYet: Readonly<Record<string, string>> = {
  truss: 'trusses are not worked yet',
  frame: 'frames are not worked yet',
};
const kinds = oneOf('beam', 'truss', 'frame');

/** First reading of a member's file: its form. The kind decides which. */
export function openMember(tree: Tree, reading: Reading): MemberFile {
  const mark = markOf(tree, reading.file);
  if (tree.kind !== 'map') {
    beamFile.read(tree, reading);
    return { reading, mark, kind: 'beam' };
  }
  const title = entryOf(tree, 'title');
  const kind = readKind(tree, reading);
  return present<MemberFile>({
    reading,
    mark,
    markSpan: entryOf(tree, 'mark')?.span,
    // What is of no known kind stands among the faulty as a beam, the only kind there is so far.
    kind: kind ?? 'beam',
    title: title?.kind === 'text' ? title.text : undefined,
    beam: kind === 'beam' ? beamFile.readParts(tree, reading) : undefined,
  });
}

/** The kind of a member; undefined with a report where it is missing or unknown, with a report too where it is not worked yet. */
function readKind(tree: MapTree, reading: Reading): string | undefined {
  const written = entryOf(tree, 'kind');
  if (written === undefined) {
    reading.report({
      code: 'missing-key',
      message: '`kind` is missing: the kind of member',
      span: firstLine(tree.span, reading.text),
      hints: ['add `kind: beam`'],
    });
    return undefined;
  }
  const kind = kinds.read(written, reading);
  const excuse = kind === undefined ? undefined : notYet[kind];
  if (excuse !== undefined)
    reading.report({
      code: 'not-supported',
      message: excuse,
      span: written.span,
      hints: ['work it by hand, and enter what it delivers as loads'],
    });
  return kind;
}

/** Second reading, with the rest of the folder at hand; undefined where the member holds an error. */
export function readMember(
  file: MemberFile,
  premises: Premises,
): MemberDefinition | undefined {
  const definition =
    file.beam === undefined ? undefined : readBeam(file.beam, premises, file.reading);
  return file.reading.hasFailed() ? undefined : definition;
}

/** How a member stands in the list of those at fault. */
export function faultyEntry(file: MemberFile): Project['faulty'][number] {
  const { mark, kind, title, reading } = file;
  return { mark, kind, ...(title === undefined ? {} : { title }), file: reading.file };
}
