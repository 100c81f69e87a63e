import { describe, expect, test } from 'vitest';
import { changeOf, membersBefore } from '../../src/cli/changes.ts';
import type { BeamResults, MemberResults, Results } from '../../src/index.ts';

/** A beam with one case, as far as changes look at it. */
function beam(moment: number, reaction: number, shear: number = 1): BeamResults {
  const extreme = (
    value: number,
  ): { value: number; unit: string; at: { value: number; unit: string } } => ({
    value,
    unit: 'kip',
    at: { value: 0, unit: 'ft' },
  });
  const pair = (
    max: number,
  ): { max: ReturnType<typeof extreme>; min: ReturnType<typeof extreme> } => ({
    max: extreme(Math.max(max, 0)),
    min: extreme(Math.min(max, 0)),
  });
  const governing = { ...pair(moment) };
  const envelope = {
    shear: {
      max: { ...pair(shear).max, result: 'L' },
      min: { ...pair(shear).min, result: 'L' },
    },
    moment: {
      max: { ...governing.max, result: 'L' },
      min: { ...governing.min, result: 'L' },
    },
  };
  return {
    mark: 'B1',
    kind: 'beam',
    statics: { unknowns: 3, equations: 3, degree: 0, stable: true },
    results: {
      L: {
        reactions: [
          { point: 'A', x: null, y: { value: reaction, unit: 'kip' }, moment: null },
          { point: 'B', x: null, y: null, moment: null },
        ],
        shear: pair(shear),
        moment: pair(moment),
      },
    },
    envelope,
    envelopes: { strength: null, service: null },
    checks: [],
    closure: [],
  };
}

const failed: MemberResults = {
  mark: 'B1',
  kind: 'beam',
  error: { code: 'unstable', message: '' },
};

describe('what changed of a member', () => {
  test('nothing, where every figure is the same', () => {
    expect(changeOf(beam(10, 2), beam(10, 2))).toBe('as before');
  });

  test('stations are there only where they are asked for, and are no change', () => {
    const now = beam(10, 2);
    const entry = now.results.L;
    if (entry === undefined) throw new Error('no entry');
    expect(
      changeOf({ ...now, results: { L: { ...entry, stations: [] } } }, beam(10, 2)),
    ).toBe('as before');
  });

  test('the governing moment and reaction, by their sizes', () => {
    expect(changeOf(beam(10.5, 2), beam(10, 2))).toBe('moment +5.0 %');
    expect(changeOf(beam(-9, 1.5), beam(-10, 2))).toBe(
      'moment −10.0 %, reaction −25.0 %',
    );
    expect(changeOf(beam(10.000001, 2), beam(10, 2))).toBe('moment +less than 0.1 %');
  });

  test('words where a share says nothing', () => {
    expect(changeOf(beam(10, 2), beam(0, 2))).toBe('moment was 0');
    expect(changeOf(beam(10, -2), beam(-10, 2))).toBe('moment turned, reaction turned');
  });

  test('another figure', () => {
    expect(changeOf(beam(10, 2, 7), beam(10, 2, 6))).toBe('other figures changed');
  });

  test('a member that is new, that lost its results, that got them back', () => {
    expect(changeOf(beam(10, 2), undefined)).toBe('new');
    expect(changeOf(failed, beam(10, 2))).toBe('had results before');
    expect(changeOf(beam(10, 2), failed)).toBe('had no results before');
    expect(changeOf(failed, failed)).toBe('');
  });
});

describe('the run before', () => {
  const results = (units: 'us' | 'si'): Results => ({
    format: 1,
    project: { number: null, title: '', revision: null, units },
    members: [failed],
  });

  test('is found by marks', () => {
    expect(membersBefore(results('us'), results('us'))?.get('B1')).toBe(failed);
  });

  test('is not set beside this one where the units are others, or where there is none', () => {
    expect(membersBefore(results('si'), results('us'))).toBeUndefined();
    expect(membersBefore(undefined, results('us'))).toBeUndefined();
  });
});
