import type { World } from '../world/index.ts';
import type { ArchiveRecord } from './record.ts';

/** A project that can be worked, wherever it lies: in its folder, in a bag, or inside a bound PDF. */
export interface OpenedPackage {
  readonly kind: 'folder' | 'bag' | 'pdf';
  /** The path that was opened, as it was given. */
  readonly path: string;
  /** Where `folder` can be read: for a bag and a PDF a world in memory of the files that they carry. */
  readonly world: World;
  /** The project folder in that world. */
  readonly folder: string;
  /** results.json as it was issued; absent for a folder, and where a bag or PDF has none. */
  readonly results?: string;
  /** The record of a bag; absent where it cannot be read. */
  readonly record?: ArchiveRecord;
  /** The bytes of a bound PDF. */
  readonly pdf?: Uint8Array;
}
