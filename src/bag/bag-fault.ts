import type { Code } from '../diagnostics/index.ts';

/** Why a file was not opened as a bag: which code, and how the sentence about it goes on. */
export interface BagFault {
  readonly code: Extract<Code, 'bag-unreadable' | 'not-a-bag' | 'bag-refused'>;
  /** A clause after the colon: `its zip is cut short`. */
  readonly reason: string;
}

/** A fault of a bag that could do harm or deceive. */
export function refusal(reason: string): BagFault {
  return { code: 'bag-refused', reason };
}

/** A fault of a zip that cannot be read to its end. */
export function unreadable(reason: string): BagFault {
  return { code: 'bag-unreadable', reason };
}

/** What the reader of zips throws, by a part of its message, and what it means to the user. */
const thrownFaults: readonly (readonly [RegExp, BagFault])[] = [
  [/strong encryption/, refusal('it is encrypted')],
  [
    /size mismatch for stored file/,
    refusal('a file that is not packed gives two sizes'),
  ],
  [/Invalid comment length/, unreadable('bytes stand behind the end of its zip')],
  [
    /End of central directory record/,
    unreadable('its zip is cut short, or damaged at its end'),
  ],
  [
    /unexpected EOF|overflows file bounds/,
    unreadable('its zip names bytes beyond its end; it is cut short or damaged'),
  ],
  [/multi-disk/, unreadable('its zip is one of several parts')],
  [
    /central directory file header|extra field|zip64/,
    unreadable('the directory of its zip is damaged'),
  ],
  [
    /local file header/,
    unreadable('a file does not begin where the directory of its zip says'),
  ],
];

/** The fault that stands behind something thrown while a zip was read. */
export function thrownFault(thrown: unknown): BagFault {
  const words =
    typeof thrown === 'object' && thrown !== null && 'message' in thrown
      ? String(thrown.message)
      : '';
  return (
    thrownFaults.find(([pattern]) => pattern.test(words))?.[1] ??
    unreadable('its zip cannot be read')
  );
}
