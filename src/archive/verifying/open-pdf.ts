import type { ReadAttachment } from '../../pdf/index.ts';
import type { World } from '../../world/index.ts';
import type { Damage } from '../verification.ts';
import { areEqual } from '../are-equal.ts';

/** A bound PDF that was read to its last object. */
export interface FoundPdf {
  readonly attachments: readonly ReadAttachment[];
  /** The program that made it, as it says itself; empty where it says none. */
  readonly producer: string;
  /** What is broken in it, as far as it can tell itself. */
  readonly damage: readonly Damage[];
}

/** PDFs larger than this are refused, in bytes: 512 MiB, as inside a bag. */
const greatestPdf = 536_870_912;

/** Reads a bound PDF, or says why it is none of this program's. */
export async function openPdf(
  world: World,
  path: string,
): Promise<FoundPdf | { readonly problem: string }> {
  if ((world.sizeOf(path) ?? 0) > greatestPdf)
    return { problem: `it has more than ${greatestPdf} bytes` };
  const answer = world.read(path);
  if (!('bytes' in answer)) return { problem: 'it cannot be read any more' };
  const { brokenObjects, md5, readAttachments, readMetadata, readPdf } =
    await import('../../pdf/index.ts');
  const file = readPdf(answer.bytes);
  if ('problem' in file) return { problem: `it is no sound PDF: ${file.problem}` };
  const broken = brokenObjects(file).map((message) => ({ message }));
  // What is broken is not read on: it may be made to fill the memory.
  if (broken.length > 0) return { attachments: [], producer: '', damage: broken };
  const attachments = readAttachments(file);
  const damage = attachments
    .filter(
      ({ bytes, checkSum, size }) =>
        checkSum === undefined ||
        size !== bytes.length ||
        !areEqual(checkSum, md5(bytes)),
    )
    .map(({ name }) => ({
      path: name,
      message: 'it does not have the size and check sum that the PDF gives for it',
    }));
  const isOurs = attachments.some(({ name }) => name === 'project.yaml');
  if (!isOurs && damage.length === 0)
    return { problem: 'it carries no project.yaml, so it is no package of sumzero' };
  const producer = readMetadata(file).information.get('Producer') ?? '';
  return { attachments, producer, damage };
}
