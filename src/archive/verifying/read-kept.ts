import { payloadOf, type OpenBag } from '../../bag/index.ts';
import type { RememberedFile } from '../../world/index.ts';
import type { Damage } from '../verification.ts';

/** The bytes of one file of a bag, or the damage that keeps them from being read. */
export async function readWhole(
  bag: OpenBag,
  path: string,
): Promise<{ readonly bytes: Uint8Array } | Damage> {
  try {
    const bytes = await bag.read(path);
    return bytes === undefined ? { path, message: 'it is missing' } : { bytes };
  } catch {
    // Whatever the reader of zips threw at these bytes.
    return { path, message: 'it cannot be unpacked as the zip says' };
  }
}

/** The files below a folder of a bag (`data/definition/`), with their paths within it. */
export async function readWithin(
  bag: OpenBag,
  folder: string,
): Promise<{ readonly files: readonly RememberedFile[] } | Damage> {
  const inside = folder.replace(/^data\/|\/$/gu, '');
  const { value, diagnostics } = await payloadOf(bag, inside);
  return value === undefined
    ? { path: folder, message: diagnostics.map(({ message }) => message).join('; ') }
    : { files: Object.entries(value).map(([path, bytes]) => ({ path, bytes })) };
}
