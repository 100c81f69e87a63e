import { describe, expect, test } from 'vitest';
import { groupEntries } from '../../src/derivation/entry-groups.ts';
import type { BeamStructure } from '../../src/statics/index.ts';

const simple: BeamStructure = {
  kind: 'beam',
  points: [
    { name: 'A', x: 0 },
    { name: 'B', x: 6 },
  ],
  supports: [
    {
      point: 'A',
      x: 0,
      type: 'pin',
      restraints: [
        { kind: 'force', direction: [1, 0] },
        { kind: 'force', direction: [0, 1] },
      ],
    },
    {
      point: 'B',
      x: 6,
      type: 'roller',
      restraints: [
        {
          kind: 'force',
          direction: [0, 1],
          settlements: [{ case: 'Z', value: 0.01 }],
        },
      ],
    },
  ],
  hinges: [],
  loads: ['D', 'L'].map((mark) => ({
    id: mark,
    case: mark,
    kind: 'point',
    x: 2,
    fx: 0,
    fy: -1000,
  })),
  cases: ['D', 'L', 'S', 'W', 'Z'],
};

const sum = (...terms: readonly (readonly [factor: number, mark: string])[]) => ({
  mark: terms.map(([factor, mark]) => `${factor}${mark}`).join(' + '),
  factors: terms.map(([factor, mark]) => ({ factor, case: mark })),
});
const groupsOf = (entries: Parameters<typeof groupEntries>[1]) =>
  groupEntries(simple, entries as readonly ReturnType<typeof sum>[], (one) => one).map(
    ({ marks }) => marks,
  );

describe('entries of a member', () => {
  test('stand together where they differ in cases that it does not feel', () => {
    expect(
      groupsOf([
        sum([1.2, 'D'], [1.6, 'L'], [0.3, 'S']),
        sum([1.2, 'D'], [1, 'L'], [1, 'W']),
        sum([1.6, 'L'], [1.2, 'D']),
        sum([1.2, 'D'], [1, 'L']),
      ]),
    ).toEqual([
      ['1.2D + 1.6L + 0.3S', '1.6L + 1.2D'],
      ['1.2D + 1L + 1W', '1.2D + 1L'],
    ]);
  });

  test('stay apart where a support moves in a case', () => {
    expect(groupsOf([sum([1, 'D']), sum([1, 'D'], [1, 'Z'])])).toEqual([
      ['1D'],
      ['1D + 1Z'],
    ]);
  });

  test('that are cases stand together only where nothing acts', () => {
    expect(groupsOf(simple.cases.map((mark) => ({ mark })))).toEqual([
      ['D'],
      ['L'],
      ['S', 'W'],
      ['Z'],
    ]);
  });

  test('that are sums of idle cases are no cases', () => {
    expect(groupsOf([{ mark: 'S' }, sum([1, 'S']), sum([0, 'D'], [2, 'W'])])).toEqual([
      ['S'],
      ['1S', '0D + 2W'],
    ]);
  });
});
