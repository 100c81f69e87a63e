import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { md5 } from '../../src/pdf/md5.ts';

const hex = (bytes: Uint8Array): string => Buffer.from(bytes).toString('hex');
const ofText = (text: string): string => hex(md5(new TextEncoder().encode(text)));

describe('the MD5 digest', () => {
  // RFC 1321, appendix A.5.
  test.each([
    ['', 'd41d8cd98f00b204e9800998ecf8427e'],
    ['a', '0cc175b9c0f1b6a831c399e269772661'],
    ['abc', '900150983cd24fb0d6963f7d28e17f72'],
    ['message digest', 'f96b697d7cb7938d525a2f31aaf161d0'],
    ['abcdefghijklmnopqrstuvwxyz', 'c3fcd3d76192e4007dfb496cca67e13b'],
    [
      'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789',
      'd174ab98d277d9f5a5611c2c9f419d9f',
    ],
    ['1234567890'.repeat(8), '57edf4a22be3c955ac49da2e2107b67a'],
  ])('of “%s” is that of the RFC', (text, digest) => {
    expect(ofText(text)).toBe(digest);
  });

  test('agrees with another implementation at every length around a block', () => {
    for (let length = 0; length < 200; length += 1) {
      const bytes = Uint8Array.from(
        { length },
        (_, index) => (index * 7 + length) % 256,
      );
      expect(hex(md5(bytes))).toBe(createHash('md5').update(bytes).digest('hex'));
    }
  });

  test('agrees with another implementation on any bytes, also inside a larger buffer', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 500 }), fc.nat(20), (bytes, from) => {
        const part = bytes.subarray(Math.min(from, bytes.length));
        expect(hex(md5(part))).toBe(createHash('md5').update(part).digest('hex'));
      }),
    );
  });
});
