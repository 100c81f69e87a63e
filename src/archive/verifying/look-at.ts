import type { World } from '../../world/index.ts';
import { digestOfFile } from '../digest-of-file.ts';

/** SHA-256 of a whole file and its first bytes as letters, or why it cannot be read, a clause. */
export function lookAt(
  world: World,
  path: string,
): { readonly sha256: string; readonly start: string } | { readonly problem: string } {
  const failed = { problem: 'the disk failed while it was read' };
  const answer = world.open(path);
  if ('missing' in answer) return { problem: 'there is no such file' };
  if ('refused' in answer) return { problem: `it cannot be opened: ${answer.refused}` };
  const { file } = answer;
  try {
    const start = String.fromCharCode(...file.readAt(0, 8));
    const sha256 = digestOfFile(world, path);
    return sha256 === undefined ? failed : { sha256, start };
  } catch {
    // `OpenFile` has no other reason to throw.
    return failed;
  } finally {
    file.close();
  }
}
