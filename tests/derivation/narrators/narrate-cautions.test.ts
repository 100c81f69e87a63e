import { describe, expect, test } from 'vitest';
import type { CautionStep } from '../../../src/derivation/index.ts';
import {
  derivedBeam,
  derivedFolder,
  siProject,
  stepsOf,
} from '../../support/derived.ts';
import { beamYaml } from '../../support/folder.ts';

const cautions = (steps: ReturnType<typeof stepsOf>): readonly CautionStep[] =>
  steps.flatMap((step) => (step.kind === 'caution' ? [step] : []));

describe('narrateCautions', () => {
  test('names a support that has to pull, with the combination that asks most of it', () => {
    const { derivation } = derivedBeam(
      {
        points: '{ A: 0 ft, B: 10 ft, C: 16 ft }',
        supports: '{ A: roller, B: pin }',
        loads:
          '[ { case: D, uniform: 0.2 kip/ft, from: A, to: B }, { case: W, uniform: 0.2 kip/ft, from: B, to: C } ]',
      },
      {
        'loads.yaml':
          'cases: { D: { kind: dead }, W: { kind: wind } }\ncombinations: [ asce7-strength ]\n',
      },
    );
    expect(cautions(stepsOf(derivation, 'given'))).toMatchObject([]);
    const { derivation: lifted } = derivedBeam(
      {
        points: '{ A: 0 ft, B: 10 ft, C: 16 ft }',
        supports: '{ A: roller, B: pin }',
        loads:
          '[ { case: D, uniform: 0.1 kip/ft, from: A, to: B }, { case: W, uniform: 0.4 kip/ft, from: B, to: C } ]',
      },
      {
        'loads.yaml':
          'cases: { D: { kind: dead }, W: { kind: wind } }\ncombinations: [ asce7-strength ]\n',
      },
    );
    const [caution] = cautions(stepsOf(lifted, 'given'));
    // 0.9 (0.5 kip) − 0.4 (6) (3) / 10 kip.
    expect(caution).toMatchObject({
      caution: 'uplift',
      facts: { point: 'A', entry: '0.9D + W', size: '0.2700\u00a0kip' },
    });
  });

  test('judges cases where nothing is combined', () => {
    const { derivation } = derivedBeam({
      points: '{ A: 0 ft, B: 10 ft, C: 16 ft }',
      supports: '{ A: roller, B: pin }',
      loads: '[ { point: 2 kip, at: C } ]',
    });
    expect(cautions(stepsOf(derivation, 'given'))).toMatchObject([
      { caution: 'uplift', facts: { point: 'A', entry: 'all' } },
    ]);
  });

  test('says so on both sheets where a part of a carried reaction stays behind', () => {
    const { derivations } = derivedFolder({
      'project.yaml': siProject,
      'members/b1.yaml': beamYaml({
        points: '{ A: 0 m, B: 4 m }',
        supports: '{ A: pin, B: roller }',
        loads:
          '[ { point: 4 kN, at: 2 m }, { point: 3 kN, at: 2 m, direction: right } ]',
      }),
      'members/g1.yaml': beamYaml({
        mark: 'G1',
        points: '{ A: 0 m, B: 8 m }',
        supports: '{ A: pin, B: roller }',
        loads: '[ { reaction: B1.A, at: 3 m } ]',
      }),
    });
    const of = (mark: string) =>
      cautions(
        stepsOf(
          derivations.find((one) => one.mark === mark)!,
          'given',
        ),
      );
    expect(of('G1')).toMatchObject([
      {
        caution: 'left-behind',
        facts: { member: 'B1', point: 'A', what: '3.000\u00a0kN along x' },
      },
    ]);
    expect(of('B1')).toMatchObject([
      { caution: 'handed-on-in-part', facts: { member: 'G1' } },
    ]);
  });
});
