import { describe, expect, test } from 'vitest';
import type { Step } from '../../../src/derivation/index.ts';
import { statementsOf } from '../../../src/derivation/map-statements.ts';
import type { MovingStep } from '../../../src/derivation/steps/moving-steps.ts';
import { recheck } from '../../../src/equation/index.ts';
import { derivedFolder } from '../../support/derived.ts';
import { beamYaml } from '../../support/folder.ts';

const project = 'project: { title: Quarry road bridge }\nunits: us\n';

function moving(rest: Readonly<Record<string, string>>): readonly Step[] {
  const { derivations } = derivedFolder({
    'project.yaml': project,
    'loads.yaml': 'cases: { L: { kind: live } }\n',
    'members/b1.yaml': beamYaml(rest),
  });
  const section = derivations[0]!.sections.find(({ kind }) => kind === 'moving-loads');
  return section!.steps;
}

function influences(
  steps: readonly Step[],
): readonly Extract<MovingStep, { kind: 'influence' }>[] {
  return steps.flatMap((step) => (step.kind === 'influence' ? [step] : []));
}

const simple = moving({
  points: '{ A: 0 ft, B: 60 ft }',
  supports: '{ A: pin, B: roller }',
  loads:
    '[ { case: L, axles: [ 8 kip, 32 kip, 32 kip ], spacing: [ 14 ft, 14 ft to 30 ft ], lane: 0.64 klf, times: { axles: 1.33 }, because: dynamic allowance, relieving: kept } ]',
});
const two = moving({
  points: '{ A: 0 ft, B: 20 ft, C: 50 ft }',
  supports: '{ A: pin, B: roller, C: roller }',
  loads:
    '[ { case: L, axles: [ 20 kip, 20 kip ], spacing: [ 8 ft ], travel: right, relieving: left out } ]',
});

describe('moving loads on the sheet', () => {
  test('tell what rolls, what stands by default, and the factor with its products', () => {
    const train = simple.find((step) => step.kind === 'train')!;
    expect(train).toMatchObject({
      kind: 'train',
      travel: 'both',
      taken: { travel: true, relieving: false },
      factors: { because: 'dynamic allowance' },
    });
    expect(train.axles.map((axle) => 'behindAtMost' in axle)).toEqual([
      false,
      false,
      true,
    ]);
  });

  test('work reactions and the moment where they are greatest; shear at an end is a reaction', () => {
    expect(influences(simple).map(({ of, sense }) => `${of} ${sense}`)).toEqual([
      'reaction max',
      'reaction max',
      'moment max',
    ]);
    expect(influences(two).map(({ of, sense }) => `${of} ${sense}`)).toEqual([
      'reaction max',
      'reaction min',
      'reaction max',
      'reaction max',
      'reaction min',
      'shear max',
      'shear min',
      'moment max',
      'moment min',
    ]);
  });

  test('say which axle stands on a break of the line, or that the sum turns', () => {
    const [left, pulling] = influences(two);
    expect(left).toMatchObject({ axle: 2, direction: 'right', isStraight: false });
    expect(pulling).not.toHaveProperty('axle');
  });

  test.each([
    ['a simple beam', simple],
    ['two spans', two],
  ])('give lines that come out again from their printed figures, on %s', (_, steps) => {
    const statements = steps.flatMap(statementsOf);
    expect(statements.length).toBeGreaterThan(5);
    for (const statement of statements)
      expect(recheck(statement).every(({ agrees }) => agrees)).toBe(true);
  });

  test.each([
    ['a simple beam', simple],
    ['two spans', two],
  ])('hold the worst place against those beside it, on %s', (_, steps) => {
    for (const { places, sense } of influences(steps)) {
      const value = ({ value: of }: (typeof places)[number]): number =>
        of.kind === 'figure' ? of.quantity.si : NaN;
      const worst = places.filter(({ isWorst }) => isWorst);
      expect(worst).toHaveLength(1);
      for (const place of places)
        expect(
          (sense === 'max' ? 1 : -1) * (value(worst[0]!) - value(place)),
        ).toBeGreaterThanOrEqual(-1e-9 * Math.abs(value(worst[0]!)));
    }
  });

  test('draw each line and the envelope, and end with what is not worked', () => {
    const shown = two.flatMap((step) => (step.kind === 'figure' ? [step.shows] : []));
    expect(shown.filter((what) => what === 'influence-line')).toHaveLength(9);
    expect(shown.at(-1)).toBe('moving-envelope');
    expect(two.at(-1)).toMatchObject({ kind: 'caution', caution: 'moving' });
  });
});
