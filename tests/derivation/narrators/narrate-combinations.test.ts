import { describe, expect, test } from 'vitest';
import { toLinear } from '../../../src/equation/index.ts';
import { derivedBeam, linesOfStatement, stepsOf } from '../../support/derived.ts';

const loads = `cases: { D: { kind: dead }, L: { kind: live }, W: { kind: wind } }
combinations:
  - { mark: D + L, factors: { D: 1, L: 1 } }
  - { mark: D + L + W, factors: { D: 1, L: 1, W: 1 } }
  - { mark: 0.9D + W, factors: { D: 0.9, W: 1 } }
  - { mark: serviceable, factors: { D: 1, L: 0.5 }, for: service }
`;

const { derivation } = derivedBeam(
  {
    points: '{ A: 0 ft, B: 20 ft }',
    supports: '{ A: pin, B: roller }',
    loads: '[ { case: D, uniform: 0.2 kip/ft }, { case: L, point: 6 kip, at: 8 ft } ]',
  },
  { 'loads.yaml': loads },
);
const steps = stepsOf(derivation, 'combinations');
const governing = steps.flatMap((step) => (step.kind === 'governing' ? [step] : []));

describe('narrateCombinations', () => {
  test('puts cases, strength and service into tables of their own', () => {
    const tables = steps.flatMap((step) => (step.kind === 'entries' ? [step] : []));
    expect(
      tables.map((table) => [
        table.for,
        table.rows.map(({ mark, alike }) => [mark, ...alike]),
      ]),
    ).toEqual([
      ['cases', [['D'], ['L'], ['W']]],
      ['strength', [['D + L', 'D + L + W'], ['0.9D + W']]],
      ['service', [['serviceable']]],
    ]);
  });

  test('draws an envelope only over entries of one kind', () => {
    const envelopes = steps.flatMap((step) =>
      step.kind === 'figure' ? [step.for] : [],
    );
    expect(envelopes).toEqual(['strength']);
  });

  test('works the governing moment from its cases at one station', () => {
    const [most] = governing;
    expect(most).toMatchObject({
      for: 'strength',
      what: 'moment-max',
      entry: 'D + L',
      at: { station: { kind: 'figure' } },
    });
    expect(linesOfStatement(most!.statement)).toEqual([
      'M_max = 9.600 kip·ft + 28.80 kip·ft',
      '= 38.40 kip·ft',
    ]);
  });

  test('names the entries that come to the same, and the next that really is less', () => {
    const [most] = governing;
    expect(most?.equals).toEqual(['D + L + W']);
    expect(most?.next?.entry).toBe('0.9D + W');
    expect(most?.next === undefined ? '' : toLinear(most.next.value)).toBe(
      '9.000 kip·ft',
    );
    expect(most?.next?.share).toBe('23.4');
  });

  test('gives of two shears of one size the positive one', () => {
    const { derivation: symmetric } = derivedBeam({
      points: '{ A: 0 ft, B: 20 ft }',
      supports: '{ A: pin, B: roller }',
      loads: '[ { case: D, uniform: 0.3 kip/ft }, { case: L, uniform: 0.7 kip/ft } ]',
    });
    const [table] = stepsOf(symmetric, 'combinations');
    const shears =
      table?.kind === 'entries' ? table.rows.map(({ shear }) => toLinear(shear)) : [];
    expect(shears).toEqual(['3.000', '7.000']);
  });

  test('keeps the results of strength and service apart', () => {
    const [results] = stepsOf(derivation, 'results');
    expect(
      results?.kind === 'results'
        ? results.groups.map((group) => [group.for, group.lines.length > 0])
        : [],
    ).toEqual([
      ['strength', true],
      ['service', true],
    ]);
  });

  test('says of a member on which nothing acts that every result is 0', () => {
    const { derivation: idle } = derivedBeam({
      points: '{ A: 0 ft, B: 20 ft }',
      supports: '{ A: pin, B: roller }',
    });
    const [results] = stepsOf(idle, 'results');
    expect(results).toMatchObject({ kind: 'results', groups: [] });
  });
});
