/*
 * The MD5 digest (RFC 1321). It is no protection against anybody; a PDF's file identifier and the
 * check sums of its attachments are defined by it (ISO 32000-1, 14.4 and table 46).
 */

// RFC 1321, 3.4: T[i] is the whole part of 2³² |sin i|; the rotations of the four rounds.
const sines = Uint32Array.from({ length: 64 }, (_, index) =>
  Math.floor(2 ** 32 * Math.abs(Math.sin(index + 1))),
);
const rotations = [
  [7, 12, 17, 22],
  [5, 9, 14, 20],
  [4, 11, 16, 23],
  [6, 10, 15, 21],
] as const;

/** The 16 bytes of the MD5 digest of some bytes. */
export function md5(bytes: Uint8Array): Uint8Array {
  const state = Uint32Array.of(0x67452301, 0xefcdab89, 0x98badcfe, 0x10325476);
  const padded = pad(bytes);
  const words = new DataView(padded.buffer);
  for (let block = 0; block < padded.length; block += 64)
    digestBlock(state, words, block);
  const digest = new DataView(new ArrayBuffer(16));
  for (const [index, word] of state.entries()) digest.setUint32(4 * index, word, true);
  return new Uint8Array(digest.buffer);
}

/** A one bit, zeros to 8 bytes short of a block, and the length in bits (RFC 1321, 3.1 and 3.2). */
function pad(bytes: Uint8Array): Uint8Array<ArrayBuffer> {
  const padded = new Uint8Array(64 * Math.ceil((bytes.length + 9) / 64));
  padded.set(bytes);
  padded[bytes.length] = 0x80;
  const view = new DataView(padded.buffer);
  view.setUint32(padded.length - 8, (bytes.length * 8) >>> 0, true);
  view.setUint32(padded.length - 4, Math.floor(bytes.length / 2 ** 29), true);
  return padded;
}

function digestBlock(state: Uint32Array, words: DataView, block: number): void {
  let [a = 0, b = 0, c = 0, d = 0] = state;
  for (let step = 0; step < 64; step += 1) {
    const round = step >> 4;
    const word = words.getUint32(block + 4 * wordOf(round, step), true);
    const sum = (a + mix(round, b, c, d) + word + (sines[step] ?? 0)) | 0;
    const by = rotations[round as 0 | 1 | 2 | 3][(step & 3) as 0 | 1 | 2 | 3];
    [a, d, c, b] = [d, c, b, (b + ((sum << by) | (sum >>> (32 - by)))) | 0];
  }
  for (const [index, word] of [a, b, c, d].entries())
    state[index] = (state[index] ?? 0) + word;
}

function mix(round: number, b: number, c: number, d: number): number {
  if (round === 0) return (b & c) | (~b & d);
  if (round === 1) return (b & d) | (c & ~d);
  return round === 2 ? b ^ c ^ d : c ^ (b | ~d);
}

/** Which word of the block a step takes. */
function wordOf(round: number, step: number): number {
  if (round === 0) return step;
  if (round === 1) return (5 * step + 1) & 15;
  return round === 2 ? (3 * step + 5) & 15 : (7 * step) & 15;
}
