import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { MarkedStep } from '../../src/review/index.ts';
import { determinateBeam } from '../support/random-beam.ts';
import { narratedSheet, tastes } from './any-line/narrated-sheet.ts';
import { plantSheetSlip, sheetSlips } from './any-line/plant-sheet-slip.ts';
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
    const counts = { marked: 0, following: 0 };
    fc.assert(
      fc.property(beams, tastes, (structure, taste) => {
        const sheet = narratedSheet(structure, taste);
        if (sheet === undefined) return;
        const text = writtenSheet(sheet, taste);
        const steps = markedSheet(sheet, text);
        counts.marked += steps.length;
        for (const { verdict } of steps) {
          // Rounded values may add up to more than the tolerance: what goes on from them follows.
          expect(['right', 'follows'], told(text, steps)).toContain(verdict);
          counts.following += verdict === 'follows' ? 1 : 0;
        }
      }),
      { numRuns: 12, endOnFailure: true },
    );
    console.log(`${counts.marked} steps, ${counts.following} following`);
    expect(counts.marked).toBeGreaterThan(30);
    expect(counts.following).toBeLessThan(0.05 * counts.marked);
  });

  test('with one slip has that slip found and named, and all after it right or following', () => {
    const counts = { planted: 0, named: 0, alone: 0 };
    const unnamed: string[] = [];
    const slips = fc.record({
      kind: fc.constantFrom(...sheetSlips),
      pick: fc.nat(100),
    });
    fc.assert(
      fc.property(beams, tastes, slips, (structure, taste, { kind, pick }) => {
        const sheet = narratedSheet(structure, taste);
        const slip = sheet && plantSheetSlip(sheet, kind, pick);
        if (sheet === undefined || slip === undefined) return;
        const text = writtenSheet(sheet, taste, slip);
        const steps = markedSheet(sheet, text);
        const all = `${kind} in step ${slip.step + 1}\n${told(text, steps)}`;
        const own = steps[slip.step]!;
        const others = steps.filter((step) => step !== own);
        counts.planted += 1;
        for (const { verdict } of others)
          expect(['right', 'follows'], all).toContain(verdict);
        const isFound = own.verdict === (kind === 'rounding' ? 'right' : 'wrong');
        expect(isFound || (kind === 'no-unit' && own.verdict === 'unread'), all).toBe(
          true,
        );
        const isNamed = own.findings.some((one) => slip.kinds.includes(one.kind));
        counts.named += isNamed ? 1 : 0;
        counts.alone += isNamed && own.findings.length === 1 ? 1 : 0;
        if (!isNamed) unnamed.push(all);
      }),
      { numRuns: 28, endOnFailure: true },
    );
    const { planted, named, alone } = counts;
    const rates = `${planted} slips planted, ${named} named, ${alone} with nothing beside`;
    console.log(rates);
    expect(planted, rates).toBeGreaterThan(15);
    expect(named / planted, [rates, ...unnamed].join('\n')).toBeGreaterThanOrEqual(
      0.95,
    );
  });
});
