import { Unzlib, unzlibSync } from 'fflate';

/** Bytes that a stream of a PDF may unpack to: 256 MiB, a hundred times what a package holds. */
const greatestStream = 268_435_456;

/** Deflated data unpack to this many times their size at most (RFC 1951: 258 bytes from two bits). */
const greatestRatio = 1032;

/** Bytes that are unpacked at a time where the whole could be too much. */
const sliceLength = 16_384;

/**
 * Undoes Flate. Throws RangeError where the data are damaged, and where they unpack to more than `most` bytes, before
 * they have filled the memory: a file from elsewhere may be made to do just that.
 */
export function inflate(bytes: Uint8Array, most: number = greatestStream): Uint8Array {
  const pieces =
    bytes.length * greatestRatio <= most
      ? attempt(() => [unzlibSync(bytes)])
      : inflateBySlices(bytes, most);
  return joined(pieces);
}

function inflateBySlices(bytes: Uint8Array, most: number): readonly Uint8Array[] {
  const pieces: Uint8Array[] = [];
  let length = 0;
  const stream = new Unzlib((piece) => {
    pieces.push(piece);
    length += piece.length;
  });
  for (let at = 0; at < bytes.length; at += sliceLength) {
    const end = at + sliceLength;
    attempt(() => stream.push(bytes.slice(at, end), end >= bytes.length));
    if (length > most)
      throw new RangeError(`a stream unpacks to more than ${most} bytes`);
  }
  return pieces;
}

function attempt<T>(unpack: () => T): T {
  try {
    return unpack();
  } catch {
    throw new RangeError('the deflated data of a stream are damaged');
  }
}

function joined(pieces: readonly Uint8Array[]): Uint8Array {
  const [only] = pieces;
  if (only !== undefined && pieces.length === 1) return only;
  const whole = new Uint8Array(pieces.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}
