import { naturalOrder } from '../../project/index.ts';
import type { World } from '../../world/index.ts';
import { below } from '../bag-place.ts';

/** Folders are searched so deep; a link that leads back to a folder above would have no end. */
const deepest = 24;

/** The bags below a folder, and the folders that lie too deep to be searched. */
export interface BagsBelow {
  /** Paths from the folder on, in natural order. */
  readonly bags: readonly string[];
  readonly unsearched: readonly string[];
}

/** Every zip below a folder, hidden or not: nothing that may be a bag is passed over. */
export function bagsBelow(world: World, folder: string): BagsBelow {
  const bags: string[] = [];
  const unsearched: string[] = [];
  const search = (inside: string, depth: number): void => {
    for (const name of world.list(inside === '' ? folder : below(folder, inside)) ??
      []) {
      const path = inside === '' ? name : `${inside}/${name}`;
      if (name.endsWith('/')) {
        if (depth < deepest) search(path.slice(0, -1), depth + 1);
        else unsearched.push(path);
      } else if (/\.zip$/iu.test(name)) bags.push(path);
    }
  };
  search('', 0);
  return { bags: bags.sort(naturalOrder), unsearched };
}
