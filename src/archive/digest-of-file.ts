import { startDigest, type World } from '../world/index.ts';

const pieceLength = 1_048_576;

/** SHA-256 of a file, read piece by piece; undefined where there is none that can be opened. */
export function digestOfFile(world: World, path: string): string | undefined {
  const answer = world.open(path);
  if (!('file' in answer)) return undefined;
  const { file } = answer;
  const digesting = startDigest();
  try {
    for (let at = 0; at < file.size; at += pieceLength)
      digesting.add(file.readAt(at, Math.min(pieceLength, file.size - at)));
  } catch {
    // The disk failed under it.
    return undefined;
  } finally {
    file.close();
  }
  return digesting.end();
}
