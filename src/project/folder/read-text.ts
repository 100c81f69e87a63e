import type { Diagnostic } from '../../diagnostics/index.ts';
import { digest, type World } from '../../world/index.ts';
import type { DefinitionFile } from '../definitions.ts';

/** Files larger than this are refused, in bytes: 1 MB. */
export const greatestFile = 1_000_000;

/** What reading a file can answer: its content, a report why not, or that there is none. */
export type FileAnswer<T> =
  | { readonly kind: 'read'; readonly file: T }
  | { readonly kind: 'missing' }
  | { readonly kind: 'refused'; readonly diagnostic: Diagnostic };

/** The bytes of a file of the folder, at most 1 MB. `path` is relative to `folder`. */
export function readBytes(
  world: World,
  folder: string,
  path: string,
): FileAnswer<Uint8Array> {
  const whole = joined(folder, path);
  const size = world.sizeOf(whole);
  if (size !== undefined && size > greatestFile)
    return refused(path, tooLarge(path, size));
  const answer = world.read(whole);
  if ('missing' in answer) return { kind: 'missing' };
  if ('refused' in answer)
    return refused(path, {
      code: 'file-unreadable',
      message: `${path} cannot be read: ${answer.refused}`,
      hints: ['look at the permissions of the file'],
    });
  // The size may have changed since it was asked for, or not be known (a pipe).
  if (answer.bytes.length > greatestFile)
    return refused(path, tooLarge(path, answer.bytes.length));
  return { kind: 'read', file: answer.bytes };
}

/** The text of a file of the folder: UTF-8, with or without a byte order mark. */
export function readText(
  world: World,
  folder: string,
  path: string,
): FileAnswer<DefinitionFile> {
  const answer = readBytes(world, folder, path);
  if (answer.kind !== 'read') return answer;
  const text = decoded(answer.file);
  if (text === undefined)
    return refused(path, {
      code: 'file-not-text',
      message: `${path} is not a text in UTF-8`,
      hints: ['save it as UTF-8 from a text editor'],
    });
  return { kind: 'read', file: { path, text, sha256: digest(answer.file) } };
}

/** A path below a folder. */
export function joined(folder: string, path: string): string {
  return folder === '' || folder.endsWith('/')
    ? `${folder}${path}`
    : `${folder}/${path}`;
}

function decoded(bytes: Uint8Array): string | undefined {
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    return text.includes('\0') ? undefined : text;
  } catch {
    return undefined;
  }
}

type Words = Pick<Diagnostic, 'code' | 'message' | 'hints'>;

function tooLarge(path: string, size: number): Words {
  return {
    code: 'file-too-large',
    message: `${path} holds ${(size / 1e6).toFixed(1)} MB, and files over 1 MB are refused`,
    hints: ['make the file smaller'],
  };
}

function refused(
  path: string,
  words: Words,
): { readonly kind: 'refused'; readonly diagnostic: Diagnostic } {
  return {
    kind: 'refused',
    diagnostic: { severity: 'error', ...words, span: { file: path, start: 0, end: 0 } },
  };
}
