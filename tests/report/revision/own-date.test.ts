import { describe, expect, test } from 'vitest';
import {
  datesLeftOver,
  peopleOfThisRevision,
} from '../../../src/report/revision/own-date.ts';

const checker = (date?: string): { name: string; initials: string; date?: string } => ({
  name: 'R. Tamsin',
  initials: 'RT',
  ...(date === undefined ? {} : { date }),
});
const dated = (...dates: readonly string[]): { mark: string; date: string }[] =>
  dates.map((date, index) => ({ mark: 'ABC'[index]!, date }));
const counts = (
  date: string | undefined,
  revisions: readonly string[],
  before?: Parameters<typeof peopleOfThisRevision>[1],
): boolean =>
  peopleOfThisRevision(
    { people: { checked: checker(date) }, revisions: dated(...revisions) },
    before,
  ).checked?.date !== undefined;

describe('the date beside a name', () => {
  test('counts in a first revision, also where somebody signed before its day', () => {
    expect(counts('2031-03-12', ['2031-03-14'])).toBe(true);
    expect(counts('2031-03-12', [])).toBe(true);
    expect(counts(undefined, ['2031-03-14'])).toBe(false);
  });

  test('counts in a later one where it is later than the revision before', () => {
    const both = ['2031-03-14', '2031-05-02'];
    expect(counts('2031-03-14', both)).toBe(false);
    expect(counts('2031-03-10', both)).toBe(false);
    expect(counts('2031-04-30', both)).toBe(true);
    expect(counts('2031-05-02', both)).toBe(true);
  });

  test('counts on the day of two revisions at once', () => {
    expect(counts('2031-05-02', ['2031-05-02', '2031-05-02'])).toBe(true);
  });

  test('does not count where it stood there when the revision before was issued', () => {
    const before = {
      people: { checked: checker('2031-03-20') },
      revisions: dated('2031-03-14'),
    };
    const both = ['2031-03-14', '2031-05-02'];
    expect(counts('2031-03-20', both)).toBe(true);
    expect(counts('2031-03-20', both, before)).toBe(false);
    expect(counts('2031-05-04', both, before)).toBe(true);
  });

  test('keeps the name where it does not count', () => {
    const { checked } = peopleOfThisRevision({
      people: { checked: checker('2031-03-10') },
      revisions: dated('2031-03-14', '2031-05-02'),
    });
    expect(checked).toEqual({ name: 'R. Tamsin', initials: 'RT' });
  });

  test('is remarked on where it does not count, and nowhere else', () => {
    const signed = (date?: string): Parameters<typeof datesLeftOver>[0] => ({
      people: { checked: checker(date) },
      revisions: dated('2031-03-14', '2031-05-02'),
    });
    const told = (date?: string): readonly string[] =>
      datesLeftOver(signed(date), peopleOfThisRevision(signed(date))).map(
        ({ code, message }) => `${code}: ${message}`,
      );
    expect(told('2031-03-14')).toEqual([
      'date-left-over: the date 2031-03-14 beside R. Tamsin (checked) is from the revision before, and does not count for revision B',
    ]);
    expect(told('2031-05-02')).toEqual([]);
    expect(told()).toEqual([]);
  });
});
