import type { Outcome } from '../diagnostics/index.ts';
import type { OpenBag } from './bag.ts';
import { refusal, thrownFault } from './bag-fault.ts';
import { greatestFolder } from './limits.ts';
import { told } from './open-bag.ts';
import { payloadFolder } from './tag-files.ts';

/**
 * The files of a folder of the payload with their bytes, by path within it: `payloadOf(bag, 'definition')` gives what lies in
 * `data/definition/`, as a world of memory takes it. Nothing where there is no such folder. A folder too large to
 * stand in memory, or a file that does not unpack, is a diagnostic.
 */
export async function payloadOf(
  bag: OpenBag,
  inside: string,
): Promise<Outcome<Readonly<Record<string, Uint8Array>>>> {
  const folder = `${payloadFolder}${inside}/`;
  const files = bag.files.filter(({ path }) => path.startsWith(folder));
  const total = files.reduce((sum, { size }) => sum + size, 0);
  if (total > greatestFolder) {
    const reason = `it holds ${total} bytes, and more than ${greatestFolder} are refused`;
    return { diagnostics: [told(folder, refusal(reason))] };
  }
  const read: (readonly [string, Uint8Array])[] = [];
  for (const { path } of files) {
    const bytes = await bag.read(path).catch(thrownFault);
    if (bytes !== undefined && 'code' in bytes)
      return { diagnostics: [told(path, bytes)] };
    if (bytes !== undefined) read.push([path.slice(folder.length), bytes]);
  }
  return { value: Object.fromEntries(read), diagnostics: [] };
}
