import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readPng } from '../../../src/pdf/images/read-png.ts';
import type { Picture } from '../../../src/pdf/images/picture.ts';
import { png, pngWithAlpha } from '../../support/test-pictures.ts';
import type { PngParts } from '../../support/test-pictures.ts';

/** A PNG that must be readable. */
function read(parts: PngParts): Picture {
  const picture = readPng(png(parts));
  if ('problem' in picture) throw new Error(picture.problem);
  return picture;
}

const greyLine: PngParts = {
  width: 2,
  height: 1,
  bits: 8,
  colourType: 0,
  lines: [[0, 7, 9]],
};

describe('a PNG', () => {
  test('without opacity keeps its packed lines', () => {
    expect(read(greyLine)).toMatchObject({
      width: 2,
      height: 1,
      bits: 8,
      colours: 'DeviceGray',
      packing: { kind: 'png', channels: 1 },
    });
    const colour = read({ ...greyLine, colourType: 2, lines: [[0, 1, 2, 3, 4, 5, 6]] });
    expect(colour).toMatchObject({ colours: 'DeviceRGB', packing: { channels: 3 } });
    const sixteen = read({ ...greyLine, bits: 16, lines: [[0, 1, 2, 3, 4]] });
    expect(sixteen).toMatchObject({ bits: 16, packing: { kind: 'png' } });
  });

  test('with a palette keeps it', () => {
    const palette = [255, 0, 0, 0, 0, 255];
    const picture = read({
      width: 3,
      height: 1,
      bits: 1,
      colourType: 3,
      lines: [[0, 0b01000000]],
      palette,
    });
    expect(picture.colours).toEqual({ palette: Uint8Array.from(palette) });
    expect(picture.opacity).toBeUndefined();
  });

  test('with opacity in each pixel has colours and opacity apart', () => {
    const picture = readPng(pngWithAlpha) as Picture;
    expect([...picture.data]).toEqual([255, 0, 0, 0, 255, 0, 0, 0, 255, 9, 9, 9]);
    expect([...picture.opacity!]).toEqual([255, 255, 255, 128]);
    expect(picture).toMatchObject({ bits: 8, packing: { kind: 'none' } });
  });

  test('of 16 bits with opacity keeps the upper 8', () => {
    const picture = read({
      width: 1,
      height: 1,
      bits: 16,
      colourType: 4,
      lines: [[0, 200, 1, 100, 2]],
    });
    expect([...picture.data]).toEqual([200]);
    expect([...picture.opacity!]).toEqual([100]);
    expect(picture.bits).toBe(8);
  });

  test('with clear entries in its palette looks each pixel up', () => {
    const picture = read({
      width: 5,
      height: 2,
      bits: 2,
      colourType: 3,
      lines: [
        [0, 0b00011011, 0b11000000],
        [0, 0b01010101, 0b00000000],
      ],
      palette: [1, 1, 1, 2, 2, 2, 3, 3, 3, 4, 4, 4],
      clear: [0, 60],
    });
    expect([...picture.opacity!]).toEqual([0, 60, 255, 255, 255, 60, 60, 60, 60, 0]);
    expect([...picture.data]).toEqual([0b00011011, 0b11000000, 0b01010101, 0]);
  });

  test('with one clear colour names it', () => {
    expect(read({ ...greyLine, clear: [0, 9] }).clearColour).toEqual([9]);
    const colour = read({
      ...greyLine,
      colourType: 2,
      lines: [[0, 1, 2, 3, 4, 5, 6]],
      clear: [0, 1, 0, 2, 1, 3],
    });
    expect(colour.clearColour).toEqual([1, 2, 259]);
  });

  test('that is interlaced is put together, whatever its size and depth', () => {
    const sizes = fc.record({
      width: fc.integer({ min: 1, max: 20 }),
      height: fc.integer({ min: 1, max: 20 }),
    });
    const form = fc.constantFrom(
      [1, 0],
      [2, 0],
      [4, 0],
      [8, 0],
      [16, 0],
      [8, 2],
    ) as fc.Arbitrary<[number, 0 | 2]>;
    fc.assert(
      fc.property(sizes, form, ({ width, height }, [bits, colourType]) => {
        const channels = colourType === 2 ? 3 : 1;
        const sample = (x: number, y: number, channel: number): number =>
          (x * 31 + y * 17 + channel * 7 + ((x * y) % 5)) % 2 ** bits;
        const pack = (pixels: readonly (readonly [number, number])[]): number[] => {
          const all = pixels.flatMap(([x, y]) =>
            Array.from({ length: channels }, (_, channel) =>
              sample(x, y, channel).toString(2).padStart(bits, '0'),
            ),
          );
          return all
            .join('')
            .match(/.{1,8}/gu)!
            .map((byte) => parseInt(byte.padEnd(8, '0'), 2));
        };
        const passes = [
          [0, 0, 8, 8],
          [4, 0, 8, 8],
          [0, 4, 4, 8],
          [2, 0, 4, 4],
          [0, 2, 2, 4],
          [1, 0, 2, 2],
          [0, 1, 1, 2],
        ] as const;
        const places = (from: number, step: number, end: number): number[] =>
          Array.from(
            { length: Math.max(0, Math.ceil((end - from) / step)) },
            (_, index) => from + index * step,
          );
        const lines = passes.flatMap(([left, top, across, down]) => {
          const columns = places(left, across, width);
          if (columns.length === 0) return [];
          return places(top, down, height).map((y) => [
            0,
            ...pack(columns.map((x) => [x, y] as const)),
          ]);
        });
        const picture = read({
          width,
          height,
          bits,
          colourType,
          lines,
          isInterlaced: true,
        });
        const whole = Array.from({ length: height }, (_, y) =>
          pack(Array.from({ length: width }, (__, x) => [x, y] as const)),
        ).flat();
        expect([...picture.data]).toEqual(whole);
      }),
    );
  });

  test.each([
    ['cut short', png(greyLine).subarray(0, 60), 'is a PNG cut short'],
    ['with lines too few', png({ ...greyLine, height: 2 }), 'is a damaged PNG'],
    [
      'of an unknown kind',
      png({ ...greyLine, colourType: 5 as 0 }),
      'is a damaged PNG',
    ],
    [
      'of bits that its kind has not',
      png({ ...greyLine, colourType: 2, bits: 4 }),
      'is a damaged PNG',
    ],
    [
      'without its palette',
      png({ ...greyLine, colourType: 3 }),
      'is a PNG without its palette',
    ],
    ['of no size', png({ ...greyLine, width: 0, lines: [[0]] }), 'is a damaged PNG'],
    [
      'with an unknown filter',
      png({ ...greyLine, colourType: 4, width: 1, lines: [[9, 7, 9]] }),
      'is a damaged PNG',
    ],
  ])('%s is told as such', (_, bytes, problem) => {
    expect(readPng(bytes)).toEqual({ problem });
  });
});
