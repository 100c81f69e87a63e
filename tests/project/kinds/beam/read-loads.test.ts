import { describe, expect, test } from 'vitest';
import { findingsOn, soundBeam } from '../../../support/folder.ts';
import type { BeamLoad } from '../../../../src/project/index.ts';

const cases = 'cases:\n  D: { kind: dead }\n  L: { kind: live }\n';
const areas = `${cases}areas: { deck: { D: 65 psf, L: 90 psf } }\n`;
const loadsOf = (line: string, loads: string = cases): readonly BeamLoad[] =>
  soundBeam({ loads: `[ ${line} ]` }, { 'loads.yaml': loads }).loads;
const findings = (line: string, loads: string = cases): readonly string[] =>
  findingsOn({ loads: `[ ${line} ]` }, { 'loads.yaml': loads }).filter(
    (one) => !one.includes('unused'),
  );

describe('a point load', () => {
  test('acts down unless it says otherwise', () => {
    expect(loadsOf('{ case: L, point: 8.4 kip, at: B, note: Hoist }')).toMatchObject([
      {
        kind: 'point',
        case: 'L',
        size: { text: '8.4' },
        at: { point: 'B' },
        direction: { degrees: 270 },
        note: 'Hoist',
        uses: [],
      },
    ]);
  });

  test('comes once for every case and every place of its line', () => {
    const loads = loadsOf('{ point: { D: 1 kip, L: 2 kip }, at: [ B, 8 ft ] }');
    expect(
      loads.map((load) => [load.id, load.case, load.kind === 'point' && load.at.x]),
    ).toEqual([
      ['load-0001', 'D', expect.closeTo(1.8288, 9)],
      ['load-0002', 'D', expect.closeTo(2.4384, 9)],
      ['load-0003', 'L', expect.closeTo(1.8288, 9)],
      ['load-0004', 'L', expect.closeTo(2.4384, 9)],
    ]);
  });

  test.each([
    ['up', 90],
    ['down', 270],
    ['left', 180],
    ['right', 0],
    ['300 deg', 300],
    ['-60 deg', 300],
    ['405 deg', 45],
    ['1 rad', expect.closeTo(57.29577951, 6)],
    ['0', 0],
  ])('pointing %s points at %s degrees', (written, degrees) => {
    expect(
      loadsOf(`{ case: L, point: 1 kip, at: B, direction: ${written} }`),
    ).toMatchObject([{ direction: { degrees } }]);
  });
});

describe('a uniform load', () => {
  test('has one intensity from end to end', () => {
    expect(
      loadsOf(
        '{ case: D, uniform: 0.25 kip/ft, from: A, to: B, per: projection, direction: 300 deg }',
      ),
    ).toMatchObject([
      {
        kind: 'distributed',
        sizes: [{ text: '0.25' }, { text: '0.25' }],
        start: { point: 'A' },
        end: { point: 'B' },
        per: 'projection',
        direction: { degrees: 300, text: '300 deg' },
      },
    ]);
  });

  test('may hold several cases', () => {
    expect(
      loadsOf('{ uniform: { D: 0.25 klf, L: 0.4 klf }, span: A-C }').map(
        (load) => load.case,
      ),
    ).toEqual(['D', 'L']);
  });
});

describe('a varying load', () => {
  test('runs from its first size to its second, through zero if need be', () => {
    expect(
      loadsOf('{ case: D, varying: [ -1 klf, 2 klf ], from: A, to: B }'),
    ).toMatchObject([{ sizes: [{ si: expect.closeTo(-14593.9, 1) }, { text: '2' }] }]);
  });

  test('may hold a pair for every case', () => {
    const loads = loadsOf('{ varying: { D: [ 0, 1 klf ], L: [ 2 klf, 0 klf ] } }');
    expect(loads).toMatchObject([
      { case: 'D', sizes: [{ si: 0 }, { text: '1' }] },
      { case: 'L', sizes: [{ text: '2' }, { si: 0 }] },
    ]);
  });

  test('needs exactly two sizes', () => {
    expect(findings('{ case: D, varying: [ 1 klf, 2 klf, 3 klf ] }')).toEqual([
      'wrong-count 5:30 2 items belong in this list, not 3',
    ]);
  });
});

