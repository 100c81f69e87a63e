import { describe, expect, test } from 'vitest';
import type { BeamWork } from '../../../src/derivation/index.ts';
import { closureFaults } from '../../../src/derivation/load-path/close-project.ts';
import { projectClosure } from '../../../src/derivation/load-path/project-closure.ts';
import { derivedFolder } from '../../support/derived.ts';
import { beamYaml } from '../../support/folder.ts';

/**
 * Three members, by hand. J1, 6 m under 2 kN/m, gives 6 kN at either end. G1, 8 m, takes J1.A at 2 m and at
 * 6 m and 4 kN in the middle: 8 kN at either end. L1, 5 m under 1 kN/m, takes G1.B in the middle: 6.5 kN.
 */
function chain(change: Readonly<Record<string, string>> = {}): readonly BeamWork[] {
  const simple = '{ A: pin, B: roller }';
  return derivedFolder({
    'project.yaml': 'project: { title: Weir }\nunits: si\n',
    'loads.yaml':
      'cases:\n  D: { kind: dead }\n  L: { kind: live }\n  W: { kind: wind }\n',
    'members/g1.yaml': beamYaml({
      mark: 'G1',
      points: '{ A: 0 m, M: 4 m, B: 8 m }',
      supports: simple,
      loads:
        '[ { reaction: J1.A, at: [ 2 m, 6 m ] }, { case: D, point: 4 kN, at: M } ]',
    }),
    'members/j1.yaml': beamYaml({
      mark: 'J1',
      points: '{ A: 0 m, B: 6 m }',
      supports: simple,
      typical: '{ count: 5 }',
      loads:
        '[ { case: D, uniform: 2 kN/m }, { case: W, point: 3 kN, at: 1 m, direction: left } ]',
    }),
    'members/l1.yaml': beamYaml({
      mark: 'L1',
      points: '{ A: 0 m, B: 5 m }',
      supports: simple,
      loads:
        '[ { reaction: G1.B, at: 2.5 m }, { case: D, uniform: 1 kN/m }, { case: L, varying: [ 0 kN/m, 4 kN/m ] } ]',
      ...change,
    }),
  }).works;
}

const inKilonewtons = (values: readonly number[]): readonly number[] =>
  values.map((value) => Number((value / 1000).toFixed(9)) + 0);

describe('the closure of a project', () => {
  test('adds applied loads and n − 1 times each carried reaction up to the reactions at the ground', () => {
    const closure = projectClosure(chain(), 'y');
    expect(closure.cases).toEqual(['D', 'L', 'W']);
    expect(
      closure.applied.map(({ mark, values }) => [mark, ...inKilonewtons(values)]),
    ).toEqual([
      ['G1', 4, 0, 0],
      ['J1', 12, 0, 0],
      ['L1', 5, 10, 0],
    ]);
    expect(
      closure.again.map(({ mark, point, times, values }) => [
        `${mark}.${point}`,
        times,
        ...inKilonewtons(values),
      ]),
    ).toEqual([['J1.A', 2, 6, 0, 0]]);
    expect(
      closure.ground.map(({ mark, point, values }) => [
        `${mark}.${point}`,
        ...inKilonewtons(values),
      ]),
    ).toEqual([
      ['G1.A', 8, 0, 0],
      ['J1.B', 6, 0, 0],
      ['L1.A', 6.5, 3.333333333, 0],
      ['L1.B', 6.5, 6.666666667, 0],
    ]);
    expect(closure.sums[0]).toMatchObject({
      case: 'D',
      applied: expect.closeTo(21_000, 6),
      again: expect.closeTo(6000, 6),
      beyond: 0,
      ground: expect.closeTo(27_000, 6),
      residual: expect.closeTo(0, 6),
    });
    expect(closure.closes).toBe(true);
  });

  test('counts a reaction with the times that it is carried, halves too', () => {
    const closure = projectClosure(
      chain({
        loads:
          '[ { reaction: G1.B, at: 2.5 m, times: 2.5, because: shared with the next bay } ]',
      }),
      'y',
    );
    expect(closure.again.map(({ times }) => times)).toEqual([2.5, 2]);
    // 16 applied, 1.5 times 8 and 6 again; 8 and 6 at the ground, and 2.5 times 8 under L1.
    expect(closure.sums[0]).toMatchObject({
      again: expect.closeTo(18_000, 6),
      ground: expect.closeTo(34_000, 6),
    });
    expect(closure.closes).toBe(true);
  });

  test('takes what is not carried along x as left at the support that gives it', () => {
    const closure = projectClosure(chain(), 'x');
    expect(
      closure.ground.map(({ mark, point, values }) => [
        `${mark}.${point}`,
        ...inKilonewtons(values),
      ]),
    ).toEqual([
      ['G1.A', 0, 0, 0],
      ['J1.A', 0, 0, 3],
      ['L1.A', 0, 0, 0],
    ]);
    expect(closure.closes).toBe(true);
  });

  test('is false where a reaction is not what the loads ask for', () => {
    const works = chain();
    const [g1] = works;
    if (g1 === undefined) throw new Error('no work');
    const bent = {
      ...g1,
      solution: {
        ...g1.solution,
        results: g1.solution.results.map((result) => ({
          ...result,
          reactions: result.reactions.map((one) =>
            result.mark === 'D' && one.point === 'A' && one.y !== null
              ? { ...one, y: one.y + 1 }
              : one,
          ),
        })),
      },
    };
    const closure = projectClosure([bent, ...works.slice(1)], 'y');
    expect(closure.closes).toBe(false);
    expect(closure.sums[0]?.residual).toBeCloseTo(-1, 6);
    expect(
      closureFaults([closure]).map(({ code, message }) => [code, message]),
    ).toEqual([
      [
        'check-failed',
        expect.stringMatching(
          /^case D: over the whole project the vertical forces do not close/,
        ),
      ],
    ]);
  });
});
