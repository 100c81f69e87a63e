import { expect, test } from 'vitest';
import { checksum } from '../../src/world/index.ts';

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);

test('the checksum of “123456789” is the check value of CRC-32, in one piece or in two', () => {
  // Check value cbf43926: Williams, A Painless Guide to CRC Error Detection Algorithms (1993), section 15.
  expect(checksum(bytes('123456789'), 0)).toBe(0xcbf43926);
  expect(checksum(bytes('6789'), checksum(bytes('12345'), 0))).toBe(0xcbf43926);
  expect(checksum(bytes(''), 0)).toBe(0);
});
