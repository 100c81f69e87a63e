import { describe, expect, test } from 'vitest';
import { markedLines, peopleLines } from '../../src/cli/marked-lines.ts';
import { paintFor } from '../../src/cli/paint.ts';
import { summarise, type MarkedFile } from '../../src/review/index.ts';

const file: MarkedFile = {
  file: 'worked/a.yaml',
  member: 'S2',
  loads: 'L',
  isLoadsChosen: true,
  steps: [
    {
      step: 1,
      line: 3,
      claim: 'forces up',
      loads: 'L',
      written: 'RA = \u001b[2J P',
      concluded: ['RA = 1 kip'],
      lines: [],
      verdict: 'wrong',
      findings: [{ kind: 'sign', term: 'P', message: 'P acts down.' }],
      remarks: [],
    },
  ],
  summary: { right: 0, wrong: 1, follows: 0, unread: 0 },
  comments: [],
  remarks: [],
};

describe('markedLines', () => {
  test('shows a step with its mark, its finding beneath, and which loading was taken', () => {
    const text = markedLines(file, paintFor(false));
    expect(text).toContain('S2, for L (not said; the reading with the fewest slips)');
    expect(text).toMatch(/ 1 {2}wrong .*forces up; RA = .*; RA = 1 kip\n/);
    expect(text).toContain('sign at P: P acts down.');
  });

  test('no control character of a sheet reaches the terminal', () => {
    expect(markedLines(file, paintFor(false))).not.toContain('\u001b');
  });
});

describe('peopleLines', () => {
  test('counts marks and slips of each person', () => {
    expect(peopleLines(summarise([file]), paintFor(false))).toContain(
      'nobody named: 1 sheet; 0 right, 1 wrong, 0 following, 0 not read; slips: sign 1',
    );
  });
});
