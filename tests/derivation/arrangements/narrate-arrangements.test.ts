import { describe, expect, test } from 'vitest';
import type { BeamDerivation } from '../../../src/derivation/index.ts';
import { statementsOf } from '../../../src/derivation/map-statements.ts';
import { recheck } from '../../../src/equation/index.ts';
import {
  derivedBeam,
  derivedFolder,
  linesOf,
  sectionsOf,
  siProject,
  stepOf,
  stepsOf,
} from '../../support/derived.ts';
import { beamYaml } from '../../support/folder.ts';

const loads = `cases:
  D: { kind: dead }
  L: { kind: live, pattern: true }
`;
const files = { 'project.yaml': siProject, 'loads.yaml': loads };

/** 10 m and an overhang of 4 m, 2 kN/m of L on both. */
const overhanging = derivedBeam(
  {
    points: '{ A: 0 m, B: 10 m, C: 14 m }',
    supports: '{ A: pin, B: roller }',
    loads: '[ { uniform: { D: 1 kN/m, L: 2 kN/m } } ]',
  },
  files,
).derivation;

const text = (derivation: BeamDerivation): readonly string[] =>
  linesOf(derivation, 'arrangements', 'L');

describe('the section of a patterned case', () => {
  test('numbers what may stand, overhangs too, with its loads', () => {
    const step = stepOf(stepsOf(overhanging, 'arrangements', 'L'), 'choices');
    expect(
      step.rows.map(({ numbers, text: of, isOverhang }) => [
        ...numbers,
        of,
        isOverhang,
      ]),
    ).toEqual([
      [1, 'A–B', false],
      [2, 'B–C', true],
    ]);
    expect(step.rows.every(({ loads: held }) => held.length === 1)).toBe(true);
    expect(step).toMatchObject({
      method: 'statics',
      hasFixed: false,
      hasCarried: false,
    });
  });

  test('adds up, for each quantity, the spans that add to its greatest and to its least', () => {
    // By hand: span alone M = 2·10²/8 = 25 at 5 m, overhang alone −2·4²/2 = −16 at B, half of it at 5 m;
    // reactions 10 and 10 from the span, −1.6 and 9.6 from the overhang.
    expect(text(overhanging)).toEqual([
      'M_max(5 m) = 25.00 kN·m',
      'M_min(5 m) = −8.00 kN·m',
      'M_max(10 m) = 0 kN·m',
      'M_min(10 m) = −16.00 kN·m',
      'V_max(0 m) = 10.00 kN',
      'V_min(0 m) = −1.60 kN',
      'V_max, left(10 m) = 0 kN',
      'V_min, left(10 m) = −10.00 kN − 1.60 kN = −11.60 kN',
      'V_max, right(10 m) = 8.000 kN',
      'V_min, right(10 m) = 0 kN',
      'R_A, max = 10.00 kN',
      'R_A, min = −1.60 kN',
      'R_B, max = 10.00 kN + 9.60 kN = 19.60 kN',
      'R_B, min = 0 kN',
    ]);
  });

  test('puts the numbers of the loaded spans beside each sum', () => {
    const margins = stepsOf(overhanging, 'arrangements', 'L')
      .flatMap(statementsOf)
      .flatMap(({ lines }) => lines.map(({ margin }) => margin));
    expect(margins).toEqual([
      '1',
      '2',
      'none',
      '2',
      '1',
      '2',
      'none',
      '1, 2',
      '2',
      'none',
      '1',
      '2',
      '1, 2',
      'none',
    ]);
  });

  test('can be worked again from its tables: each column adds up to its greatest and its least', () => {
    const tables = stepsOf(overhanging, 'arrangements', 'L').flatMap((step) =>
      step.kind === 'options' ? [step] : [],
    );
    expect(tables).toHaveLength(3);
    for (const { rows, greatest, least, columns } of tables) {
      const si = (of: (typeof greatest)[number] | undefined): number =>
        of?.kind === 'figure' ? of.quantity.si : NaN;
      for (const column of columns.keys()) {
        const shares = rows.map(({ cells }) => si(cells[column]));
        const sumOf = (sign: 1 | -1): number =>
          shares.reduce((sum, one) => sum + (sign * one > 0 ? one : 0), 0);
        expect(si(greatest[column])).toBeCloseTo(sumOf(1), 9);
        expect(si(least[column])).toBeCloseTo(sumOf(-1), 9);
      }
    }
  });

  test('draws each governing arrangement once, and the envelope of all', () => {
    const figures = stepsOf(overhanging, 'arrangements', 'L').flatMap((step) =>
      step.kind === 'figure' ? [step] : [],
    );
    expect(
      figures.map(({ shows, arrangement, gives }) => [shows, arrangement, gives]),
    ).toEqual([
      ['arrangement', 'L on A–B', ['moment-max', 'shear-max']],
      ['arrangement', 'L on B–C', ['moment-min']],
      ['arrangement', 'L on A–B, B–C', ['shear-min']],
      ['range', undefined, undefined],
    ]);
    const drawn = figures[1]!.figure;
    expect(drawn.kind === 'member' && drawn.picture.loads).toMatchObject([
      { kind: 'distributed', from: 10, to: 14 },
    ]);
    const last = figures[3]!.figure;
    expect(
      last.kind === 'diagrams' &&
        last.diagrams.map(({ curves }) => curves.map(({ style }) => style)),
    ).toEqual([
      ['solid', 'dashed'],
      ['solid', 'dashed'],
    ]);
  });

  test('stands after the case as it is placed, which says that it is but one arrangement', () => {
    const [equations] = sectionsOf(overhanging, 'equations', 'L');
    expect(equations!.steps[0]).toEqual({
      kind: 'stated',
      case: 'L',
      spans: true,
      carried: false,
    });
    expect(
      sectionsOf(overhanging, 'arrangements').map(({ case: of }) => of?.mark),
    ).toEqual(['L']);
    const kinds = overhanging.sections
      .filter((one) => one.case?.mark === 'L')
      .map(({ kind }) => kind);
    expect(kinds.at(-1)).toBe('arrangements');
  });

  test('names the hand method by which each span of an indeterminate beam is worked alone', () => {
    const { derivation } = derivedBeam(
      {
        points: '{ A: 0 m, B: 6 m, C: 12 m }',
        supports: '{ A: pin, B: roller, C: roller }',
        loads: '[ { case: L, uniform: 16 kN/m } ]',
      },
      files,
    );
    expect(stepOf(stepsOf(derivation, 'arrangements', 'L'), 'choices').method).toBe(
      'three-moment',
    );
    // One span alone: −wL²/16 over the middle; both −wL²/8.
    expect(text(derivation)).toContain(
      'M_min(6 m) = −36.00 kN·m − 36.00 kN·m = −72.00 kN·m',
    );
    expect(text(derivation)).toContain('R_B, max = 60.0 kN + 60.0 kN = 120.0 kN');
  });

  test('tells of very many spans only what governs and the reactions', () => {
    const names = Array.from({ length: 13 }, (_, index) => `P${index}`);
    const { derivation } = derivedBeam(
      {
        points: `{ ${names.map((name, index) => `${name}: ${4 * index} m`).join(', ')} }`,
        supports: `{ ${names.map((name, index) => `${name}: ${index === 0 ? 'pin' : 'roller'}`).join(', ')} }`,
        loads: '[ { case: L, uniform: 10 kN/m } ]',
      },
      files,
    );
    const steps = stepsOf(derivation, 'arrangements', 'L');
    expect(stepOf(steps, 'choices')).toMatchObject({ isShortened: true });
    const columns = steps.flatMap((step) =>
      step.kind === 'options' ? step.columns : [],
    );
    expect(columns.length).toBeLessThan(25);
    const missed = steps
      .flatMap(statementsOf)
      .flatMap((one) => recheck(one).filter(({ agrees }) => !agrees));
    expect(missed).toEqual([]);
  });
});

