import { expect, test } from 'vitest';
import { digest, startDigest } from '../../src/world/index.ts';

test('the digest of the bytes of "abc" is the one that FIPS 180-4 works as its example', () => {
  // NIST, "SHA256 example values" to FIPS 180-4: one-block message "abc".
  expect(digest(new TextEncoder().encode('abc'))).toBe(
    'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad',
  );
});

test('a digest that grows piece by piece is that of the whole, however it is cut', () => {
  const whole = new TextEncoder().encode(
    'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq',
  );
  for (const cut of [0, 1, 31, 56]) {
    const digesting = startDigest();
    digesting.add(whole.subarray(0, cut));
    digesting.add(whole.subarray(cut));
    // NIST, "SHA256 example values" to FIPS 180-4: two-block message.
    expect(digesting.end()).toBe(
      '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
    );
  }
  // The digest of no bytes at all.
  expect(startDigest().end()).toBe(digest(new Uint8Array()));
});
