import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { date } from '../../../src/project/shape/date.ts';
import { readAs } from '../../support/reading.ts';

describe('a date', () => {
  test.each(['2031-03-14', '"2031-03-14"', '2032-02-29', '2000-02-29', '1999-12-31'])(
    '%s is a day',
    (written) => {
      expect(readAs(date, written).value).toBe(written.replaceAll('"', ''));
    },
  );

  test.each([
    '2031-02-29',
    '1900-02-29',
    '2031-13-01',
    '2031-00-10',
    '2031-04-31',
    '2031-03-00',
    '0000-01-01',
    '14/3/2031',
    '2031-3-14',
    '20310314',
    'March 2031',
    '2031-03-14T00:00:00Z',
  ])('%s is none', (written) => {
    expect(readAs(date, written).findings).toEqual([
      expect.stringMatching(/^not-a-date /),
    ]);
  });

  test('is every day that the calendar of the machine knows', () => {
    const days = fc.date({
      min: new Date('0001-01-01'),
      max: new Date('9999-12-31'),
      noInvalidDate: true,
    });
    fc.assert(
      fc.property(days, (day) => {
        const written = day.toISOString().slice(0, 10);
        expect(readAs(date, written).value).toBe(written);
      }),
    );
  });
});
