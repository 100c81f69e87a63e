import { describe, expect, test } from 'vitest';
import { findAsce7Edition } from '../../../src/standards/combinations/asce7-edition.ts';

describe('findAsce7Edition', () => {
  test.each([
    ['ASCE/SEI 7-22', '7-22'],
    ['ASCE 7-16', '7-16'],
    ['asce7–10', '7-10'],
    ['Minimum Design Loads, ASCE / SEI 7-16, with Supplement 1', '7-16'],
  ])('reads %s', (text, edition) => {
    const choice = findAsce7Edition(['ANSI/AISC 360-22', text], 'asce7-strength');
    expect(choice).toEqual({ edition, notes: [], problems: [] });
  });

  test('takes 7-22 where none is named, and says so as an assumption', () => {
    const choice = findAsce7Edition(['ANSI/AISC 360-22'], 'asce7-strength');
    expect(choice.edition).toBe('7-22');
    expect(choice.notes.map((note) => note.kind)).toEqual(['assumption']);
  });

  test('refuses an edition that it does not know', () => {
    const choice = findAsce7Edition(['ASCE 7-05'], 'asce7-allowable');
    expect(choice.edition).toBeUndefined();
    expect(choice.problems).toEqual([
      {
        kind: 'edition',
        subject: 'asce7-allowable',
        message:
          'the combinations of ASCE 7-05 are not known; known editions are 7-10, 7-16, 7-22',
      },
    ]);
  });

  test('refuses to choose between two', () => {
    const choice = findAsce7Edition(['ASCE 7-16', 'ASCE/SEI 7-22'], 'asce7-strength');
    expect(choice.problems.map((problem) => problem.message)).toEqual([
      'the standards name ASCE 7-16 and ASCE 7-22; combinations can follow only one edition',
    ]);
  });
});
