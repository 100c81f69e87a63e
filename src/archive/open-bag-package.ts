import type { OpenBag } from '../bag/index.ts';
import type { Outcome } from '../diagnostics/index.ts';
import type { RememberedFile, World } from '../world/index.ts';
import {
  belongsToFolder,
  carriedFolder,
  unreadable,
  withoutInputs,
} from './carried-folder.ts';
import type { OpenedPackage } from './opened-package.ts';
import { payload } from './payload-paths.ts';
import { readRecord } from './record-file.ts';

/** Opens a bag by the project folder that it keeps. */
export async function openBagPackage(
  world: World,
  path: string,
): Promise<Outcome<OpenedPackage>> {
  const { openBag } = await import('../bag/index.ts');
  const { value: bag, diagnostics } = await openBag(world, path);
  if (bag === undefined) return { diagnostics };
  const kept = await keptIn(bag);
  bag.close();
  if (kept === undefined)
    return {
      diagnostics: [unreadable(path, 'a file in it is not as its zip says')],
    };
  const { files, record, results } = kept;
  if (!files.some((file) => file.path === 'project.yaml'))
    return { diagnostics: [withoutInputs(path)] };
  const reading = record === undefined ? undefined : readRecord(record);
  return {
    value: {
      kind: 'bag',
      path,
      world: carriedFolder(world, path, files),
      folder: path,
      ...(results === undefined ? {} : { results }),
      ...(reading?.kind === 'record' ? { record: reading.record } : {}),
    },
    diagnostics: [],
  };
}

/** What of a bag is needed to work it again. */
interface Kept {
  readonly files: readonly RememberedFile[];
  readonly record: string | undefined;
  readonly results: string | undefined;
}

/** Undefined where a file of the bag cannot be read as its zip says. */
async function keptIn(bag: OpenBag): Promise<Kept | undefined> {
  const wanted = bag.files
    .map(({ path }) => path)
    .filter(
      (path) =>
        path.startsWith(payload.definition) &&
        belongsToFolder(path.slice(payload.definition.length)),
    );
  try {
    const files: RememberedFile[] = [];
    for (const path of wanted) {
      const bytes = await bag.read(path);
      if (bytes !== undefined)
        files.push({ path: path.slice(payload.definition.length), bytes });
    }
    return {
      files,
      record: textOf(await bag.read(payload.record)),
      results: textOf(await bag.read(payload.results)),
    };
  } catch {
    // Whatever the reader of zips threw at these bytes.
    return undefined;
  }
}

function textOf(bytes: Uint8Array | undefined): string | undefined {
  return bytes === undefined ? undefined : new TextDecoder().decode(bytes);
}
