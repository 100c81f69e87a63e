import { describe, expect, test } from 'vitest';
import { idealise, type Idealised } from '../../../src/project/index.ts';
import { beamYaml, soundFolder } from '../../support/folder.ts';

function idealised(rest: Readonly<Record<string, string>>): Idealised {
  const project = soundFolder({
    'loads.yaml':
      'cases:\n  D: { kind: dead }\n  L: { kind: live, pattern: true }\n  S: { kind: snow }\n',
    'members/b1.yaml': beamYaml({
      points: '{ A: 0 m, B: 6 m, H: 8 m, C: 12 m, D: 14 m }',
      supports: '{ A: pin, B: roller, C: roller }',
      ...rest,
    }),
  });
  const [member] = project.members;
  if (member === undefined) throw new Error('no member');
  return idealise(project, member);
}

describe('a case that may stand on some spans and not on others', () => {
  const loads =
    '[ { case: D, uniform: 1 kN/m }, { case: L, uniform: 2 kN/m, from: 4 m, to: D }, { case: L, point: 5 kN, at: 10 m } ]';

  test('has a choice a span and overhang, off or on, its loads cut at the supports', () => {
    const { structure } = idealised({ loads });
    expect(structure.loads.map((load) => load.id)).toEqual(['load-0001']);
    expect(
      structure.choices?.map(({ id, case: mark, span, options }) => [
        id,
        mark,
        span,
        options.map(({ name, loads: of }) => [
          name,
          of.map((load) => [
            load.id,
            load.kind === 'distributed' ? [load.from, load.to] : load.x,
          ]),
        ]),
      ]),
    ).toEqual([
      [
        'L:A B',
        'L',
        { from: 0, to: 6 },
        [
          ['off', []],
          ['on', [['load-0002:A B', [4, 6]]]],
        ],
      ],
      [
        'L:B C',
        'L',
        { from: 6, to: 12 },
        [
          ['off', []],
          [
            'on',
            [
              ['load-0002:B C', [6, 12]],
              ['load-0003', 10],
            ],
          ],
        ],
      ],
      [
        'L:C D',
        'L',
        { from: 12, to: 14 },
        [
          ['off', []],
          ['on', [['load-0002:C D', [12, 14]]]],
        ],
      ],
    ]);
  });

  test('stands whole and in its place where the sheet draws it', () => {
    const { asPlaced, loads: views } = idealised({ loads });
    expect(asPlaced.choices).toBeUndefined();
    expect(asPlaced.loads).toEqual(views.map((view) => view.load));
    expect(asPlaced.loads.map((load) => load.id)).toEqual([
      'load-0001',
      'load-0002',
      'load-0003',
    ]);
  });

  test('has no choice for a span without loads of it', () => {
    const { structure } = idealised({
      loads: '[ { case: L, uniform: 2 kN/m, span: B-C } ]',
    });
    expect(structure.choices?.map((choice) => choice.id)).toEqual(['L:B C']);
  });

  test('takes what stands exactly at a support as a choice of its own', () => {
    const { structure } = idealised({
      loads:
        '[ { case: L, point: 5 kN, at: B }, { case: L, couple: 2 kN m, at: C, turn: clockwise }, { case: L, point: 1 kN, at: [ A, D ] } ]',
    });
    expect(
      structure.choices?.map(({ id, span, options }) => [
        id,
        span,
        options[1]?.loads.map((load) => load.kind),
      ]),
    ).toEqual([
      ['L:A B', { from: 0, to: 6 }, ['point']],
      ['L:B', { from: 6, to: 6 }, ['point']],
      ['L:C', { from: 12, to: 12 }, ['couple']],
      ['L:C D', { from: 12, to: 14 }, ['point']],
    ]);
  });

  test('keeps a span whole across a hinge and across a support that leaves y free', () => {
    const { structure } = idealised({
      supports:
        '{ A: pin, B: roller, H: { type: spring, rotation: 900 kN m/rad }, C: roller, D: roller }',
      hinges: '[ B ]',
      loads: '[ { case: L, uniform: 2 kN/m } ]',
    });
    expect(structure.choices?.map((choice) => choice.span)).toEqual([
      { from: 0, to: 6 },
      { from: 6, to: 12 },
      { from: 12, to: 14 },
    ]);
  });

  test('stands as it is placed on a beam of one span', () => {
    const { structure, asPlaced } = idealised({
      points: '{ A: 0 m, H: 4 m, D: 14 m }',
      supports: '{ A: fixed, D: roller }',
      loads: '[ { case: L, uniform: 2 kN/m } ]',
      hinges: '[ H ]',
    });
    expect(structure).toEqual(asPlaced);
    expect(structure.choices).toBeUndefined();
  });
});
