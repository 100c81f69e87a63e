import { crc32 } from 'node:zlib';

/**
 * CRC-32 of some bytes, as zip files keep it (PKWARE APPNOTE 4.4.7); `before` is that of the bytes in
 * front of them, 0 where there are none.
 */
export function checksum(bytes: Uint8Array, before: number): number {
  return crc32(bytes, before);
}
