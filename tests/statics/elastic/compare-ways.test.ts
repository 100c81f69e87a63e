import { describe, expect, test } from 'vitest';
import { atRest } from '../../../src/statics/elastic/acting.ts';
import {
  allowedDifference,
  differenceOf,
  scaleOf,
} from '../../../src/statics/elastic/compare-ways.ts';
import { elasticModel } from '../../../src/statics/elastic/elastic-model.ts';
import { beam, down, fixed, roller, spring } from '../../support/beam.ts';
import { bothWays } from './both-ways.ts';

const structure = beam({
  points: { A: 0, B: 5 },
  supports: { A: fixed, B: roller() },
  loads: [down(8, 2)],
});
const model = elasticModel(structure);
const state = bothWays(structure).moments!;
const scale = scaleOf(model, atRest(model), state);

describe('comparing two ways', () => {
  test('measures moments by the greatest moment or force over the longest bar, and forces alike', () => {
    expect(scale.moment).toBe(scale.force * 5);
    const [a, b] = state.joints;
    expect(scale.force).toBe(Math.max(Math.abs(a!.shearRight), Math.abs(b!.shearLeft)));
  });

  test('finds the one figure that is off, and what is no number', () => {
    const off = (change: number) => ({
      ...state,
      joints: state.joints.map((joint, place) =>
        place === 0 ? { ...joint, momentRight: joint.momentRight + change } : joint,
      ),
    });
    expect(differenceOf(state, state, scale)).toBe(0);
    expect(differenceOf(state, off(1e-6 * scale.moment), scale)).toBeCloseTo(1e-6, 12);
    expect(differenceOf(state, off(NaN), scale)).toBe(Infinity);
    expect(differenceOf(state, { ...state, joints: [] }, scale)).toBe(Infinity);
  });

  test('takes for scale what would bend the beam as far, where settlements strain nothing', () => {
    const joint = { v: 0, shearLeft: 0, shearRight: 0, momentLeft: 0, momentRight: 0 };
    const turned = { ...joint, turnLeft: 0.01, turnRight: 0.01 };
    const moved = { slide: 0, joints: [turned, turned] };
    expect(scaleOf(model, atRest(model), moved).moment).toBeCloseTo(0.01 / 5, 15);
  });

  test('allows 1e-9, more only for stiffnesses ten thousand times apart, and never more than 1e-6', () => {
    const stepped = (EI: number) =>
      elasticModel({
        ...structure,
        stiffness: [
          { from: 0, to: 1, EI: 1 },
          { from: 1, to: 5, EI },
        ],
      });
    expect(allowedDifference(stepped(1e4), 1e5)).toBe(1e-9);
    expect(allowedDifference(stepped(1e5), 30)).toBeCloseTo(3e-8, 20);
    expect(allowedDifference(stepped(1e-5), 0.5)).toBe(1e-9);
    expect(allowedDifference(stepped(1e5), 1e9)).toBe(1e-6);
    const sprung = (stiffness: number) =>
      elasticModel(
        beam({ points: { A: 0, B: 5 }, supports: { A: fixed, B: spring(stiffness) } }),
      );
    // k l³ against EI = 1
    expect(allowedDifference(sprung(1e4 / 125), 50)).toBe(1e-9);
    expect(allowedDifference(sprung(2e4 / 125), 50)).toBeCloseTo(5e-8, 20);
    expect(allowedDifference(sprung(1e-5 / 125), 50)).toBeCloseTo(5e-8, 20);
  });
});
