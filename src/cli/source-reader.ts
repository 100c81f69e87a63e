import { indexLines, type LineIndex } from '../diagnostics/index.ts';
import type { World } from '../world/index.ts';

/** The text of a file of a project folder, ready for places to be found in it; undefined where there is none to show. */
export type SourceReader = (file: string) => LineIndex | undefined;

/** Definition files are smaller; what is larger was refused and is not shown either. */
const greatestShown = 1_000_000;

/** Reads the files that diagnostics point into, each once. */
export function sourceReader(world: World, folder: string): SourceReader {
  const read = new Map<string, LineIndex | undefined>();
  return (file) => {
    if (!read.has(file)) read.set(file, readLines(world, pathIn(folder, file)));
    return read.get(file);
  };
}

function readLines(world: World, path: string): LineIndex | undefined {
  if ((world.sizeOf(path) ?? 0) > greatestShown) return undefined;
  const answer = world.read(path);
  if (!('bytes' in answer)) return undefined;
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(answer.bytes);
    return text.includes('\0') ? undefined : indexLines(text);
  } catch {
    return undefined;
  }
}

/** The path of a file of a folder as the user would write it. */
export function pathIn(folder: string, file: string): string {
  if (folder === '.' || folder === './') return file;
  return folder.endsWith('/') ? folder + file : `${folder}/${file}`;
}
