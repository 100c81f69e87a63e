import { closeSync, fstatSync, openSync, readSync } from 'node:fs';
import { failureName, failureWords } from './disk-words.ts';
import type { OpenAnswer } from './world.ts';

/** Opens a file of the disk to be read piece by piece; the caller closes it. A folder is refused. */
export function openOnDisk(path: string): OpenAnswer {
  try {
    const file = openSync(path, 'r');
    const found = fstatSync(file);
    if (found.isDirectory()) {
      closeSync(file);
      return { refused: 'it is a folder' };
    }
    return {
      file: {
        size: found.size,
        readAt: (offset, length) => readPiece(file, offset, length),
        close: () => closeSync(file),
      },
    };
  } catch (failure) {
    const name = failureName(failure);
    return name === 'ENOENT' || name === 'ENOTDIR'
      ? { missing: true }
      : { refused: failureWords(failure) };
  }
}

/** As many bytes as there are, at most `length`: one read may give fewer than it was asked for. */
function readPiece(file: number, offset: number, length: number): Uint8Array {
  const piece = new Uint8Array(length);
  let done = 0;
  while (done < length) {
    const read = readSync(file, piece, done, length - done, offset + done);
    if (read === 0) break;
    done += read;
  }
  return piece.subarray(0, done);
}
