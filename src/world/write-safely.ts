import {
  accessSync,
  closeSync,
  constants,
  fsyncSync,
  linkSync,
  lstatSync,
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

/**
 * Writes a file that must not be there yet. The bytes go to a file beside the target, which then gets the
 * target's name by a link: unlike a rename, a link never takes the place of a file that has come meanwhile.
 */
export function writeNewSafely(path: string, bytes: Uint8Array): WriteAnswer {
  const beside = join(
    dirname(path),
    `.${basename(path).slice(0, 200)}.${process.pid}.part`,
  );
  try {
    // A link that leads nowhere counts as a file too: nothing is written through it.
    if (lstatSync(path, { throwIfNoEntry: false }) !== undefined)
      return { refused: 'there is a file of that name' };
    writeAndForce(beside, bytes, 0o666);
    takeName(beside, path);
    return { written: true };
  } catch (failure) {
    return {
      refused:
        failureName(failure) === 'EEXIST'
          ? 'there is a file of that name'
          : failureWords(failure),
    };
  } finally {
    rmSync(beside, { force: true });
  }
}

// Some disks (memory sticks, shares) know no links: there the last look and the rename are an instant apart.
function takeName(beside: string, path: string): void {
  try {
    linkSync(beside, path);
  } catch (failure) {
    const name = failureName(failure);
    if (name !== 'EPERM' && name !== 'ENOTSUP' && name !== 'ENOSYS') throw failure;
    renameSync(beside, path);
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
