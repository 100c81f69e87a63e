import { describe, expect, test } from 'vitest';
import type { MarkedStep } from '../../../src/review/index.ts';
import { markFiles } from '../sheets/mark-sheets.ts';

const members = {
  S1: 'mark: S1\nkind: beam\npoints: { A: 0 ft, B: 6 ft, D: 15 ft, C: 21 ft }\nsupports: { A: pin, C: roller }\nloads: [ { case: L, point: 8.4 kip, at: B }, { case: L, point: 5 kip, at: D } ]\n',
};

function marks(...steps: readonly string[]): readonly MarkedStep[] {
  const [file] = markFiles(members, {
    'worked/a.yaml': `member: S1\nnames: { RA: reaction A up, RC: reaction C up }\nsteps:\n${steps.map((step) => `  - { ${step} }\n`).join('')}`,
  });
  return file!.steps;
}

const about = (point: string, line: string): string =>
  `sum: moments about ${point}, write: "${line}"`;

describe('the same slip again', () => {
  test.each([
    ['a load forgotten', 'RC * 21 ft - 5 kip * 15 ft', '-RA * 21 ft + 5 kip * 6 ft'],
    [
      'a load at the same wrong place',
      'RC * 21 ft - 8.4 kip * 7 ft - 5 kip * 15 ft',
      '-RA * 21 ft + 8.4 kip * 14 ft + 5 kip * 6 ft',
    ],
    [
      'a load of the same wrong size',
      'RC * 21 ft - 9.4 kip * 6 ft - 5 kip * 15 ft',
      '-RA * 21 ft + 9.4 kip * 15 ft + 5 kip * 6 ft',
    ],
    [
      'a load taken to act the other way',
      'RC * 21 ft + 8.4 kip * 6 ft - 5 kip * 15 ft',
      '-RA * 21 ft - 8.4 kip * 15 ft + 5 kip * 6 ft',
    ],
  ])('%s in the sum about another point is told as the same', (_, first, second) => {
    const [one, other] = marks(about('A', first), about('C', second));
    expect([one!.verdict, other!.verdict]).toEqual(['wrong', 'wrong']);
    expect(one!.findings[0]!.message).not.toContain('The same as');
    expect(other!.findings[0]!.message).toMatch(/ The same as in step 1\.$/u);
  });

  test('another load forgotten, or the same at another place, is another slip', () => {
    const [, other, third] = marks(
      about('A', 'RC * 21 ft - 8.4 kip * 7 ft - 5 kip * 15 ft'),
      about('C', '-RA * 21 ft + 8.4 kip * 13 ft + 5 kip * 6 ft'),
      about('C', '-RA * 21 ft + 8.4 kip * 15 ft'),
    );
    for (const { verdict, findings } of [other!, third!]) {
      expect(verdict).toBe('wrong');
      for (const { message } of findings) expect(message).not.toContain('The same as');
    }
  });

  test('findings stand without the marks that they are compared by', () => {
    const [step] = marks(about('A', 'RC * 21 ft - 5 kip * 15 ft'));
    expect(Object.keys(step!.findings[0]!).sort()).toEqual(['kind', 'message']);
  });
});
