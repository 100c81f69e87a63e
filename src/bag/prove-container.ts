import type { BagFinding, OpenBag } from './bag.ts';
import { byCodeUnit } from './manifest.ts';
import { shown } from './safe-paths.ts';
import { tagPaths } from './tag-files.ts';
import type { WeighedFile } from './weigh-files.ts';
import { layZip } from './zip-layout.ts';

/**
 * Compares the zip around the files of a whole bag with the one that `writeBag` lays for them: headers, dates,
 * modes, the directory, and that nothing stands between or behind. `files` are known to be in order.
 */
export function proveContainer(
  zip: OpenBag['zip'],
  files: readonly WeighedFile[],
): readonly BagFinding[] {
  const parts = layZip(files.toSorted(inOrderLaid));
  for (const { at, bytes, what } of parts) {
    const there = zip.readAt(at, bytes.length);
    const first = bytes.findIndex((byte, index) => byte !== there[index]);
    if (first >= 0) return told(`${shown(what)} differs at byte ${at + first}`);
  }
  const last = parts.at(-1);
  const end = (last?.at ?? 0) + (last?.bytes.length ?? 0);
  return end === zip.size ? [] : told(`it has ${zip.size} bytes where ${end} are due`);
}

const told = (difference: string): readonly BagFinding[] => [
  {
    kind: 'container',
    message: `every file in the bag is intact, but the zip around them is not as it was written: ${difference}`,
  },
];

/** Tag files first, in their order, then the payload by its paths. */
function inOrderLaid(one: WeighedFile, other: WeighedFile): number {
  const [place, otherPlace] = [
    tagPaths.indexOf(one.path),
    tagPaths.indexOf(other.path),
  ];
  if (place >= 0 && otherPlace >= 0) return place - otherPlace;
  if (place >= 0) return -1;
  return otherPlace >= 0 ? 1 : byCodeUnit(one.path, other.path);
}
