import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  collectResults,
  type BeamResults,
  type EntryResults,
} from '../../src/results/index.ts';
import { determinacy } from '../../src/statics/index.ts';
import { beam, down, pin, roller } from '../support/beam.ts';
import { determinateBeam } from '../support/random-beam.ts';
import { resultsInput, solvedBeam } from '../support/results-input.ts';

const simple = beam({
  points: { A: 0, B: 6.4008 },
  supports: { A: pin, B: roller() },
  loads: [down(4448.2216152605, 3.2004, { case: 'D' }), down(0, 1, { case: 'L' })],
});

describe('collectResults', () => {
  test('names the project and its latest revision', () => {
    expect(collectResults(resultsInput('us', [])).project).toEqual({
      number: '2031-014',
      title: 'Heron Lane Jetty',
      revision: 'B',
      units: 'us',
    });
    const bare = { project: { title: 'Shed', units: 'si' as const }, members: [] };
    expect(collectResults(bare).project).toEqual({
      number: null,
      title: 'Shed',
      revision: null,
      units: 'si',
    });
  });

  test('keys results by mark, cases first, and gives a case without effect its zeros', () => {
    const member = solvedBeam('B1', simple, {
      '1.4D': { for: 'strength', of: { D: 1.4 } },
    });
    const { members } = collectResults(
      resultsInput('us', [{ ...member, title: 'Joist', sheet: 7 }]),
    );
    const [found] = members as [BeamResults];
    expect(found).toMatchObject({
      mark: 'B1',
      kind: 'beam',
      title: 'Joist',
      sheet: 7,
      statics: { unknowns: 3, equations: 3, degree: 0, stable: true },
      checks: [],
    });
    expect(Object.keys(found.results)).toEqual(['D', 'L', '1.4D']);
    expect(found.results['1.4D']?.moment.max).toEqual({
      value: 7.35,
      unit: 'kip ft',
      at: { value: 10.5, unit: 'ft' },
    });
    expect(found.results.L?.reactions[0]?.y).toEqual({ value: 0, unit: 'kip' });
    expect(new Set(found.closure.map((entry) => entry.result))).toEqual(
      new Set(['D', 'L', '1.4D']),
    );
  });

  test('lists a member without results with its error, and its counts where known', () => {
    const loose = determinacy(
      beam({ points: { A: 0, B: 6 }, supports: { A: roller(), B: roller() } }),
    );
    const error = {
      code: 'unstable',
      message: 'nothing holds the beam along its axis',
      file: 'members/B2.yaml',
      line: 5,
    };
    const head = { outcome: 'unsolved', kind: 'beam', error } as const;
    const { members } = collectResults(
      resultsInput('si', [
        { ...head, mark: 'B2', determinacy: loose },
        { ...head, mark: 'T1', kind: 'truss', error: { code: 'x', message: 'y' } },
      ]),
    );
    expect(members).toEqual([
      {
        mark: 'B2',
        kind: 'beam',
        statics: { unknowns: 2, equations: 3, degree: -1, stable: false },
        error,
      },
      { mark: 'T1', kind: 'truss', error: { code: 'x', message: 'y' } },
    ]);
  });

  test('refuses two entries of one mark', () => {
    const member = solvedBeam('B1', simple);
    const twice = { ...member, entries: [...member.entries, ...member.entries] };
    expect(() => collectResults(resultsInput('si', [twice]))).toThrow(RangeError);
  });

  test('gives the same forces in either system', () => {
    fc.assert(
      fc.property(determinateBeam, (structure) => {
        const member = solvedBeam('B1', structure);
        const read = (units: 'us' | 'si') => {
          const [found] = collectResults(resultsInput(units, [member], 4)).members;
          return Object.values((found as BeamResults).results).flatMap((one) => {
            const entry = one as EntryResults;
            return [
              ...entry.reactions.flatMap(({ x, y, moment }) => [x, y, moment]),
              ...entry.stations!.flatMap(({ x, shear, moment }) => [x, shear, moment]),
              entry.shear.max,
              entry.moment.min,
            ];
          });
        };
        const worth: Record<string, number> = {
          kip: 4448.2216152605,
          ft: 0.3048,
          'kip ft': 4448.2216152605 * 0.3048,
          kN: 1000,
          m: 1,
          'kN m': 1000,
        };
        const us = read('us');
        for (const [index, si] of read('si').entries()) {
          const other = us[index];
          expect(other === null).toBe(si === null);
          if (si === null || other == null) continue;
          const expected = si.value * worth[si.unit]!;
          expect(Math.abs(other.value * worth[other.unit]! - expected)).toBeLessThan(
            1e-12 * Math.abs(expected) + 1e-12,
          );
        }
      }),
      { numRuns: 50 },
    );
  });
});
