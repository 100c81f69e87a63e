import { describe, expect, test } from 'vitest';
import { markedLines, summaryLines } from '../../src/cli/marked-lines.ts';
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
    expect(text).toMatch(/ 1 {2}wrong .*forces up: RA = .*, so RA = 1 kip\n/);
    expect(text).toContain('sign at P: P acts down.');
  });

  test('no control character of a sheet reaches the terminal', () => {
    expect(markedLines(file, paintFor(false))).not.toContain('\u001b');
  });
});

describe('summaryLines', () => {
  test('counts marks over the project, and names where each kind of slip is', () => {
    const text = summaryLines(summarise([file]), paintFor(false));
    expect(text).toContain('Summary\n  1 sheet, 1 step: 0 right, 1 wrong\n');
    expect(text).toContain('  1 sign: S2 step 1\n');
  });

  test('gives each person a line, with what was never found left out', () => {
    const named = { ...file, prepared: { name: 'J. Rowan' } };
    const lines = summaryLines(summarise([file, named]), paintFor(false)).split('\n');
    expect(lines).toContain(
      '  nobody named  1 sheet, 1 step: 0 right, 1 wrong; sign 1',
    );
    expect(lines).toContain(
      '  J. Rowan      1 sheet, 1 step: 0 right, 1 wrong; sign 1',
    );
  });

  test('says of the seventh and later places only how many there are', () => {
    const step = file.steps[0]!;
    const steps = Array.from({ length: 8 }, (_, at) => ({ ...step, step: at + 1 }));
    const text = summaryLines(summarise([{ ...file, steps }]), paintFor(false));
    expect(text).toContain('  8 sign: S2 step 1, S2 step 2');
    expect(text).toContain('S2 step 6, 2 more\n');
  });
});
