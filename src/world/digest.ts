import { createHash } from 'node:crypto';

/** SHA-256 of some bytes, as 64 lower-case hexadecimal digits (FIPS 180-4). */
export function digest(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}
