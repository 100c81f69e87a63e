import { describe, expect, test } from 'vitest';
import { envelopesOf } from '../../src/results/envelope-figures.ts';
import { figuresIn } from '../../src/results/figures-in.ts';
import { beam, down, pin, roller } from '../support/beam.ts';
import { solvedBeam } from '../support/results-input.ts';

const figure = figuresIn('si');
const structure = beam({
  points: { A: 0, B: 4, C: 6 },
  supports: { A: pin, B: roller() },
  loads: [down(8000, 2, { case: 'D' }), down(3000, 'C', { case: 'L' })],
});

describe('envelopesOf', () => {
  test('runs over the cases where there are no combinations', () => {
    const { entries } = solvedBeam('B1', structure);
    const { envelope, envelopes } = envelopesOf(entries, {
      figure,
      choices: new Map(),
    });
    expect(envelope.moment.max).toEqual({
      value: 8,
      unit: 'kN m',
      at: { value: 2, unit: 'm' },
      result: 'D',
    });
    expect(envelope.moment.min).toMatchObject({
      value: -6,
      at: { value: 4 },
      result: 'L',
    });
    expect(envelopes).toEqual({ strength: null, service: null });
  });

  test('runs over combinations alone where there are some, and one a purpose', () => {
    const { entries } = solvedBeam('B1', structure, {
      '1.4D': { for: 'strength', of: { D: 1.4 } },
      '1.2D + 1.6L': { for: 'strength', of: { D: 1.2, L: 1.6 } },
      'D + L': { for: 'service', of: { D: 1, L: 1 } },
    });
    const { envelope, envelopes } = envelopesOf(entries, {
      figure,
      choices: new Map(),
    });
    expect(envelope.moment.max.result).toBe('1.4D');
    expect(envelope.moment.min).toMatchObject({ value: -9.6, result: '1.2D + 1.6L' });
    expect(envelopes.strength).toEqual(envelope);
    expect(envelopes.service?.moment.min).toMatchObject({ value: -6, result: 'D + L' });
  });

  test('counts an entry that is case and combination in one', () => {
    const { entries } = solvedBeam('B1', structure);
    const [dead, live] = entries;
    const { envelope, envelopes } = envelopesOf(
      [{ ...dead!, uses: ['case', 'service'] }, live!],
      { figure, choices: new Map() },
    );
    expect(envelope.moment.min.result).toBe('D');
    expect(envelopes.strength).toBeNull();
    expect(envelopes.service).toEqual(envelope);
  });
});
