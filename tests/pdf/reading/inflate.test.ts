import { zlibSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { inflate } from '../../../src/pdf/reading/inflate.ts';

/** Bytes that hardly pack, the same on every run. */
const mixed = Uint8Array.from({ length: 200_000 }, (_, at) => Math.sin(at) * 1e6);

describe('undoing Flate', () => {
  test('gives the data back, at once or by slices', () => {
    const packed = zlibSync(mixed);
    expect(packed.length).toBeGreaterThan(100_000);
    expect(inflate(packed)).toEqual(mixed);
    expect(inflate(packed, mixed.length)).toEqual(mixed);
  });

  test('stops before a bomb has filled the memory', () => {
    // 40 MB of nothing in 40 kB.
    const bomb = zlibSync(new Uint8Array(40_000_000));
    expect(bomb.length).toBeLessThan(50_000);
    expect(() => inflate(bomb, 1_000_000)).toThrow(
      'a stream unpacks to more than 1000000 bytes',
    );
  });

  test.each([1e9, 1e6])('tells damaged data, allowed %d bytes', (most) => {
    for (const damaged of [
      zlibSync(mixed).slice(0, 50_000),
      new Uint8Array([1, 2, 3, 4, 5, 6, 7]),
    ])
      expect(() => inflate(damaged, most)).toThrow(
        'the deflated data of a stream are damaged',
      );
  });
});
