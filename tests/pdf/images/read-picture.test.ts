import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { imageProblem } from '../../../src/pdf/index.ts';
import { cmykJpeg, jpeg, pngWithAlpha } from '../../support/test-pictures.ts';

describe('a picture', () => {
  test('that can stand in a package has no problem', () => {
    expect(imageProblem(jpeg)).toBeUndefined();
    expect(imageProblem(pngWithAlpha)).toBeUndefined();
  });

  test('that cannot says why', () => {
    expect(imageProblem(cmykJpeg)).toBe('is a JPEG in CMYK colours');
    expect(imageProblem(new TextEncoder().encode('<svg/>'))).toBe(
      'is no PNG or JPEG picture',
    );
    expect(imageProblem(new Uint8Array())).toBe('is no PNG or JPEG picture');
  });

  test('that is damaged anywhere is read or refused, and never throws', () => {
    const good = fc.constantFrom(jpeg, pngWithAlpha);
    fc.assert(
      fc.property(
        good,
        fc.nat(400),
        fc.nat(255),
        fc.boolean(),
        (bytes, place, value, isCut) => {
          const damaged = Uint8Array.from(isCut ? bytes.subarray(0, place) : bytes);
          if (!isCut) damaged[place % bytes.length] = value;
          expect(typeof (imageProblem(damaged) ?? '')).toBe('string');
        },
      ),
      { numRuns: 500 },
    );
  });
});
