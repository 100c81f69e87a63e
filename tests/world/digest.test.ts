import { expect, test } from 'vitest';
import { digest } from '../../src/world/index.ts';

test('the digest of the bytes of "abc" is the one that FIPS 180-4 works as its example', () => {
  // NIST, "SHA256 example values" to FIPS 180-4: one-block message "abc".
  expect(digest(new TextEncoder().encode('abc'))).toBe(
    'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad',
  );
});
