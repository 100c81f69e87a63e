import { describe, expect, test } from 'vitest';
import { standardCaseChecks } from '../../../src/derivation/sense-checks/standard-cases.ts';
import { reworkable } from '../../../src/derivation/rework.ts';
import { workMembers } from '../../../src/derivation/index.ts';
import { recheck } from '../../../src/equation/index.ts';
import { claimed, linesOfStatement, siProject } from '../../support/derived.ts';
import type { PlainBeam } from '../../support/by-singularities.ts';
import {
  handbookBeams,
  mirroredBeam,
  turnedBeam,
} from '../../support/handbook-beams.ts';
import { beamYaml, shortProject, soundFolder } from '../../support/folder.ts';

/** A beam as far as it is worked, without its sheet. */
function workedBeam(
  rest: Readonly<Record<string, string>>,
  files: Readonly<Record<string, string>>,
) {
  const project = soundFolder({ ...files, 'members/b1.yaml': beamYaml(rest) });
  const [member] = workMembers(project, []);
  if (member?.kind !== 'worked') throw new Error(member?.diagnostic.message);
  return { project, work: member.work };
}

const draw = {
  span: 6,
  other: 4.5,
  load: 3.2,
  load2: 4.1,
  share: 0.3,
  share2: 0.2,
  EI: 1,
};

const systems = {
  us: {
    length: 'ft',
    force: 'kip',
    E: '29000 ksi',
    I: '300 in^4',
    settles: 'in',
    perMetre: 12,
  },
  si: {
    length: 'm',
    force: 'kN',
    E: '200 GPa',
    I: '8e7 mm^4',
    settles: 'mm',
    perMetre: 1000,
  },
} as const;

/** The beam as a file of a system of units would give it. */
function asFile(
  { length, supports, loads }: Omit<PlainBeam, 'EI'>,
  system: keyof typeof systems,
): Readonly<Record<string, string>> {
  const unit = systems[system];
  const tidy = (n: number): number => Number(n.toFixed(10));
  const at = (x: number): string => `${tidy(x)} ${unit.length}`;
  const stations = [...new Set([0, ...supports.map((one) => one.at), length])].sort(
    (a, b) => a - b,
  );
  const nameAt = (x: number): string => `P${stations.indexOf(x)}`;
  const types = supports.map(({ at: x, holds, settlement }, index) => {
    const type = holds === 'fixed' ? 'fixed' : index === 0 ? 'pin' : 'roller';
    return settlement === undefined
      ? `${nameAt(x)}: ${type}`
      : `${nameAt(x)}: { type: ${type}, settlement: ${tidy(settlement * unit.perMetre)} ${unit.settles}, case: Q }`;
  });
  const sized = loads.map((load) => {
    if (load.kind === 'spread')
      return `{ case: Q, varying: [ ${load.start} ${unit.force}/${unit.length}, ${load.end} ${unit.force}/${unit.length} ], from: ${at(load.from)}, to: ${at(load.to)} }`;
    return load.kind === 'point'
      ? `{ case: Q, point: ${load.size} ${unit.force}, at: ${at(load.at)} }`
      : `{ case: Q, couple: ${Math.abs(load.size)} ${unit.force} ${unit.length}, at: ${at(load.at)}, turn: ${load.size > 0 ? 'counterclockwise' : 'clockwise'} }`;
  });
  return {
    points: `{ ${stations.map((x) => `${nameAt(x)}: ${at(x)}`).join(', ')} }`,
    supports: `{ ${types.join(', ')} }`,
    loads: `[ ${sized.join(', ')} ]`,
    section: `{ I: ${unit.I} }`,
    material: `{ E: ${unit.E} }`,
  };
}

function checksOf(beam: Omit<PlainBeam, 'EI'>, system: keyof typeof systems) {
  const files = { 'project.yaml': system === 'si' ? siProject : shortProject };
  const { project, work } = workedBeam(asFile(beam, system), files);
  const result = work.solution.results[0]!;
  return {
    outcomes: standardCaseChecks(claimed(project, work, result)),
    withClaim: (claim: typeof result) =>
      standardCaseChecks(claimed(project, work, claim)),
    result,
  };
}

describe.each(['us', 'si'] as const)('in a project in %s units', (system) => {
  test.each(Object.keys(handbookBeams))('quotes: %s', (title) => {
    const plain = { ...handbookBeams[title]!(draw), EI: 1 };
    for (const beam of [plain, mirroredBeam(plain), turnedBeam(plain)]) {
      const [outcome, ...more] = checksOf(beam, system).outcomes;
      expect(more).toEqual([]);
      expect(outcome?.fact?.facts.title).toBe(title);
      expect(outcome?.finding).toBe('');
      expect(outcome?.holds).toBe(true);
      expect(outcome?.fact?.source).toMatch(/\w/);
      // Every printed relation can be worked again from its printed figures.
      const statement = reworkable(outcome!.fact!.statement);
      const missed = recheck(statement).filter(({ agrees }) => !agrees);
      expect(missed, linesOfStatement(statement).join('\n')).toEqual([]);
    }
  });
});

const lines = (
  rest: Readonly<Record<string, string>>,
  files = { 'project.yaml': siProject },
) => {
  const { project, work } = workedBeam(rest, files);
  const [outcome] = standardCaseChecks(
    claimed(project, work, work.solution.results[0]!),
  );
  return outcome?.fact === undefined ? [] : linesOfStatement(outcome.fact.statement);
};

