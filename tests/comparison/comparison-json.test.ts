import { describe, expect, test } from 'vitest';
import { comparisonJson, type Comparison } from '../../src/comparison/index.ts';

const comparison: Comparison = {
  later: { revision: 'B', title: 'Weir', number: '7' },
  earlier: { revision: null, title: 'Weir', number: null },
  inputs: [
    {
      to: '9 kip',
      from: '8 kip',
      what: 'load L on B1 at B',
      member: 'B1',
      part: 'members',
      kind: 'changed',
    },
    { what: 'picture images/a.png', part: 'pictures', kind: 'added' },
  ],
  outcomes: [{ why: 'it is unstable', member: 'B2', kind: 'no longer solved' }],
  checks: [
    {
      after: { passes: false, ratio: 1.2 },
      what: 'deflection L of span A to B',
      member: 'B1',
      kind: 'newly failing',
    },
  ],
  results: [
    {
      share: 0.125,
      after: { at: { unit: 'ft', value: 3 }, entry: 'L', unit: 'kip ft', value: 9 },
      before: { unit: 'kip ft', value: 8 },
      what: 'greatest moment',
      member: 'B1',
    },
  ],
  reach: [{ from: ['B1'], by: 'carried', member: 'G1' }],
};

describe('comparisonJson', () => {
  test('writes format 1, every value, keys in one order whatever the order given', () => {
    const text = comparisonJson(comparison);
    expect(JSON.parse(text)).toEqual({ format: 1, ...comparison });
    const keys = [...text.matchAll(/"(\w+)":/g)].map(([, key]) => key);
    expect(keys.slice(0, 14)).toEqual([
      'format',
      'earlier',
      'number',
      'title',
      'revision',
      'later',
      'number',
      'title',
      'revision',
      'inputs',
      'kind',
      'part',
      'member',
      'what',
    ]);
    expect(text.endsWith('}\n')).toBe(true);
  });

  test('leaves out what a change does not have', () => {
    const { inputs } = JSON.parse(comparisonJson(comparison)) as {
      readonly inputs: readonly object[];
    };
    expect(Object.keys(inputs[1] ?? {})).toEqual(['kind', 'part', 'what']);
  });
});
