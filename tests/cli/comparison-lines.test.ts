import { describe, expect, test } from 'vitest';
import { comparisonLines } from '../../src/cli/comparison-lines.ts';
import { paintFor } from '../../src/cli/paint.ts';
import { formatNumber, formatRatio, type Comparison } from '../../src/index.ts';

const nothing: Comparison = {
  earlier: { number: '7', title: 'Weir', revision: 'A' },
  later: { number: '7', title: 'Weir', revision: 'B' },
  inputs: [],
  outcomes: [],
  checks: [],
  results: [],
  reach: [],
};

const linesOf = (of: Partial<Comparison>): readonly string[] =>
  comparisonLines(
    { ...nothing, ...of },
    {
      paint: paintFor(false),
      writeRatio: formatRatio,
      writeFigure: (value) => formatNumber(value, { kind: 'figures', count: 4 }).text,
    },
  ).split('\n');

describe('comparisonLines', () => {
  test('names both packages, and says so where nothing differs', () => {
    expect(linesOf({})).toEqual([
      '7 Weir, revision A → 7 Weir, revision B',
      '',
      'Nothing differs.',
      '',
    ]);
  });

  test('puts what fails now before all else, other checks after the results', () => {
    const lines = linesOf({
      inputs: [
        { kind: 'added', part: 'cautions', what: 'caution', to: 'Mind the step' },
      ],
      checks: [
        {
          kind: 'newly failing',
          member: 'B2',
          what: 'deflection L of span A to B',
          before: { ratio: 0.8, passes: true },
          after: { ratio: 1.0004, passes: false },
        },
        {
          kind: 'mended',
          member: 'B1',
          what: 'deflection L of span A to B',
          before: { ratio: 1.2, passes: false },
          after: { ratio: 0.9, passes: true },
        },
      ],
    });
    expect(lines.slice(2)).toEqual([
      'Newly failing',
      '  B2: deflection L of span A to B, ratio 0.80 → 1.0004',
      '',
      'Inputs',
      '  project',
      '    added caution: Mind the step',
      '',
      'Other checks',
      '  B1: deflection L of span A to B, ratio 1.20 → 0.90, mended',
      '',
    ]);
  });

  test('names what was moved, renamed, added or removed, and lets a changed value speak', () => {
    const on = { part: 'members', member: 'B1' } as const;
    expect(
      linesOf({
        inputs: [
          {
            kind: 'changed',
            ...on,
            what: 'load L on B1 at B',
            from: '8 kip',
            to: '9 kip',
          },
          { kind: 'moved', ...on, what: 'point C of B1', from: '6 ft', to: '7 ft' },
          { kind: 'renamed', ...on, what: 'point D of B1', from: 'D', to: 'E' },
          { kind: 'removed', ...on, what: 'hinge at E of B1' },
          { kind: 'changed', part: 'pictures', what: 'picture images/a.png' },
        ],
      }).slice(3),
    ).toEqual([
      '  B1',
      '    load L on B1 at B: 8 kip → 9 kip',
      '    moved point C of B1: 6 ft → 7 ft',
      '    renamed point D of B1: D → E',
      '    removed hinge at E of B1',
      '  project',
      '    changed picture images/a.png',
      '',
    ]);
  });

  test('gives changes in per cent, and both places where they differ', () => {
    const result = (before: number, after: number): Comparison['results'][number] => ({
      member: 'B1',
      what: 'greatest moment',
      before: {
        value: before,
        unit: 'kip ft',
        entry: 'L',
        at: { value: 3, unit: 'ft' },
      },
      after: { value: after, unit: 'kip ft', entry: 'D', at: { value: 3, unit: 'ft' } },
      share: (after - before) / before,
    });
    expect(
      linesOf({
        results: [result(8, 9), result(8, 8.001), result(-8, -8.4), result(8, 20)],
      }).slice(4, 8),
    ).toEqual([
      '    greatest moment: 8.000 kip ft → 9.000 kip ft (+13 %), by D at 3.000 ft (was by L at 3.000 ft)',
      '    greatest moment: 8.000 kip ft → 8.001 kip ft (up less than 0.1 %), by D at 3.000 ft (was by L at 3.000 ft)',
      '    greatest moment: −8.000 kip ft → −8.400 kip ft (+5.0 %), by D at 3.000 ft (was by L at 3.000 ft)',
      '    greatest moment: 8.000 kip ft → 20.00 kip ft (+150 %), by D at 3.000 ft (was by L at 3.000 ft)',
    ]);
  });

  test('says how a change reaches each member', () => {
    expect(
      linesOf({
        reach: [
          { member: 'B1', by: 'definition', from: [] },
          { member: 'B2', by: 'project', from: [] },
          { member: 'G1', by: 'carried', from: ['B1', 'B2'] },
        ],
      }).slice(2),
    ).toEqual([
      'Checks open again',
      '  B1 (its own file)',
      '  B2 (what the project shares)',
      '  G1 (carries B1, B2)',
      '',
    ]);
  });

  test('shows control characters of a file, so that they cannot steer the terminal', () => {
    const text = linesOf({
      inputs: [{ kind: 'added', part: 'cautions', what: 'caution', to: '\u001b[2J' }],
    }).join('\n');
    expect(text).not.toContain('\u001b');
  });
});
