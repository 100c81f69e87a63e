import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  collectResults,
  readResults,
  writeResults,
  type Results,
} from '../../src/results/index.ts';
import { beam, down, pin, roller } from '../support/beam.ts';
import { determinateBeam } from '../support/random-beam.ts';
import { resultsInput, solvedBeam } from '../support/results-input.ts';

const structure = beam({
  points: { A: 0, B: 6 },
  supports: { A: pin, B: roller() },
  loads: [down(12000, 2, { case: 'D' })],
});
const written = (units: 'us' | 'si' = 'si'): string =>
  writeResults(
    collectResults(
      resultsInput(units, [
        solvedBeam('B1', structure, { '1.4D': { for: 'strength', of: { D: 1.4 } } }),
        {
          outcome: 'unsolved',
          mark: 'B2',
          kind: 'beam',
          error: { code: 'unstable', message: 'it slides' },
        },
      ]),
    ),
  );

/** The places at which a text departs from the format, after one piece of it was replaced. */
const misfits = (from: string | RegExp, to: string): string[] => {
  const text = written().replace(from, to);
  expect(text).not.toBe(written());
  const reading = readResults(text);
  return reading.kind === 'misshapen'
    ? reading.misfits.map(({ path, expected }) => `${path}: ${expected}`)
    : [reading.kind];
};

describe('readResults', () => {
  test('reads back what was written, in either system', () => {
    for (const units of ['us', 'si'] as const) {
      const reading = readResults(written(units));
      expect(reading.kind).toBe('results');
      if (reading.kind === 'results') {
        expect(writeResults(reading.results)).toBe(written(units));
      }
    }
  });

  test('reads back any beam with its stations', () => {
    fc.assert(
      fc.property(
        determinateBeam,
        fc.constantFrom('us' as const, 'si' as const),
        (any, units) => {
          const results: Results = collectResults(
            resultsInput(units, [solvedBeam('B1', any)], 6),
          );
          expect(readResults(writeResults(results))).toEqual({
            kind: 'results',
            results,
          });
        },
      ),
      { numRuns: 50 },
    );
  });

  test('reads the errors of a project that could not be read', () => {
    const errors = [
      { code: 'bad-yaml', message: 'a tab', file: 'loads.yaml', line: 3 },
    ];
    const reading = readResults(writeResults({ format: 1, errors }));
    expect(reading).toEqual({ kind: 'project-errors', errors: { format: 1, errors } });
  });

  test('says that a text is no JSON', () => {
    expect(readResults('format: 1').kind).toBe('not-json');
  });

  test.each<[string, string | RegExp, string, string[]]>([
    ['another format', '"format": 1', '"format": 2', ['format: 1']],
    ['a missing key', /"checks": \[\],/, '', ['members[0].checks: a list']],
    [
      'a number that is text',
      '{ "value": 8, "unit": "kN" }',
      '{ "value": "8", "unit": "kN" }',
      ['members[0].results.D.reactions[0].y.value: a number'],
    ],
    [
      'a number beyond all bounds',
      '{ "value": 8, "unit": "kN" }',
      '{ "value": 1e999, "unit": "kN" }',
      ['members[0].results.D.reactions[0].y.value: a number'],
    ],
    [
      'a unit of the other system',
      '{ "value": 8, "unit": "kN" }',
      '{ "value": 8, "unit": "kip" }',
      ['members[0].results.D.reactions[0].y.unit: "kN"'],
    ],
    [
      'half a count',
      '"unknowns": 3',
      '"unknowns": 3.5',
      ['members[0].statics.unknowns: a whole number'],
    ],
    [
      'an envelope that is nothing',
      '"service": null',
      '"service": []',
      ['members[0].envelopes.service: an object'],
    ],
    [
      'a kind of member that it does not know',
      '"kind": "beam"',
      '"kind": "arch"',
      ['members[0].kind: "beam"'],
    ],
    [
      'units that it does not know',
      '"units": "si"',
      '"units": "cgs"',
      ['project.units: "us" or "si"'],
    ],
  ])('refuses %s, and says where', (_title, from, to, expected) => {
    const found = misfits(from, to);
    for (const misfit of expected) expect(found).toContain(misfit);
  });

  test('passes over keys that it does not know', () => {
    expect(misfits('"format": 1', '"format": 1, "later": true')).toEqual(['results']);
  });

  test('never throws, whatever the text', () => {
    fc.assert(
      fc.property(fc.oneof(fc.json(), fc.string()), (text) => {
        const { kind } = readResults(text);
        expect(['not-json', 'misshapen']).toContain(kind);
      }),
    );
  });
});
