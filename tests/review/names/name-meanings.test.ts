import { describe, expect, test } from 'vitest';
import type { MarkedStep } from '../../../src/review/index.ts';
import { markFiles } from '../sheets/mark-sheets.ts';

const members = {
  N1: `mark: N1
kind: beam
points: { A: 0 ft, B: 4 ft, C: 7 ft, D: 10 ft }
supports: { A: pin, D: roller }
loads: [ { case: Q, point: 9 kip, at: B }, { case: Q, couple: 12 kip ft, at: B, turn: clockwise }, { case: L, point: 3 kip, at: [ B, C ] } ]
`,
};

/** The mark of a step that uses a symbol with a meaning. */
function markOf(means: string, loads: string, write: string, so?: string): MarkedStep {
  const concluded = so === undefined ? '' : `, so: ${JSON.stringify(so)}`;
  const text = `member: N1\nloads: ${loads}\nnames: { X: ${means} }\nsteps:\n  - { write: ${JSON.stringify(write)}${concluded} }\n`;
  const [file] = markFiles(members, { 'worked/a.yaml': text });
  return file!.steps[0]!;
}

describe('what a name stands for', () => {
  test('a force and a couple at one place: ambiguous, and both forms are named with their sizes', () => {
    const { verdict, findings } = markOf('load Q at B', 'Q', 'Y = 2 * X');
    expect(verdict).toBe('unread');
    expect(findings[0]?.kind).toBe('symbol');
    expect(findings[0]?.message).toContain(
      'could be `force Q at B` (9 kip) or `couple Q at B` (12 kip·ft)',
    );
  });

  test('`force` and `couple` tell the two apart', () => {
    expect(markOf('force Q at B', 'Q', 'Y = 2 * X', 'Y = 18 kip').verdict).toBe(
      'right',
    );
    expect(markOf('couple Q at B', 'Q', 'Y = 2 * X', 'Y = 24 kip ft').verdict).toBe(
      'right',
    );
  });

  test('a case with loads at two places asks for the place', () => {
    const { findings } = markOf('load L', 'L', 'Y = 2 * X');
    expect(findings[0]?.message).toContain(
      'could be `load L at B` (3 kip) or `load L at C` (3 kip)',
    );
    expect(markOf('load L at C', 'L', 'Y = 2 * X', 'Y = 6 kip').verdict).toBe('right');
  });

  test.each([
    ['length A to C', 'Y = X / 2', 'Y = 3.5 ft'],
    ['distance from B to D', 'Y = X', 'Y = 6 ft'],
    ['reaction A up', 'Y = 2 * X', 'Y = 8.4 kip'],
  ])('reads %s', (means, write, so) => {
    expect(markOf(means, 'Q', write, so).verdict).toBe('right');
  });

  test.each([
    ['load W at B', 'no point load or couple is load W at B'],
    ['reaction B up', 'there is no support at B'],
    ['inertia', 'this member gives no inertia'],
    ['the moon', '`the moon` names nothing of this member'],
    ['length A to Z', 'A to Z is no stretch of this member'],
  ])('says why %s cannot be told, only where it is used', (means, why) => {
    const { verdict, findings } = markOf(means, 'Q', 'Y = 2 * X');
    expect(verdict).toBe('unread');
    expect(findings[0]?.message).toContain(why);
    expect(markOf(means, 'Q', 'Y = 2 * 3 kip').verdict).toBe('right');
  });
});
