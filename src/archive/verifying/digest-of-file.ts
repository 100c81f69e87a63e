import { startDigest, type OpenFile, type World } from '../../world/index.ts';

/** Bytes read at a time: enough that a disk is not kept waiting, little beside the rest of the program. */
const pieceSize = 1_048_576;

/** SHA-256 of a whole file and its first bytes as letters, or why it cannot be read, a clause. */
export function digestOfFile(
  world: World,
  path: string,
): { readonly sha256: string; readonly start: string } | { readonly problem: string } {
  const answer = world.open(path);
  if ('missing' in answer) return { problem: 'there is no such file' };
  if ('refused' in answer) return { problem: `it cannot be opened: ${answer.refused}` };
  const { file } = answer;
  try {
    const start = String.fromCharCode(...file.readAt(0, 8));
    return { sha256: digestOf(file), start };
  } catch {
    // The disk failed under the file; `OpenFile` has no other reason to throw.
    return { problem: 'the disk failed while it was read' };
  } finally {
    file.close();
  }
}

function digestOf(file: OpenFile): string {
  const digesting = startDigest();
  for (let offset = 0; offset < file.size; offset += pieceSize)
    digesting.add(file.readAt(offset, pieceSize));
  return digesting.end();
}
