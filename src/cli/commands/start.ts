import type { FileKindName } from '../../index.ts';
import type { World, WriteAnswer } from '../../world/index.ts';
import type { Call, Command } from '../command.ts';
import { good, usersMistake } from '../exit-codes.ts';
import { paintFor } from '../paint.ts';
import { folderIn } from '../project-folder.ts';
import { showUsageFault } from '../show-diagnostic.ts';
import { pathIn } from '../source-reader.ts';
import { schemaFolder, starterFiles } from '../starter/starter-files.ts';
import type { Units } from '../starter/units.ts';
import { unknownWord, type UsageFault } from '../usage-fault.ts';

/** Writes a small project to begin with. */
export const start: Command = {
  name: 'start',
  takes: 'FOLDER',
  summary: 'write a small commented project to begin with',
  about: [
    'Makes the folder and writes a project of two members into it, with comments, that binds as it is. The schemas of its files lie beside them in .schemas/, where editors find them without a network. A folder that is not empty is refused.',
  ],
  options: {
    units: {
      type: 'string',
      value: 'us|si',
      about: 'units that the package prints; us unless told',
    },
  },
  examples: [
    { line: 'sumzero start shelter', does: 'begin a project in US units' },
    { line: 'sumzero start shelter --units si', does: 'begin one in SI units' },
  ],
  run: startProject,
};

async function startProject({
  given,
  world,
  streams,
}: Call): Promise<number | UsageFault> {
  const place = folderIn(given, 'start');
  if ('fault' in place) return place.fault;
  const { folder } = place;
  const units = given.value('units') ?? 'us';
  if (!isUnits(units)) return unknownWord('system of units', units, ['us', 'si']);
  const inside = world.list(folder) ?? [];
  if (inside.length > 0) {
    return {
      message: `the folder ${folder} is not empty: it holds ${inside.slice(0, 3).join(', ')}${inside.length > 3 ? ' …' : ''}`,
      hints: ['name a folder that is empty or does not exist yet'],
    };
  }
  const files = { ...starterFiles(units), ...(await schemas()) };
  const refusal = writeAll(world, folder, files);
  if (refusal !== undefined) {
    streams.err(showUsageFault(refusal, paintFor(streams.coloured.err)));
    return usersMistake;
  }
  const shown = Object.keys(starterFiles(units)).map(
    (file) => `  ${pathIn(folder, file)}\n`,
  );
  streams.out(`Wrote a project of two members:\n${shown.join('')}`);
  streams.out(`Bind it with: sumzero bind ${folder}\n`);
  return good;
}

function isUnits(word: string): word is Units {
  return word === 'us' || word === 'si';
}

/** The schemas of the kinds that a new project has or may soon have. */
async function schemas(): Promise<Readonly<Record<string, string>>> {
  const { fileKinds, schemaFor } = await import('../../index.ts');
  const known = (Object.keys(fileKinds) as FileKindName[]).flatMap((kind) => {
    const schema = schemaFor(kind);
    return schema === undefined
      ? []
      : [
          [
            `${schemaFolder}/${kind}.json`,
            `${JSON.stringify(schema, null, 2)}\n`,
          ] as const,
        ];
  });
  return Object.fromEntries(known);
}

function writeAll(
  world: World,
  folder: string,
  files: Readonly<Record<string, string>>,
): UsageFault | undefined {
  const encoder = new TextEncoder();
  for (const part of ['', 'members', schemaFolder]) {
    const path = part === '' ? folder : pathIn(folder, part);
    const fault = refused(path, world.makeFolder(path));
    if (fault !== undefined) return fault;
  }
  for (const [file, text] of Object.entries(files)) {
    const path = pathIn(folder, file);
    const fault = refused(path, world.write(path, encoder.encode(text)));
    if (fault !== undefined) return fault;
  }
  return undefined;
}

function refused(path: string, answer: WriteAnswer): UsageFault | undefined {
  return 'refused' in answer
    ? {
        message: `${path} cannot be written: ${answer.refused}`,
        hints: ['choose another place'],
      }
    : undefined;
}
