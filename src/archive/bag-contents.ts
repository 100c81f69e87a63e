import type { BagContents, BagLine, KeptFile } from '../bag/index.ts';
import type { Bound } from '../pipeline.ts';
import type { World } from '../world/index.ts';
import { bagName } from './bag-place.ts';
import { payload } from './payload-paths.ts';
import type { ArchiveRecord } from './record.ts';
import { writeRecord } from './record-file.ts';

/** The texts of the licences of the faces that a PDF embeds, in `fonts/`. */
const licences: readonly string[] = ['OFL-KaTeX.txt', 'OFL-SourceSerif4.txt'];

/** What is kept of a bound package. */
export interface Kept {
  readonly bound: Bound & Required<Pick<Bound, 'pdf' | 'json' | 'sources'>>;
  readonly record: ArchiveRecord;
  /** The signed PDF, where there is one. */
  readonly signed?: Uint8Array;
}

/** The files and the lines of a bag. */
export function bagContents(
  world: World,
  { bound, record, signed }: Kept,
): BagContents {
  const encoder = new TextEncoder();
  const { pdf, json, sources, checkPrints } = bound;
  return {
    payload: [
      kept(payload.package, pdf),
      ...(signed === undefined ? [] : [kept(payload.signed, signed)]),
      ...(checkPrints === undefined ? [] : [kept(payload.checkPrints, checkPrints)]),
      kept(payload.results, encoder.encode(json)),
      kept(payload.record, encoder.encode(writeRecord(record))),
      ...sources.map(({ path, bytes }) => kept(`${payload.definition}${path}`, bytes)),
      ...licences.map((name) =>
        kept(`${payload.licences}${name}`, world.ownFile(`fonts/${name}`)),
      ),
    ],
    info: infoLines(bound, record),
  };
}

/** A file by its path inside the bag. */
function kept(path: string, bytes: Uint8Array): KeptFile {
  return { path: path.slice('data/'.length), bytes };
}

/** Lines of bag-info.txt: the labels of RFC 8493, 2.2.2, as far as they fit, and the program. No date but the revision's. */
function infoLines({ worked }: Bound, record: ArchiveRecord): readonly BagLine[] {
  const { project, revision, program } = record;
  const number = project.number;
  const identifier =
    number === null ? null : [number, ...(revision === null ? [] : [revision.mark])];
  const definition = worked.project?.definition;
  const lines: readonly (readonly [string, string | null])[] = [
    ['Source-Organization', project.office],
    ['External-Description', project.title],
    ['External-Identifier', identifier === null ? null : identifier.join('-')],
    ['Bagging-Date', revision === null ? null : revision.date],
    ['Bag-Group-Identifier', number],
    [
      'Internal-Sender-Identifier',
      definition === undefined ? null : bagName(definition),
    ],
    ['Internal-Sender-Description', describe(record)],
    ['Bag-Software-Agent', `${program.name} ${program.version}`],
  ];
  return lines.flatMap(([label, value]) =>
    value === null || value.trim() === ''
      ? []
      : [{ label, value: value.trim().replace(/\s+/gu, ' ') }],
  );
}

function describe({ status, project, asIs }: ArchiveRecord): string {
  const exception = asIs.length === 0 ? '' : ', archived as it is';
  return `Calculation package, ${project.discipline}, ${status}${exception}`;
}
