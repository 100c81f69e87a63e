import { describe, expect, test } from 'vitest';
import {
  collectResults,
  readResults,
  writeResults,
  type BeamResults,
  type RangeEntryResults,
} from '../../src/results/index.ts';
import { beam, pin, roller, spread } from '../support/beam.ts';
import { patterned } from '../support/patterned.ts';
import { resultsInput, solvedBeam } from '../support/results-input.ts';

/** 10 m and an overhang of 4 m under 1 kN/m of D and 2 kN/m of L, which may stand on either stretch. */
const structure = patterned(
  beam({
    points: { A: 0, B: 10, C: 14 },
    supports: { A: pin, B: roller() },
    loads: [
      spread(1000, 'A', 'C', { case: 'D' }),
      spread(2000, 'A', 'C', { case: 'L' }),
    ],
  }),
  'L',
);
const choices = new Map([
  ['L:1', { kind: 'span', case: 'L', from: 'A', to: 'B' } as const],
  ['L:2', { kind: 'span', case: 'L', from: 'B', to: 'C' } as const],
]);

function collected(stations?: number): BeamResults {
  const member = {
    ...solvedBeam('B1', structure, {
      'D + L': { for: 'strength', of: { D: 1, L: 1 } },
    }),
    choices,
  };
  return collectResults(resultsInput('si', [member], stations))
    .members[0] as BeamResults;
}

const entry = (mark: string, stations?: number): RangeEntryResults =>
  collected(stations).results[mark] as RangeEntryResults;

describe('an entry without a single state', () => {
  test('says that it is a range and gives every reaction component its greatest and its least', () => {
    const { kind, reactions } = entry('L');
    expect(kind).toBe('range');
    // By hand: 10 kN from the span; −2·4·2/10 = −1.6 kN from the overhang.
    expect(reactions[0]).toEqual({
      point: 'A',
      x: {
        max: { value: 0, unit: 'kN', arrangement: { spans: [] } },
        min: { value: 0, unit: 'kN', arrangement: { spans: [] } },
      },
      y: {
        max: {
          value: 10,
          unit: 'kN',
          arrangement: { spans: [{ case: 'L', from: 'A', to: 'B' }] },
        },
        min: {
          value: -1.6,
          unit: 'kN',
          arrangement: { spans: [{ case: 'L', from: 'B', to: 'C' }] },
        },
      },
      moment: null,
    });
  });

  test('names the loaded spans of every extreme', () => {
    expect(entry('L').moment).toEqual({
      max: {
        value: expect.closeTo(25, 9) as number,
        unit: 'kN m',
        at: { value: 5, unit: 'm' },
        arrangement: { spans: [{ case: 'L', from: 'A', to: 'B' }] },
      },
      min: {
        value: expect.closeTo(-16, 9) as number,
        unit: 'kN m',
        at: { value: 10, unit: 'm' },
        arrangement: { spans: [{ case: 'L', from: 'B', to: 'C' }] },
      },
    });
  });

  test('makes a range of every combination that it is part of, and of the envelope', () => {
    const { results, envelope } = collected();
    expect(results['D + L']).toMatchObject({ kind: 'range' });
    expect(results.D).not.toHaveProperty('kind');
    // D alone leaves −8 over B.
    expect(envelope.moment.min).toMatchObject({
      value: expect.closeTo(-24, 9) as number,
      result: 'D + L',
      arrangement: { spans: [{ case: 'L', from: 'B', to: 'C' }] },
    });
  });

  test('gives the greatest and the least at every station', () => {
    const { stations } = entry('L', 7);
    expect(stations).toHaveLength(8);
    // At B, just left of it: −10 and the −1.6 of the overhang, or nothing.
    expect(stations![5]).toEqual({
      x: { value: 10, unit: 'm' },
      shear_max: { value: 0, unit: 'kN' },
      shear_min: { value: expect.closeTo(-11.6, 9) as number, unit: 'kN' },
      moment_max: { value: 0, unit: 'kN m' },
      moment_min: { value: expect.closeTo(-16, 9) as number, unit: 'kN m' },
      slope_max: null,
      slope_min: null,
      deflection_max: null,
      deflection_min: null,
    });
  });

  test('is read back as it was written, and a field of it that is missing is told', () => {
    const text = writeResults(
      collectResults(
        resultsInput('us', [{ ...solvedBeam('B1', structure), choices }], 4),
      ),
    );
    const reading = readResults(text);
    expect(reading.kind).toBe('results');
    if (reading.kind === 'results') expect(writeResults(reading.results)).toBe(text);
    const broken = readResults(text.replace('"moment_max"', '"moment"'));
    expect(broken).toMatchObject({
      kind: 'misshapen',
      misfits: [{ path: 'members[0].results.L.stations[0].moment_max' }],
    });
    expect(readResults(text.replace('"spans"', '"loaded"')).kind).toBe('misshapen');
  });
});

describe('an arrangement as data', () => {
  test('tells what is taken of a carried reaction', () => {
    const base = beam({
      points: { A: 0, B: 10 },
      supports: { A: pin, B: roller() },
      cases: ['L'],
    });
    const load = { case: 'L', kind: 'point', x: 4, fx: 0 } as const;
    const carried = {
      ...base,
      choices: [
        {
          id: 'c',
          case: 'L',
          options: [
            { name: 'greatest', loads: [{ ...load, id: 'a', fy: -8000 }] },
            { name: 'least', loads: [{ ...load, id: 'b', fy: 2000 }] },
          ],
        },
      ],
    };
    const names = new Map([
      [
        'c',
        {
          kind: 'carried',
          case: 'L',
          member: 'B2',
          point: 'C',
          component: 'y',
        } as const,
      ],
    ]);
    const [member] = collectResults(
      resultsInput('si', [{ ...solvedBeam('B1', carried), choices: names }]),
    ).members;
    expect((member as BeamResults).results.L).toMatchObject({
      moment: {
        max: {
          value: expect.closeTo(19.2, 9) as number,
          arrangement: {
            spans: [],
            carried: [
              {
                case: 'L',
                member: 'B2',
                point: 'C',
                component: 'y',
                taken: 'greatest',
              },
            ],
          },
        },
      },
    });
  });
});
