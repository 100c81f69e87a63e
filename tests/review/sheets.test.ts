import { describe, expect, test } from 'vitest';
import { simpleMembers, simpleSheets } from './sheets/simple-beams.ts';
import { otherMembers, otherSheets } from './sheets/other-members.ts';
import { markSheets, type SheetMarks } from './sheets/mark-sheets.ts';

const sheets = [...simpleSheets, ...otherSheets];
const marked = markSheets({ ...simpleMembers, ...otherMembers }, sheets);
const steps = marked.flatMap(({ steps: own }) => own);

function shown(some: readonly SheetMarks['steps'][number][]): readonly string[] {
  return some.map(
    ({ sheet, expected, found }) =>
      `${sheet}: ${expected.line}  FOUND ${found.verdict} ${found.findings.map(({ kind, message }) => `${kind}: ${message}`).join(' | ')}`,
  );
}

describe('the worked sheets', () => {
  test('are at least 150', () => {
    expect(sheets.length).toBeGreaterThanOrEqual(150);
  });

  test('no right step is flagged', () => {
    const flagged = steps.filter(
      ({ expected, found }) =>
        expected.verdict === 'right' && found.verdict !== 'right',
    );
    expect(shown(flagged)).toEqual([]);
  });

  test('no wrong step passes', () => {
    const passed = steps.filter(
      ({ expected, found }) =>
        expected.verdict !== 'right' && found.verdict === 'right',
    );
    expect(shown(passed)).toEqual([]);
  });

  test('at least 95 % of verdicts and 90 % of kinds are as expected', () => {
    const other = steps.filter(
      ({ expected, found }) => expected.verdict !== found.verdict,
    );
    const slips = steps.filter(({ expected }) => expected.kinds.length > 0);
    const unnamed = slips.filter(
      ({ expected, found }) =>
        !expected.kinds.every((kind) =>
          found.findings.some((finding) => finding.kind === kind),
        ) ||
        found.findings.some(
          ({ kind, message }) =>
            !expected.kinds.includes(kind) && !message.startsWith('Or else'),
        ),
    );
    const verdicts = 1 - other.length / steps.length;
    const kinds = 1 - unnamed.length / slips.length;
    const percent = (rate: number): string => `${(100 * rate).toFixed(1)} %`;
    const rates = `${sheets.length} sheets, ${steps.length} steps: verdicts ${percent(verdicts)}, kinds of ${slips.length} slips ${percent(kinds)}`;
    console.log([rates, ...shown(other), ...shown(unnamed)].join('\n'));
    expect(verdicts, rates).toBeGreaterThanOrEqual(0.95);
    expect(kinds, rates).toBeGreaterThanOrEqual(0.9);
  });
});
