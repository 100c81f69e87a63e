import { describe, expect, test } from 'vitest';
import { collectResults, writeResults } from '../../src/results/index.ts';
import { beam, down, pin, roller } from '../support/beam.ts';
import { resultsInput, solvedBeam } from '../support/results-input.ts';

const structure = beam({
  points: { A: 0, B: 6 },
  supports: { A: pin, B: roller() },
  loads: [down(12000, 2)],
});

describe('writeResults', () => {
  test('writes figures on one line and ends with a line break', () => {
    const text = writeResults(
      collectResults(resultsInput('si', [solvedBeam('B1', structure)])),
    );
    expect(text).toContain('"y": { "value": 8, "unit": "kN" }');
    expect(text).toContain(
      [
        '          "moment": {',
        '            "max": {',
        '              "value": 16,',
        '              "unit": "kN m",',
        '              "at": { "value": 2, "unit": "m" }',
        '            },',
      ].join('\n'),
    );
    expect(text.endsWith('}\n')).toBe(true);
  });

  test('writes the same value as the same text, and nothing but that value', () => {
    const results = collectResults(
      resultsInput('us', [solvedBeam('B1', structure)], 7),
    );
    expect(writeResults(results)).toBe(writeResults(structuredClone(results)));
    expect(JSON.parse(writeResults(results))).toEqual(results);
  });

  test('leaves texts alone that look like figures', () => {
    const title = 'a {\n  "value": 1,\n  "unit": "kN"\n} b';
    const results = collectResults({ project: { title, units: 'si' }, members: [] });
    expect(JSON.parse(writeResults(results))).toEqual(results);
  });

  test('never writes a minus zero', () => {
    const turned = beam({
      points: { A: 0, B: 6 },
      supports: { A: pin, B: roller() },
      loads: [down(-0, 2), down(0, 3)],
    });
    const text = writeResults(
      collectResults(resultsInput('si', [solvedBeam('B1', turned)], 5)),
    );
    expect(text).not.toMatch(/-0\b(?!\.)/);
  });

  test('writes the errors of a project that cannot be read', () => {
    const errors = [
      {
        code: 'missing-key',
        message: 'project.yaml has no title',
        file: 'project.yaml',
        line: 1,
        column: 1,
      },
    ];
    expect(JSON.parse(writeResults({ format: 1, errors }))).toEqual({
      format: 1,
      errors,
    });
  });
});