describe('a couple', () => {
  test('names its turn, and its side at a hinge', () => {
    const beam = soundBeam({
      supports: '{ A: fixed, C: roller }',
      hinges: '[ B ]',
      loads: '[ { couple: 9 kip ft, at: B, turn: clockwise, side: left } ]',
    });
    expect(beam.loads).toMatchObject([
      {
        kind: 'couple',
        turn: 'clockwise',
        side: 'left',
        at: { point: 'B' },
        size: { text: '9' },
      },
    ]);
  });

  test('has no side away from hinges', () => {
    expect(
      loadsOf('{ case: L, couple: 9 kip ft, at: 3 ft, turn: counterclockwise }')[0],
    ).not.toHaveProperty('side');
  });
});

describe('an area load', () => {
  test('becomes a load per length for every case of the area, the product kept with its parts', () => {
    expect(
      loadsOf('{ area: deck, width: 8 ft 6 in, from: A, to: C }', areas),
    ).toMatchObject([
      {
        case: 'D',
        kind: 'distributed',
        // 65 psf × 8.5 ft = 552.5 lb/ft
        sizes: [{ text: '0.5525' }, { text: '0.5525' }],
        from: {
          kind: 'area',
          area: 'deck',
          pressure: { text: '65' },
          widths: [{ compound: true }, { compound: true }],
        },
      },
      // 90 psf × 8.5 ft = 765 lb/ft
      { case: 'L', sizes: [{ text: '0.765' }, { text: '0.765' }] },
    ]);
  });

  test('tapers with its width', () => {
    expect(loadsOf('{ area: deck, width: [ 0 ft, 8 ft ] }', areas)[0]).toMatchObject({
      sizes: [{ text: '0' }, { text: '0.52' }],
      from: { widths: [{ text: '0' }, { text: '8' }] },
    });
  });

  test('may carry a factor on one of its cases, with the reason', () => {
    const loads = loadsOf(
      '{ area: deck, width: 8 ft, times: { L: 0.82 }, because: "ASCE 7-22 4.7.2" }',
      areas,
    );
    expect(loads[0]).not.toHaveProperty('factor');
    expect(loads[1]).toMatchObject({
      factor: { factor: 0.82, because: 'ASCE 7-22 4.7.2' },
    });
  });

  test('is in the units of the project', () => {
    const beam = soundBeam(
      { loads: '[ { area: deck, width: 2.5 m } ]' },
      {
        'project.yaml': 'project: { title: Weir }\nunits: si\n',
        'loads.yaml':
          'cases: { L: { kind: live } }\nareas: { deck: { L: 4 kN/m^2 } }\n',
      },
    );
    expect(beam.loads[0]).toMatchObject({ sizes: [{ text: '10', si: 10000 }, {}] });
  });
});

describe('a factor', () => {
  test('as a plain number is for all cases of the line', () => {
    expect(
      loadsOf(
        '{ point: { D: 1 kip, L: 2 kip }, at: B, times: 0.5, because: two hangers }',
      ),
    ).toMatchObject([{ factor: { factor: 0.5 } }, { factor: { factor: 0.5 } }]);
  });
});

describe('the case of a load', () => {
  test('may be left out where the project has one', () => {
    const one = 'cases: { L: { kind: live } }\n';
    expect(loadsOf('{ point: 1 kip, at: B }', one)).toMatchObject([{ case: 'L' }]);
  });

  test('without loads.yaml is the one that all loads name, project-wide', () => {
    const loads = '[ { point: 1 kip, at: B }, { case: S, point: 2 kip, at: B } ]';
    expect(soundBeam({ loads }).loads.map((load) => load.case)).toEqual(['S', 'S']);
  });
});

describe('remarks', () => {
  test('come once a line', () => {
    expect(findings('{ point: { D: -1 kip, L: -2 kip }, at: [ B, 8 ft ] }')).toEqual([
      'load-negative 5:10 this load is negative: it acts against its direction',
    ]);
  });

  test('are not made of an upward load that a factor turns down', () => {
    expect(findings('{ case: L, point: 1 kip, at: B, direction: left }')).toEqual([]);
  });
});
