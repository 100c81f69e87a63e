import { describe, expect, test } from 'vitest';
import { idealise } from '../../../src/project/index.ts';
import { beamYaml, soundFolder } from '../../support/folder.ts';
import type { FreeCurvature } from '../../../src/statics/index.ts';

function curvaturesOf(
  line: string,
  rest: Readonly<Record<string, string>> = {},
): readonly FreeCurvature[] {
  const project = soundFolder({
    'members/b1.yaml': beamYaml({
      points: '{ A: 0 m, B: 3 m, C: 8 m }',
      loads: `[ ${line} ]`,
      ...rest,
    }),
  });
  const [member] = project.members;
  if (member === undefined) throw new Error('no member');
  return idealise(project, member).structure.curvatures ?? [];
}

describe('a temperature difference', () => {
  test('bows a beam upward where the top is warmer: curvature −α dT / h', () => {
    // 12e-6 times 20 over 0.4 m.
    expect(
      curvaturesOf(
        '{ case: T, temperature: { difference: 20 K, depth: 400 mm, expansion: 12e-6 1/K }, from: A, to: B }',
      ),
    ).toEqual([
      {
        id: 'load-0001',
        case: 'T',
        from: 0,
        to: 3,
        curvature: expect.closeTo(-6e-4, 15),
      },
    ]);
  });

  test('is a change: 36 F are 20 K, without an offset', () => {
    const [one] = curvaturesOf(
      '{ case: T, temperature: { difference: 36 F, depth: 400 mm, expansion: 12e-6 1/K } }',
    );
    expect(one).toMatchObject({ from: 0, to: 8, curvature: expect.closeTo(-6e-4, 15) });
  });

  test('bows it downward where the bottom is warmer', () => {
    const [one] = curvaturesOf(
      '{ case: T, temperature: { difference: -10 K, depth: 0.4 m, expansion: 12e-6 1/K } }',
    );
    expect(one?.curvature).toBeCloseTo(3e-4, 15);
  });

  test('takes its factor along', () => {
    const [one] = curvaturesOf(
      '{ case: T, temperature: { difference: 20 K, depth: 0.4 m, expansion: 12e-6 1/K }, times: 0.5, because: half of it is shaded }',
    );
    expect(one?.curvature).toBeCloseTo(-3e-4, 15);
  });

  test('takes the depths of the cross-sections that it runs over, each along its own stretch', () => {
    expect(
      curvaturesOf('{ case: T, temperature: { difference: 20 K }, from: 1 m, to: C }', {
        sections:
          '[ { from: A, to: B, section: { depth: 200 mm } }, { from: B, to: C, section: { depth: 400 mm } } ]',
        material: '{ expansion: 12e-6 1/K }',
      }),
    ).toEqual([
      expect.objectContaining({
        from: 1,
        to: 3,
        curvature: expect.closeTo(-12e-4, 15),
      }),
      expect.objectContaining({ from: 3, to: 8, curvature: expect.closeTo(-6e-4, 15) }),
    ]);
  });
});
