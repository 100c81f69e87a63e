import type { FileKindName } from '../../index.ts';
import type { Call, Command } from '../command.ts';
import { good } from '../exit-codes.ts';
import { unknownWord, type UsageFault } from '../usage-fault.ts';

/** Writes the JSON Schema of a kind of definition file. */
export const schema: Command = {
  name: 'schema',
  takes: '[KIND]',
  summary: 'write the JSON Schema of a kind of file, for an editor',
  about: [
    'The schema tells an editor the keys of a definition file, what each holds and what is left out at will. It is made from the same description that reads the files. Without a kind this command lists the kinds.',
  ],
  options: {},
  examples: [
    { line: 'sumzero schema beam', does: 'write the schema of a beam' },
    { line: 'sumzero schema', does: 'list the kinds of definition files' },
  ],
  run: writeSchema,
};

async function writeSchema({ given, streams }: Call): Promise<number | UsageFault> {
  const { fileKinds, schemaFor } = await import('../../index.ts');
  const kinds = (Object.keys(fileKinds) as FileKindName[]).filter(
    (kind) => schemaFor(kind) !== undefined,
  );
  const [asked] = given.positionals;
  if (asked === undefined) {
    const width = Math.max(...kinds.map((kind) => kind.length));
    for (const kind of kinds)
      streams.out(
        `${kind.padEnd(width)}  ${fileKinds[kind].path}: ${fileKinds[kind].about}\n`,
      );
    return good;
  }
  const kind = kinds.find((known) => known === asked);
  if (kind === undefined) {
    return Object.hasOwn(fileKinds, asked)
      ? {
          message: `files of the kind ${asked} are not read yet`,
          hints: [`known: ${kinds.join(', ')}`],
        }
      : unknownWord('kind of definition file', asked, kinds);
  }
  streams.out(`${JSON.stringify(schemaFor(kind), null, 2)}\n`);
  return good;
}
