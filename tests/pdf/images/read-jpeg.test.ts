import { describe, expect, test } from 'vitest';
import { readJpeg } from '../../../src/pdf/images/read-jpeg.ts';
import { cmykJpeg, jpeg } from '../../support/test-pictures.ts';

/** The JPEG with a byte of its frame changed: 0 bits, 1–2 height, 3–4 width, 5 channels. */
function withFrame(place: number, value: number): Uint8Array {
  const bytes = Uint8Array.from(jpeg);
  const frame = Buffer.from(jpeg).indexOf(Buffer.from([0xff, 0xc0]));
  bytes[frame + 4 + place] = value;
  return bytes;
}

/** The JPEG with its frame's marker changed. */
function withMarker(marker: number): Uint8Array {
  const bytes = Uint8Array.from(jpeg);
  bytes[Buffer.from(jpeg).indexOf(Buffer.from([0xff, 0xc0])) + 1] = marker;
  return bytes;
}

describe('a JPEG', () => {
  test('tells its size and colours and stays as it is', () => {
    expect(readJpeg(jpeg)).toEqual({
      width: 16,
      height: 12,
      bits: 8,
      colours: 'DeviceRGB',
      data: jpeg,
      packing: { kind: 'jpeg' },
    });
    expect(readJpeg(withFrame(5, 1))).toMatchObject({ colours: 'DeviceGray' });
    expect(readJpeg(withMarker(0xc2))).toMatchObject({ width: 16 });
  });

  test('may have fill bytes before a marker and some bytes behind its end', () => {
    const filled = Uint8Array.from([
      ...jpeg.subarray(0, 2),
      0xff,
      ...jpeg.subarray(2),
      0,
      0,
    ]);
    expect(readJpeg(filled)).toMatchObject({ width: 16, height: 12 });
  });

  test.each([
    ['in the colours of print', cmykJpeg, 'is a JPEG in CMYK colours'],
    ['of 12 bits', withFrame(0, 12), 'is a JPEG of 12 bits a colour'],
    ['without a height', withFrame(2, 0), 'is a JPEG without a size'],
    ['of two channels', withFrame(5, 2), 'is a damaged JPEG'],
    ['coded arithmetically', withMarker(0xc9), 'is a JPEG of a rare kind'],
    ['cut off in its head', jpeg.subarray(0, 40), 'is a JPEG cut short'],
    ['cut off in its data', jpeg.subarray(0, 300), 'is a JPEG cut short'],
    [
      'of noise',
      Uint8Array.from([0xff, 0xd8, 0xff, 0xe0, 0, 4, 1, 2, 3, 4, 5, 6]),
      'is a damaged JPEG',
    ],
  ])('%s is told as such', (_, bytes, problem) => {
    expect(readJpeg(bytes)).toEqual({ problem });
  });
});
