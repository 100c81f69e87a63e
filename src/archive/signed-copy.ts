import type { Diagnostic } from '../diagnostics/index.ts';
import type { World } from '../world/index.ts';
import { payload } from './payload-paths.ts';
import type { ArchiveRecord } from './record.ts';

/** A signed PDF as it was read, or why there is none. */
export type SignedReading =
  { readonly bytes: Uint8Array } | { readonly problem: Diagnostic };

/** Reads the signed PDF that is to be kept beside the bound one. */
export function readSigned(world: World, path: string): SignedReading {
  const answer = world.read(path);
  if ('missing' in answer) return unreadable(`there is no file ${path}`);
  if ('refused' in answer)
    return unreadable(`${path} cannot be read: ${answer.refused}`);
  const isPdf = startsWith(answer.bytes, new TextEncoder().encode('%PDF-'));
  return isPdf ? { bytes: answer.bytes } : unreadable(`${path} is no PDF`);
}

/** What the record says of a signed PDF, and the remark on it where there is one. */
export function compareSigned(
  bound: Uint8Array,
  signed: Uint8Array,
  path: string,
): {
  readonly entry: NonNullable<ArchiveRecord['signed']>;
  readonly remarks: readonly Diagnostic[];
} {
  if (!startsWith(signed, bound))
    return {
      entry: { path: payload.signed, comparison: 'not compared' },
      remarks: [
        remarked(
          'signed-not-compared',
          `${path} does not begin with the bytes of the bound PDF: it is kept, and marked as not compared`,
        ),
      ],
    };
  return {
    entry: { path: payload.signed, comparison: 'same start' },
    remarks:
      signed.length > bound.length
        ? []
        : [
            remarked(
              'signed-adds-nothing',
              `${path} is the bound PDF to the byte and bears no signature`,
            ),
          ],
  };
}

function startsWith(bytes: Uint8Array, start: Uint8Array): boolean {
  return (
    bytes.length >= start.length && start.every((byte, index) => bytes[index] === byte)
  );
}

function unreadable(message: string): SignedReading {
  return {
    problem: {
      severity: 'error',
      code: 'signed-unreadable',
      message,
      hints: ['name the PDF as it came from signing'],
    },
  };
}

function remarked(
  code: 'signed-not-compared' | 'signed-adds-nothing',
  message: string,
): Diagnostic {
  return { severity: 'remark', code, message, hints: [] };
}
