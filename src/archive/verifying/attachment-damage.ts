import type { Damage } from '../verification.ts';
import { payload } from '../payload-paths.ts';
import { areEqual } from '../are-equal.ts';

/** What should travel inside a PDF. */
export interface DueAttachments {
  /** The names of all files that must be attached, and no others. */
  readonly due: readonly string[];
  /** The bytes that an attachment must hold. */
  readonly read: (name: string) => Promise<{ readonly bytes: Uint8Array } | Damage>;
}

/** Every attachment of a PDF that is missing, is not due, or does not hold what it should, byte for byte. */
export async function attachmentDamage(
  pdf: Uint8Array,
  { due, read }: DueAttachments,
): Promise<readonly Damage[]> {
  const { readAttachments, readPdf } = await import('../../pdf/index.ts');
  const file = readPdf(pdf);
  if ('problem' in file)
    return [{ path: payload.package, message: `it cannot be read: ${file.problem}` }];
  const attached = new Map(
    readAttachments(file).map(({ name, bytes }) => [name, bytes]),
  );
  const damage: Damage[] = [...attached.keys()]
    .filter((name) => !due.includes(name))
    .map((path) => ({
      path,
      message: 'it travels inside the PDF and does not lie beside it',
    }));
  for (const path of due) {
    const [inside, beside] = [attached.get(path), await read(path)];
    if ('message' in beside) damage.push(beside);
    else if (inside === undefined)
      damage.push({
        path,
        message: 'it lies beside the PDF and does not travel inside it',
      });
    else if (!areEqual(inside, beside.bytes))
      damage.push({
        path,
        message: 'the copy inside the PDF is another than the one beside it',
      });
  }
  return damage;
}
