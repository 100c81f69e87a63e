import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { MarkedStep } from '../../src/review/index.ts';
import { determinateBeam } from '../support/random-beam.ts';
import { narratedSheet, tastes } from './any-line/narrated-sheet.ts';
import { markedSheet, writtenSheet } from './any-line/write-sheet.ts';

const beams = determinateBeam.filter(
  ({ hinges, loads }) => hinges.length === 0 && loads.length > 0,
);

function told(text: string, steps: readonly MarkedStep[]): string {
  const marks = steps.map(({ step, verdict, findings }) =>
    [
      `${step} ${verdict}`,
      ...findings.map((one) => `${one.kind}: ${one.message}`),
    ].join(' | '),
  );
  return `${text}${marks.join('\n')}`;
}

describe('what the derivation narrates, written as somebody might', () => {
  test('is right, step after step', () => {
    let marked = 0;
    fc.assert(
      fc.property(beams, tastes, (structure, taste) => {
        const sheet = narratedSheet(structure, taste);
        if (sheet === undefined) return;
        const text = writtenSheet(sheet, taste);
        const steps = markedSheet(sheet, text);
        marked += steps.length;
        const isRight = steps.every(({ verdict }) => verdict === 'right');
        expect(isRight, told(text, steps)).toBe(true);
      }),
      { numRuns: 30, endOnFailure: true },
    );
    expect(marked).toBeGreaterThan(40);
  });
});
