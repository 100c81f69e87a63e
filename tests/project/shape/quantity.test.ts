import { describe, expect, test } from 'vitest';
import { quantityOf } from '../../../src/project/shape/quantity.ts';
import { readAs } from '../../support/reading.ts';

const length = quantityOf('length');

describe('a quantity', () => {
  test('is read with its unit and in SI', () => {
    expect(readAs(length, '6 ft').value).toMatchObject({
      si: expect.closeTo(1.8288, 12),
      text: '6',
    });
    expect(readAs(quantityOf('inertia'), '36.9e6 mm^4').value).toMatchObject({
      si: expect.closeTo(36.9e-6, 12),
    });
    expect(readAs(quantityOf('force'), '"1,250 lb"').value).toMatchObject({
      si: expect.closeTo(5560.277, 3),
    });
  });

  test.each([
    ['6', 'unit-missing 0-1 6 has no unit, and a length is wanted'],
    ['6 foots', 'unit-unknown 2-7 no unit is called foots'],
    ['6 kip', 'unit-misfit 0-5 6 kip is a force, not a length'],
    [
      '2e6 m',
      'number-out-of-range 0-5 `2e6 m` is far out of the reach of any structure',
    ],
    [
      '1e-30 m',
      'number-out-of-range 0-7 `1e-30 m` is far out of the reach of any structure',
    ],
    ['.inf', 'number-out-of-range 0-4 .inf is no number that can be worked with'],
    ['[ 6 ft ]', 'wrong-shape 0-8 a length belongs here, not a list'],
    ['~', 'empty-value 0-1 nothing is given where a length belongs'],
    ['500 #', 'pound-sign 0-3 a comment begins at ` #`, so the unit is lost'],
  ])('%s is none', (written, finding) => {
    expect(readAs(length, written).findings).toEqual([finding]);
  });

  test('may have to be positive, or not negative', () => {
    expect(readAs(quantityOf('length', 'positive'), '0').findings).toEqual([
      'not-positive 0-1 a length greater than 0 belongs here, not `0`',
    ]);
    expect(readAs(quantityOf('length', 'not-negative'), '0').value).toMatchObject({
      si: 0,
    });
    expect(readAs(quantityOf('length', 'not-negative'), '-1 ft').findings).toEqual([
      'not-positive 0-5 a length of 0 or more belongs here, not `-1 ft`',
    ]);
  });

  test('in quotes is marked whole, because its text and the file differ', () => {
    expect(readAs(length, '"6 foots"').findings).toEqual([
      'unit-unknown 0-9 no unit is called foots',
    ]);
  });
});
