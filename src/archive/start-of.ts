import type { World } from '../world/index.ts';

/** Enough for the first file name of a zip and the version of a PDF, in bytes. */
const startLength = 64;

/** The first bytes of a file as letters, or why there are none, a phrase. */
export function startOf(
  world: World,
  path: string,
): { readonly letters: string } | { readonly problem: string } {
  const answer = world.open(path);
  if ('missing' in answer) return { problem: 'there is no such file' };
  if ('refused' in answer) return { problem: `it cannot be opened: ${answer.refused}` };
  const { file } = answer;
  try {
    return { letters: String.fromCharCode(...file.readAt(0, startLength)) };
  } catch {
    return { problem: 'the disk failed while it was read' };
  } finally {
    file.close();
  }
}
