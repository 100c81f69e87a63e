import { createHash } from 'node:crypto';

/** SHA-256 of some bytes, as 64 lower-case hexadecimal digits (FIPS 180-4). */
export function digest(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}

/** A digest that grows piece by piece. */
export interface Digesting {
  /** Takes in the next piece. */
  readonly add: (piece: Uint8Array) => void;
  /** SHA-256 of all pieces, as `digest` writes it; asked for once, at the end. */
  readonly end: () => string;
}

/** Begins a SHA-256 of bytes that never stand in memory together. */
export function startDigest(): Digesting {
  const hash = createHash('sha256');
  return {
    add: (piece) => {
      hash.update(piece);
    },
    end: () => hash.digest('hex'),
  };
}
