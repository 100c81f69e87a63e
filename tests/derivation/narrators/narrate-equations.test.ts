import { describe, expect, test } from 'vitest';
import {
  derivedBeam,
  linesOf,
  siProject,
  stepOf,
  stepsOf,
} from '../../support/derived.ts';

const si = { 'project.yaml': siProject };

/** The worked lines of the equations of small beams, as an engineer would write them. */
const worked: Readonly<
  Record<
    string,
    {
      readonly beam: Readonly<Record<string, string>>;
      readonly files?: Readonly<Record<string, string>>;
      readonly lines: readonly string[];
    }
  >
> = {
  'a point load between two supports': {
    beam: {
      points: '{ A: 0 ft, B: 6 ft, C: 21 ft }',
      supports: '{ A: pin, C: roller }',
      loads: '[ { point: 8.4 kip, at: B } ]',
    },
    lines: [
      'ΣM_A = H_A (0) + R_A (0) + R_C d_C/A − P_1 d_1/A = 0',
      '= H_A (0 ft) + R_A (0 ft) + R_C (21 ft) − 8.4 kip (6 ft) = 0',
      'R_C = 8.4 kip (6 ft) / (21 ft)',
      '= 2.400 kip',
      'ΣF_y = R_A + R_C − P_1 = 0',
      '= R_A + 2.400 kip − 8.4 kip = 0',
      'R_A = 8.4 kip − 2.400 kip',
      '= 6.000 kip',
      'ΣF_x = H_A = 0',
      'H_A = 0 kip',
    ],
  },
  'a cantilever, its three sums in their plain order': {
    beam: {
      points: '{ A: 0 m, B: 4 m }',
      supports: '{ A: fixed }',
      loads: '[ { uniform: 3 kN/m }, { couple: 5 kN m, at: B, turn: clockwise } ]',
    },
    files: si,
    lines: [
      'W_1 = w_1 b_1',
      '= 3 kN/m (4 m)',
      '= 12.00 kN',
      'x̄_1 = 4 m / 2 = 2 m',
      'ΣF_x = H_A = 0',
      'H_A = 0 kN',
      'ΣF_y = R_A − W_1 = 0',
      '= R_A − 12.00 kN = 0',
      'R_A = 12.00 kN',
      'ΣM_A = H_A (0) + R_A (0) + M_A − W_1 d_1/A − C_2 = 0',
      '= 0 kN (0 m) + 12.00 kN (0 m) + M_A − 12.00 kN (2 m) − 5 kN·m = 0',
      'M_A = 12.00 kN (2 m) + 5 kN·m',
      '= 29.00 kN·m',
    ],
  },
  'a slanted load on an inclined roller, both resolved': {
    beam: {
      points: '{ A: 0 m, B: 6 m }',
      supports: '{ A: pin, B: { type: roller, normal: 120 deg } }',
      loads: '[ { point: 10 kN, at: 2 m, direction: 240 deg } ]',
    },
    files: si,
    lines: [
      'P_1x = 10 kN cos(60°) = 5.000 kN',
      'P_1y = 10 kN sin(60°) = 8.660 kN',
      'ΣM_A = H_A (0) + R_A (0) + N_B sin(60°) d_B/A − N_B cos(60°) (0) − P_1y d_1/A − P_1x (0) = 0',
      '= H_A (0 m) + R_A (0 m) + N_B sin(60°) (6 m) − N_B cos(60°) (0 m) − 8.660 kN (2 m) − 5.000 kN (0 m) = 0',
      'N_B = 8.660 kN (2 m) / (sin(60°) (6 m))',
      '= 3.333 kN',
      'ΣF_y = R_A + N_B sin(60°) − P_1y = 0',
      '= R_A + 3.333 kN sin(60°) − 8.660 kN = 0',
      'R_A = 8.660 kN − 3.333 kN sin(60°)',
      '= 5.774 kN',
      'ΣF_x = H_A − N_B cos(60°) − P_1x = 0',
      '= H_A − 3.333 kN cos(60°) − 5.000 kN = 0',
      'H_A = 3.333 kN cos(60°) + 5.000 kN',
      '= 6.667 kN',
    ],
  },
  'a guide: the moment at A is counterclockwise where it is positive, here it is not': {
    beam: {
      points: '{ A: 0 m, B: 3 m }',
      supports: '{ A: guide, B: roller }',
      loads: '[ { point: 6 kN, at: 1 m }, { point: 2 kN, at: B, direction: left } ]',
    },
    files: si,
    lines: [
      'ΣF_x = H_A − P_2 = 0',
      '= H_A − 2 kN = 0',
      'H_A = 2.000 kN',
      'ΣF_y = R_B − P_1 = 0',
      '= R_B − 6 kN = 0',
      'R_B = 6.000 kN',
      'ΣM_A = H_A (0) + M_A + R_B d_B/A − P_1 d_1/A − P_2 (0) = 0',
      '= 2.000 kN (0 m) + M_A + 6.000 kN (3 m) − 6 kN (1 m) − 2 kN (0 m) = 0',
      'M_A = 6 kN (1 m) − 6.000 kN (3 m)',
      '= −12.00 kN·m',
    ],
  },
  'senses turned round by the project: clockwise, left and down count positive': {
    beam: {
      points: '{ A: 0 ft, B: 6 ft, C: 21 ft }',
      supports: '{ A: pin, C: roller }',
      loads: '[ { point: 8.4 kip, at: B }, { point: 2 kip, at: B, direction: right } ]',
    },
    files: {
      'project.yaml':
        'project: { title: Weir crossing }\nunits: us\nconventions: { moments: clockwise, horizontal: left, vertical: down }\n',
    },
    lines: [
      'ΣM_A = −H_A (0) + R_A (0) − R_C d_C/A + P_1 d_1/A − P_2 (0) = 0',
      '= −H_A (0 ft) + R_A (0 ft) − R_C (21 ft) + 8.4 kip (6 ft) − 2 kip (0 ft) = 0',
      'R_C = 8.4 kip (6 ft) / (21 ft)',
      '= 2.400 kip',
      'ΣF_y = −R_A − R_C + P_1 = 0',
      '= −R_A − 2.400 kip + 8.4 kip = 0',
      'R_A = 8.4 kip − 2.400 kip',
      '= 6.000 kip',
      'ΣF_x = −H_A − P_2 = 0',
      '= −H_A − 2 kip = 0',
      'H_A = −2.000 kip',
    ],
  },
  'an upward load, whose reactions pull': {
    beam: {
      points: '{ A: 0 ft, B: 10 ft }',
      supports: '{ A: pin, B: roller }',
      loads: '[ { point: 4 kip, at: 4 ft, direction: up } ]',
    },
    lines: [
      'ΣM_A = H_A (0) + R_A (0) + R_B d_B/A + P_1 d_1/A = 0',
      '= H_A (0 ft) + R_A (0 ft) + R_B (10 ft) + 4 kip (4 ft) = 0',
      'R_B = (−4 kip (4 ft)) / (10 ft)',
      '= −1.600 kip',
      'ΣF_y = R_A + R_B + P_1 = 0',
      '= R_A + (−1.600 kip) + 4 kip = 0',
      'R_A = −(−1.600 kip) − 4 kip',
      '= −2.400 kip',
      'ΣF_x = H_A = 0',
      'H_A = 0 kip',
    ],
  },
};

