import { describe, expect, test } from 'vitest';
import { toLinear, type Expression } from '../../../src/equation/index.ts';
import {
  derivedBeam,
  derivedFolder,
  linesOfStatement,
  siProject,
  stepOf,
  stepsOf,
} from '../../support/derived.ts';
import { beamYaml } from '../../support/folder.ts';

const text = (of: Expression): string => toLinear(of);

function given(
  rest: Readonly<Record<string, string>>,
  files: Readonly<Record<string, string>> = {},
) {
  return stepsOf(derivedBeam(rest, files).derivation, 'given');
}

const short = { supports: '{ A: pin, B: roller }' };

describe('narrateGiven', () => {
  test('echoes feet and inches as given, with the decimals that the sums use', () => {
    const { points, length } = stepOf(
      given({
        points: '{ A: 0 ft, C: 12\'-6 1/2", B: +4 ft 8 in }',
        supports: '{ A: pin, B: roller }',
      }),
      'geometry',
    );
    expect(
      points.map(({ station, decimal, fromBefore }) =>
        [station, decimal, fromBefore].map((of) => (of === undefined ? '' : text(of))),
      ),
    ).toEqual([
      ['0 ft', '', ''],
      ['12 ft 6 1/2 in', '12.54 ft', ''],
      ['17.21 ft', '', '4 ft 8 in'],
    ]);
    expect(text(length)).toBe('17.21 ft');
  });

  test('prints stations and lengths in feet and inches where the project asks for them', () => {
    const files = {
      'project.yaml':
        'project: { title: Weir crossing }\nunits: us\nlengths: feet-inches\n',
    };
    const { points, length } = stepOf(
      given({ points: '{ A: 0 ft, C: 12 ft, B: +4 ft 8 in }', ...short }, files),
      'geometry',
    );
    expect(text(length)).toBe('16 ft 8 in');
    expect(points.map(({ station }) => text(station))).toEqual([
      '0 ft',
      '12 ft',
      '16 ft 8 in',
    ]);
  });

  test('rounds a size that the program has worked out, and shows the product with its conversions', () => {
    const steps = given(
      {
        points: '{ A: 0 ft, B: 20 ft }',
        ...short,
        loads: '[ { area: roof, width: 6 ft 8 in } ]',
      },
      {
        'loads.yaml': 'cases: { D: { kind: dead } }\nareas: { roof: { D: 20 psf } }\n',
      },
    );
    const [row] = stepOf(steps, 'loads').loads;
    expect(row?.sizes.map(text)).toEqual(['0.1333 kip/ft']);
    expect(
      row?.origin?.kind === 'area' ? linesOfStatement(row.origin.product) : [],
    ).toEqual(['w_1 = 20 lb/ft² (6 ft 8 in) / (1000 lb/kip) = 0.1333 kip/ft']);
  });

  test('weighs each stretch of a stepped beam by its own area', () => {
    const steps = given(
      {
        points: '{ A: 0 m, C: 4 m, B: 9 m }',
        ...short,
        self_weight: 'G',
        sections:
          '[ { from: A, to: C, section: { A: 5000 mm^2 } }, { from: C, to: B, section: { A: 3000 mm^2 } } ]',
        material: '{ E: 210 GPa, density: 80 kN/m^3 }',
      },
      { 'project.yaml': siProject, 'loads.yaml': 'cases: { G: { kind: dead } }\n' },
    );
    const products = stepOf(steps, 'loads').loads.flatMap(({ origin }) =>
      origin?.kind === 'self-weight' && origin.product !== undefined
        ? linesOfStatement(origin.product)
        : [],
    );
    expect(products).toEqual([
      'w_1 = 5000 mm² (80 kN/m³) / (1000 mm/m)² = 0.4000 kN/m',
      'w_2 = 3000 mm² (80 kN/m³) / (1000 mm/m)² = 0.2400 kN/m',
    ]);
  });

  test('shows a factor with its reason, and a slanted load per length square to it', () => {
    const steps = given(
      {
        points: '{ A: 0 m, B: 6 m }',
        ...short,
        loads:
          '[ { uniform: 2 kN/m, direction: 300 deg, per: projection, times: 1.5, because: gusts } ]',
      },
      { 'project.yaml': siProject },
    );
    const [row] = stepOf(steps, 'loads').loads;
    expect(row?.factor?.because).toBe('gusts');
    expect(linesOfStatement(row!.factor!.product)).toEqual([
      'w_1 = 1.5 (2 kN/m) = 3 kN/m',
    ]);
    expect(linesOfStatement(row!.projected!)).toEqual([
      'w_1 = 3 kN/m sin(60°) = 2.598 kN/m',
    ]);
  });

  test('names the member and the support that a carried reaction comes from', () => {
    const { derivations } = derivedFolder({
      'members/b1.yaml': beamYaml({
        points: '{ A: 0 ft, B: 10 ft }',
        ...short,
        loads: '[ { point: 4 kip, at: 5 ft } ]',
      }),
      'members/g1.yaml': beamYaml({
        mark: 'G1',
        points: '{ A: 0 ft, B: 20 ft }',
        ...short,
        loads:
          '[ { reaction: B1.B, at: 8 ft, times: 2, because: beams on both sides } ]',
      }),
    });
    const girder = derivations.find(({ mark }) => mark === 'G1')!;
    const [row] = stepOf(stepsOf(girder, 'given'), 'loads').loads;
    expect(row).toMatchObject({
      direction: 'down',
      note: 'beams on both sides',
      origin: { kind: 'carried', member: 'B1', point: 'B', times: 2 },
    });
    expect(row?.sizes.map(text)).toEqual(['4.000 kip']);
    const beam = derivations.find(({ mark }) => mark === 'B1')!;
    expect(stepOf(stepsOf(beam, 'results'), 'results').handedOn).toEqual([
      { point: 'B', to: 'G1', anchor: 'member-G1', at: '8\u00a0ft' },
    ]);
  });

  test('lists temperature differences with the depth and the expansion that they take', () => {
    const steps = given(
      {
        points: '{ A: 0 m, B: 3 m, C: 8 m }',
        supports: '{ A: pin, C: roller }',
        sections:
          '[ { from: A, to: B, section: { depth: 200 mm } }, { from: B, to: C, section: { depth: 400 mm } } ]',
        loads:
          '[ { case: T, temperature: { difference: 20 K, expansion: 12e-6 1/K }, times: 0.5, because: shaded, note: Roof } ]',
      },
      { 'project.yaml': siProject },
    );
    expect(
      stepOf(steps, 'temperatures').rows.map((row) => [
        row.case,
        text(row.difference),
        text(row.depth),
        text(row.expansion),
        row.from.point,
        row.to.point,
        row.taken,
        row.factor?.because,
        row.note,
      ]),
    ).toEqual([
      [
        'T',
        '20 K',
        '200 mm',
        '12×10^−6/K',
        'A',
        'B',
        { depth: true, expansion: false },
        'shaded',
        'Roof',
      ],
      [
        'T',
        '20 K',
        '400 mm',
        '12×10^−6/K',
        'B',
        'C',
        { depth: true, expansion: false },
        'shaded',
        'Roof',
      ],
    ]);
  });

  test('has no list of temperature differences where none are given', () => {
    expect(given(short).some(({ kind }) => kind === 'temperatures')).toBe(false);
  });

  test('lists every stretch of a stepped beam with its cross-section', () => {
    const { stretches } = stepOf(
      given(
        {
          points: '{ A: 0 m, B: 3 m, C: 8 m }',
          supports: '{ A: pin, C: roller }',
          sections:
            '[ { from: A, to: B, section: { I: 1e8 mm^4 } }, { from: B, to: C, section: { I: 2e8 mm^4 } } ]',
        },
        { 'project.yaml': siProject },
      ),
      'section',
    );
    expect(
      stretches.map(({ from, to, values }) => [
        from.point,
        to.point,
        values.map(({ value }) => text(value)),
      ]),
    ).toEqual([
      ['A', 'B', ['1×10⁸ mm⁴']],
      ['B', 'C', ['2×10⁸ mm⁴']],
    ]);
  });
});