describe('standardCaseChecks', () => {
  const span = { points: '{ A: 0 m, B: 6 m }', supports: '{ A: pin, B: roller }' };

  test('quotes reactions, moments, shear and deflection in symbols and with numbers', () => {
    expect(
      lines({
        ...span,
        loads: '[ { uniform: 4 kN/m } ]',
        section: '{ I: 8e7 mm^4 }',
        material: '{ E: 200 GPa }',
      }),
    ).toMatchInlineSnapshot(`
      [
        "R_A = R_B = w_1 L / 2",
        "= 4 kN/m (6 m) / 2 = 12.00 kN",
        "M_max = w_1 L² / 8",
        "= 4 kN/m (6 m)² / 8 = 18.00 kN·m",
        "V_max = w_1 L / 2",
        "= 4 kN/m (6 m) / 2 = 12.00 kN",
        "v_min = −5 w_1 L⁴ / (384 E I)",
        "= −(5 (4 kN/m) (6 m)⁴ / (384 (200000 MPa) (8×10⁷ mm⁴))) (1000 N/kN) (1000 mm/m)³ = −4.219 mm",
      ]
    `);
  });

  test('adds up loads that make one handbook load, and says of which', () => {
    expect(
      lines({
        ...span,
        loads:
          '[ { uniform: 4 kN/m }, { uniform: 2.5 kN/m, from: A, to: 2 m }, { uniform: 2.5 kN/m, from: 2 m, to: B } ]',
      }),
    ).toMatchInlineSnapshot(`
      [
        "w_all = w_1 + w_2",
        "= 4 kN/m + 2.5 kN/m = 6.500 kN/m",
        "R_A = R_B = w_all L / 2",
        "= 6.500 kN/m (6 m) / 2 = 19.50 kN",
        "M_max = w_all L² / 8",
        "= 6.500 kN/m (6 m)² / 8 = 29.25 kN·m",
        "V_max = w_all L / 2",
        "= 6.500 kN/m (6 m) / 2 = 19.50 kN",
      ]
    `);
  });

  test('turns loads round that push up', () => {
    expect(lines({ ...span, loads: '[ { point: 9 kN, at: 2 m, direction: up } ]' }))
      .toMatchInlineSnapshot(`
      [
        "R_B = −P_1 b / L",
        "= −9 kN (2 m) / (6 m) = −3.000 kN",
        "R_A = −P_1 a / L",
        "= −9 kN (4 m) / (6 m) = −6.000 kN",
        "M_min = −P_1 a b / L",
        "= −9 kN (4 m) (2 m) / (6 m) = −12.00 kN·m",
      ]
    `);
  });

  test('leaves deflections out where E and I are not given', () => {
    expect(lines({ ...span, loads: '[ { uniform: 4 kN/m } ]' }).join()).not.toContain(
      'v_min',
    );
  });

  test('leaves out what no table knows: hinges, springs, loads along the beam, two kinds of load', () => {
    const none = (rest: Readonly<Record<string, string>>) =>
      expect(lines(rest)).toEqual([]);
    none({ ...span, loads: '[ { uniform: 4 kN/m }, { point: 2 kN, at: 1 m } ]' });
    none({ ...span, loads: '[ { point: 2 kN, at: 1 m, direction: 300 deg } ]' });
    none({
      ...span,
      supports: '{ A: pin, B: { type: roller, normal: 60 deg } }',
      loads: '[ { uniform: 4 kN/m } ]',
    });
    none({
      ...span,
      supports: '{ A: pin, B: { type: spring, stiffness: 4 kN/mm } }',
      loads: '[ { uniform: 4 kN/m } ]',
    });
    none({
      points: '{ A: 0 m, H: 4 m, B: 10 m }',
      supports: '{ A: fixed, B: roller }',
      hinges: '[ H ]',
      loads: '[ { uniform: 2 kN/m } ]',
    });
  });

  test('leaves an indeterminate beam of stepped stiffness alone, and one without out where only forces depend', () => {
    const stepped = {
      points: '{ A: 0 m, S: 3 m, B: 6 m }',
      sections:
        '[ { from: A, to: S, section: { I: 8e7 mm^4 } }, { from: S, to: B, section: { I: 9e7 mm^4 } } ]',
      material: '{ E: 200 GPa }',
      loads: '[ { uniform: 4 kN/m } ]',
    };
    expect(lines({ ...stepped, supports: '{ A: fixed, B: roller }' })).toEqual([]);
    const determinate = lines({ ...stepped, supports: '{ A: pin, B: roller }' }).join();
    expect(determinate).toContain('M_max');
    expect(determinate).not.toContain('v_min');
  });

  test.each(Object.keys(handbookBeams))(
    'catches every figure that is a millionth off: %s',
    (title) => {
      const { result, withClaim } = checksOf(handbookBeams[title]!(draw), 'si');
      const off = {
        ...result,
        reactions: result.reactions.map((one) => ({
          ...one,
          y: one.y === null ? null : one.y * (1 + 1e-6),
        })),
        extremes: {
          ...result.extremes,
          moment: {
            max: {
              ...result.extremes.moment.max,
              value: result.extremes.moment.max.value * (1 + 1e-6),
            },
            min: {
              ...result.extremes.moment.min,
              value: result.extremes.moment.min.value * (1 + 1e-6),
            },
          },
        },
      };
      expect(withClaim(off).map(({ holds }) => holds)).toEqual([false]);
    },
  );
});