describe('narrateEquations', () => {
  test.each(Object.entries(worked))('works %s', (_, { beam, files, lines }) => {
    expect(linesOf(derivedBeam(beam, files).derivation, 'equations')).toEqual(lines);
  });

  test('works a hinged beam piece by piece, the piece that rests on the other first', () => {
    const { derivation } = derivedBeam(
      {
        points: '{ A: 0 m, H: 4 m, B: 10 m }',
        supports: '{ A: fixed, B: roller }',
        hinges: '[ H ]',
        loads: '[ { uniform: 2 kN/m }, { point: 3 kN, at: H } ]',
      },
      si,
    );
    const steps = stepsOf(derivation, 'equations');
    expect(
      steps.map((step) =>
        step.kind === 'sum' ? `${step.piece}: ${step.found.symbol.letter}` : step.kind,
      ),
    ).toEqual([
      'take-apart',
      'resultant',
      'resultant',
      'H to B: R',
      'H to B: Y',
      'H to B: X',
      'A to H: H',
      'A to H: R',
      'A to H: M',
      'reactions-found',
    ]);
    expect(linesOf(derivation, 'equations')).toEqual(
      expect.arrayContaining([
        'W_1a = w_1a b_1a',
        '= 2 kN/m (6 m)',
        'R_B = 12.00 kN (3 m) / (6 m)',
        'ΣF_y = R_A − Y_H − W_1b − P_2 = 0',
        '= R_A − 6.000 kN − 8.000 kN − 3 kN = 0',
        'M_A = 6.000 kN (4 m) + 8.000 kN (2 m) + 3 kN (4 m)',
        '= 52.00 kN·m',
      ]),
    );
  });

  test('says how the forces through a hinge are drawn, and that a load at it counts to the left', () => {
    const { derivation } = derivedBeam({
      points: '{ A: 0 ft, H: 10 ft, B: 18 ft }',
      supports: '{ A: fixed, B: roller }',
      hinges: '[ H ]',
      loads: '[ { point: 2 kip, at: H }, { point: 1 kip, at: 12 ft } ]',
    });
    const step = stepOf(stepsOf(derivation, 'equations'), 'take-apart');
    expect(step.forces.map(({ symbol, sense }) => `${symbol.letter} ${sense}`)).toEqual(
      ['X right', 'Y up'],
    );
    expect(step.atHinges.map(({ subscript }) => subscript)).toEqual(['1']);
  });

  test('tells a negative force through a hinge on both pieces', () => {
    const { derivation } = derivedBeam({
      points: '{ A: 0 ft, H: 10 ft, B: 15 ft, C: 20 ft }',
      supports: '{ A: fixed, B: roller }',
      hinges: '[ H ]',
      loads: '[ { point: 3 kip, at: C } ]',
    });
    const { forHinges } = stepOf(stepsOf(derivation, 'equations'), 'reactions-found');
    const y = forHinges.find(({ symbol }) => symbol.letter === 'Y');
    expect(y).toMatchObject({
      isNegative: true,
      acts: 'down',
      actsLeft: 'up',
      hinge: 'H',
    });
  });

  test('tells a case without loads, and what settles in it', () => {
    const beam = {
      points: '{ A: 0 m, B: 6 m }',
      supports: '{ A: pin, B: { type: roller, settlement: 12 mm, case: Z } }',
      loads: '[ { case: G, uniform: 1 kN/m } ]',
    };
    const { derivation } = derivedBeam(beam, si);
    const [step] = stepsOf(derivation, 'equations', 'Z');
    expect(step).toMatchObject({
      kind: 'no-loads',
      cases: ['Z'],
      isWarm: false,
      settlements: [{ point: 'B' }],
    });
    expect(stepsOf(derivation, 'internal-forces', 'Z')).toEqual([]);
  });

  test('tells all cases in which nothing acts in one breath, after those that are worked', () => {
    const { derivation } = derivedBeam(
      {
        points: '{ A: 0 m, B: 6 m }',
        supports: '{ A: pin, B: roller }',
        loads: '[ { case: Q, uniform: 1 kN/m } ]',
      },
      {
        ...si,
        'loads.yaml':
          'cases:\n  G: { kind: dead }\n  Q: { kind: live }\n  S: { kind: snow }\n',
      },
    );
    const kinds = derivation.sections.map(({ kind, case: of }) => of?.mark ?? kind);
    expect(kinds.filter((kind) => ['G', 'Q', 'S', 'idle'].includes(kind))).toEqual([
      ...kinds.filter((kind) => kind === 'Q'),
      'idle',
    ]);
    expect(stepsOf(derivation, 'idle')).toMatchObject([
      { kind: 'no-loads', cases: ['G', 'S'], settlements: [], isWarm: false },
    ]);
  });

  test('tells that warmth bends a determinate beam without force', () => {
    const { derivation } = derivedBeam(
      {
        points: '{ A: 0 m, B: 6 m }',
        supports: '{ A: pin, B: roller }',
        loads:
          '[ { case: G, uniform: 1 kN/m }, { case: T, temperature: { difference: 20 K, depth: 400 mm, expansion: 12e-6 1/K } } ]',
      },
      si,
    );
    const [step] = stepsOf(derivation, 'equations', 'T');
    expect(step).toMatchObject({ kind: 'no-loads', cases: ['T'], isWarm: true });
  });

  test('stacks a long sum before it divides, so that no fraction has to hold it', () => {
    const at = Array.from({ length: 30 }, (_, index) => `${index + 1} ft`).join(', ');
    const { derivation } = derivedBeam({
      points: '{ A: 0 ft, B: 31 ft }',
      supports: '{ A: pin, B: roller }',
      loads: `[ { point: 1.1 kip, at: [ ${at} ] } ]`,
    });
    const lines = linesOf(derivation, 'equations');
    expect(lines).toEqual(
      expect.arrayContaining([
        '= 511.5 kip·ft',
        'R_B = 511.5 kip·ft / (31 ft)',
        '= 16.50 kip',
      ]),
    );
    expect(lines.find((line) => line.startsWith('R_B (31 ft) = '))).toContain(
      '+ 1.1 kip (30 ft)',
    );
  });
});
