import type { ReadAnswer, World } from './world.ts';

/** A file that was read: its path below some folder, with forward slashes, and its bytes. */
export interface RememberedFile {
  readonly path: string;
  readonly bytes: Uint8Array;
}

/** A world that remembers what was read through it. */
export interface RememberedReads {
  readonly world: World;
  /** The files of a folder that have been read so far, in the order in which they were first read. */
  readonly within: (folder: string) => readonly RememberedFile[];
}

/**
 * Remembers every file that is read whole, so that what is kept of a folder is to the byte what was
 * worked from. A file that is read again is answered from memory: it cannot have changed meanwhile.
 */
export function rememberReads(world: World): RememberedReads {
  const answers = new Map<string, ReadAnswer>();
  return {
    world: {
      ...world,
      read: (path) => {
        const answer = answers.get(path) ?? world.read(path);
        answers.set(path, answer);
        return answer;
      },
    },
    within: (folder) => {
      const start = folder === '' || folder.endsWith('/') ? folder : `${folder}/`;
      return [...answers].flatMap(([path, answer]) =>
        'bytes' in answer && path.startsWith(start)
          ? [{ path: path.slice(start.length), bytes: answer.bytes }]
          : [],
      );
    },
  };
}
