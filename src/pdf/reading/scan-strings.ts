/** The content of a string and where the file goes on behind it. */
export interface ScannedString {
  readonly bytes: Uint8Array;
  readonly end: number;
}

const backslash = 0x5c;
const opening = 0x28;
const closing = 0x29;
const escapes: Readonly<Record<string, number>> = { n: 10, r: 13, t: 9, b: 8, f: 12 };

/** Reads a string in parentheses that begins at an offset (ISO 32000-1, 7.3.4.2). */
export function scanString(bytes: Uint8Array, from: number): ScannedString {
  const content: number[] = [];
  let depth = 1;
  let at = from + 1;
  for (;;) {
    const byte = bytes[at];
    if (byte === undefined) throw new RangeError('a string has no end');
    if (byte === backslash) {
      at = readEscape(bytes, at + 1, content);
      continue;
    }
    if (byte === opening) depth += 1;
    if (byte === closing) depth -= 1;
    at += 1;
    if (depth === 0) return { bytes: Uint8Array.from(content), end: at };
    content.push(byte);
  }
}

/** Reads what stands behind a backslash, and gives where the string goes on. */
function readEscape(bytes: Uint8Array, at: number, content: number[]): number {
  const byte = bytes[at] ?? 0;
  const digits = /^[0-7]{1,3}/u.exec(
    String.fromCharCode(...bytes.subarray(at, at + 3)),
  )?.[0];
  if (digits !== undefined) {
    content.push(parseInt(digits, 8) & 0xff);
    return at + digits.length;
  }
  // A line that ends in a backslash goes on in the next.
  if (byte === 13) return at + (bytes[at + 1] === 10 ? 2 : 1);
  if (byte === 10) return at + 1;
  content.push(escapes[String.fromCharCode(byte)] ?? byte);
  return at + 1;
}

/** Reads a string in hexadecimal that begins at an offset (ISO 32000-1, 7.3.4.3). */
export function scanHexString(bytes: Uint8Array, from: number): ScannedString {
  const end = bytes.indexOf(0x3e, from);
  if (end < 0) throw new RangeError('a string in hexadecimal has no end');
  const content = new Uint8Array((end - from) >> 1);
  let digits = 0;
  for (let at = from + 1; at < end; at += 1) {
    const byte = bytes[at] ?? 0;
    if (isSpace(byte)) continue;
    // The first digit of a byte is its upper half; a digit that is missing at the end is 0.
    content[digits >> 1] =
      (content[digits >> 1] ?? 0) | (digitOf(byte) << (digits & 1 ? 0 : 4));
    digits += 1;
  }
  return { bytes: content.subarray(0, (digits + 1) >> 1), end: end + 1 };
}

function digitOf(byte: number): number {
  const digit = parseInt(String.fromCharCode(byte), 16);
  if (Number.isNaN(digit))
    throw new RangeError('a string in hexadecimal has other letters');
  return digit;
}

const isSpace = (byte: number): boolean =>
  byte === 32 || byte === 10 || byte === 13 || byte === 9 || byte === 12 || byte === 0;