describe('a member that carries one with patterned spans', () => {
  const carrying = derivedFolder({
    ...files,
    'members/b1.yaml': beamYaml({
      points: '{ A: 0 m, B: 10 m, C: 14 m }',
      supports: '{ A: pin, B: roller }',
      loads: '[ { uniform: { D: 1 kN/m, L: 2 kN/m } } ]',
    }),
    'members/g1.yaml': beamYaml({
      mark: 'G1',
      points: '{ A: 0 m, M: 2 m, B: 4 m }',
      supports: '{ A: pin, B: roller }',
      loads: '[ { reaction: B1.A, at: M } ]',
    }),
  }).derivations[1]!;

  test('takes the reaction at its greatest or its least', () => {
    // B1.A lies between −1.6 and 10: half of it goes to each end.
    expect(text(carrying)).toContain('R_A, max = 5.000 kN');
    expect(text(carrying)).toContain('R_A, min = −0.800 kN');
    const step = stepOf(stepsOf(carrying, 'arrangements', 'L'), 'choices');
    expect(step.rows).toMatchObject([
      { numbers: [1, 2], kind: 'carried', text: 'B1.A' },
    ]);
    const governing = stepOf(stepsOf(carrying, 'arrangements', 'L'), 'arrangement');
    expect(governing.extremes[0]).toMatchObject({
      what: 'moment-max',
      arrangement: 'L of B1.A greatest',
    });
  });

  test('warns where its support has to pull under the least', () => {
    const cautions = carrying.sections
      .flatMap(({ steps }) => steps)
      .flatMap((step) => (step.kind === 'caution' ? [step] : []));
    expect(cautions).toContainEqual({
      kind: 'caution',
      caution: 'uplift',
      facts: {
        point: 'A',
        entry: 'L',
        size: expect.stringMatching(/^0\.8000\skN$/) as string,
        arrangement: 'L of B1.A least',
      },
    });
  });
});
