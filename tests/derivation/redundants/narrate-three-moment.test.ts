import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { statementsOf } from '../../../src/derivation/map-statements.ts';
import { chooseMethod } from '../../../src/derivation/redundants/choose-method.ts';
import { handDifference } from '../../../src/derivation/sense-checks/hand-agrees.ts';
import { lineToLinear, recheck } from '../../../src/equation/index.ts';
import type { Step } from '../../../src/derivation/index.ts';
import { claimed, derivedFolder } from '../../support/derived.ts';
import { redundantBeam } from '../../support/random-redundant.ts';
import { redundantFolder } from '../../support/redundant-file.ts';

type Method = 'three-moment' | 'moment-distribution';

const beamFile = (lines: string): Readonly<Record<string, string>> => ({
  'members/b1.yaml': `mark: B1\nkind: beam\n${lines}`,
});

const asking = (method: Method): string =>
  `project: { title: Rows of spans }\nunits: si\nmethods: { continuous: ${method} }\n`;

/** The steps for the redundants of the only member, and its lines. */
function redundantsOf(
  files: Readonly<Record<string, string>>,
  method: Method,
): { readonly steps: readonly Step[]; readonly lines: readonly string[] } {
  const { derivations } = derivedFolder({ ...files, 'project.yaml': asking(method) });
  const steps = derivations[0]!.sections
    .filter(({ kind }) => kind === 'redundants')
    .flatMap((section) => section.steps);
  return {
    steps,
    lines: steps.flatMap(statementsOf).flatMap(({ lines }) => lines.map(lineToLinear)),
  };
}

const threeSpans = beamFile(`points: { A: 0 m, B: 5 m, C: 11 m, D: 15 m, E: 17 m }
supports: { A: pin, B: roller, C: roller, D: roller }
loads:
  - { case: D, point: 30 kN, at: 2 m }
  - { case: D, uniform: 12 kN/m, from: B, to: C }
  - { case: D, varying: [ 0 kN/m, 9 kN/m ], from: C, to: D }
  - { case: D, point: 10 kN, at: E }
`);

describe('three-moment equations', () => {
  test('write the load term of each kind of load in its closed form', () => {
    const { lines } = redundantsOf(threeSpans, 'three-moment');
    expect(lines).toContain('T_BA = P_1 d_1/A (L_AB² − d_1/A²) / L_AB');
    expect(lines).toContain('T_BC = w_2 L_BC³ / 4');
    expect(lines).toContain('T_CD = 7 w_3 L_CD³ / 60');
  });

  test('take the moment of an overhang to the known side', () => {
    const { lines } = redundantsOf(threeSpans, 'three-moment');
    expect(lines).toContain('M_D = C_D = −20.00 kN·m');
    expect(lines).toContain('K_C = −T_CB − T_CD − M_D L_CD');
    expect(lines).toContain('M_B L_BC + 2 M_C (L_BC + L_CD) + M_D L_CD = −T_CB − T_CD');
  });

  test('put settlements in metres beside 6 E I', () => {
    const { lines } = redundantsOf(
      beamFile(`points: { A: 0 m, B: 5 m, C: 10 m }
supports: { A: pin, B: { type: roller, settlement: 10 mm }, C: roller }
section: { I: 5000 cm^4 }
material: { E: 200 GPa }
loads: [ { uniform: 8 kN/m } ]
`),
      'three-moment',
    );
    expect(lines).toContain('δ_B = 10 mm = 0.01 m');
    // 3 EI δ / L² of sagging against w L² / 8 of hogging.
    expect(lines.some((line) => line.includes('= −13.00 kN·m'))).toBe(true);
  });

  test('end with every reaction found', () => {
    expect(redundantsOf(threeSpans, 'three-moment').steps.at(-1)?.kind).toBe(
      'reactions-found',
    );
  });
});

describe('moment distribution', () => {
  test('goes on by rounds until what is carried is small, and tells how far it is off', () => {
    const { steps } = redundantsOf(threeSpans, 'moment-distribution');
    const table = steps.find((step) => step.kind === 'distribution-table');
    if (table?.kind !== 'distribution-table') throw new Error('no table');
    const rounds = table.tables[0]!.rows.map(({ what }) => what);
    expect(rounds.slice(0, 3)).toEqual(['start', 'balance', 'carry-over']);
    expect(rounds.slice(-3)).toEqual(['balance', 'sum', 'exact']);
    expect(table.isExact).toBe(false);
    expect(table.tables[0]!.ends).toEqual(['AB', 'BA', 'BC', 'CB', 'CD', 'DC']);
  });

  test('is through after one balance where a single joint turns', () => {
    const { steps } = redundantsOf(
      beamFile(`points: { A: 0 m, B: 5 m, C: 11 m }
supports: { A: pin, B: roller, C: roller }
loads: [ { uniform: 8 kN/m } ]
`),
      'moment-distribution',
    );
    const table = steps.find((step) => step.kind === 'distribution-table');
    if (table?.kind !== 'distribution-table') throw new Error('no table');
    expect(table.tables[0]!.rows.map(({ what }) => what)).toEqual([
      'start',
      'balance',
      'sum',
      'exact',
    ]);
    expect(table.isExact).toBe(true);
  });
});

describe.each(['three-moment', 'moment-distribution'] as const)(
  'the sheet of any continuous beam by %s',
  { timeout: 300_000 },
  (method) => {
    test('agrees with the figures reported, and every line can be worked again', () => {
      fc.assert(
        fc.property(
          redundantBeam({
            kinds: ['none', 'pin', 'roller', 'roller', 'roller', 'fixed'],
          }).filter((structure) => chooseMethod(structure, method).method === method),
          (structure) => {
            const files = { ...redundantFolder(structure) };
            files['project.yaml'] =
              `${files['project.yaml'] ?? ''}\nmethods: { continuous: ${method} }\n`;
            const { project, works, derivations } = derivedFolder(files);
            for (const work of works) {
              for (const result of work.solution.results) {
                const apart = handDifference(claimed(project, work, result))!;
                expect(apart.difference).toBeLessThanOrEqual(apart.allowed);
              }
            }
            const redundants = derivations[0]!.sections.filter(
              ({ kind }) => kind === 'redundants',
            );
            for (const statement of redundants.flatMap(({ steps }) =>
              steps.flatMap(statementsOf),
            )) {
              for (const { agrees, line } of recheck(statement)) {
                const said = statement.lines[line]!;
                expect(
                  agrees || said.margin === 'carried unrounded',
                  lineToLinear(said),
                ).toBe(true);
              }
            }
          },
        ),
        { numRuns: 15, endOnFailure: true, interruptAfterTimeLimit: 200_000 },
      );
    });
  },
);
