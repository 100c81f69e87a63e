import {
  accessSync,
  closeSync,
  constants,
  fsyncSync,
  openSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  writeSync,
  writeFileSync,
} from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { failureName, failureWords } from './disk-words.ts';
import type { WriteAnswer } from './world.ts';

/**
 * Writes a file so that a reader finds the old bytes or the new ones and never half of them: the
 * bytes go to a file beside the target, are forced to the disk, and take the target's name last.
 * A link is followed, what is no ordinary file (a pipe, a terminal) is written straight away.
 */
export function writeSafely(path: string, bytes: Uint8Array): WriteAnswer {
  let beside: string | undefined;
  try {
    const target = endOfLinks(path);
    const present = statSync(target, { throwIfNoEntry: false });
    if (present?.isDirectory() === true)
      return { refused: 'there is a folder of that name' };
    if (present !== undefined && !present.isFile()) {
      writeFileSync(target, bytes);
      return { written: true };
    }
    if (present !== undefined) accessSync(target, constants.W_OK);
    beside = join(
      dirname(target),
      `.${basename(target).slice(0, 200)}.${process.pid}.part`,
    );
    writeAndForce(beside, bytes, present === undefined ? 0o666 : present.mode & 0o777);
    renameSync(beside, target);
    return { written: true };
  } catch (failure) {
    if (beside !== undefined) rmSync(beside, { force: true });
    return { refused: failureWords(failure) };
  }
}

function endOfLinks(path: string): string {
  try {
    return realpathSync(path);
  } catch (failure) {
    if (failureName(failure) === 'ENOENT') return path;
    throw failure;
  }
}

function writeAndForce(path: string, bytes: Uint8Array, mode: number): void {
  const file = openSync(path, 'w', mode);
  try {
    let done = 0;
    while (done < bytes.length) done += writeSync(file, bytes, done);
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}
