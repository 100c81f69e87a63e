import { describe, expect, test } from 'vitest';
import { deriveBeam, runChecks, type BeamWork } from '../../../src/derivation/index.ts';
import type { BeamResult, Piecewise } from '../../../src/statics/index.ts';
import {
  claimed,
  derivedBeam,
  linesOfStatement,
  siProject,
  stepsOf,
} from '../../support/derived.ts';

const si = { 'project.yaml': siProject };

/** A beam, and what its checks say of a claimed result. */
function checked(rest: Readonly<Record<string, string>>) {
  const { project, work, derivation } = derivedBeam(rest, si);
  const result = work.solution.results[0]!;
  return {
    work,
    project,
    derivation,
    result,
    findings: (claim: BeamResult) =>
      runChecks(claimed(project, work, claim)).flatMap(({ holds, finding }) =>
        holds ? [] : [finding.replaceAll('\u00a0', ' ')],
      ),
  };
}

/** The result with one restraint's force changed, along the axes too. */
function withReaction(result: BeamResult, point: string, change: number): BeamResult {
  return {
    ...result,
    reactions: result.reactions.map((reaction) =>
      reaction.point === point
        ? {
            ...reaction,
            y: (reaction.y ?? 0) + change,
            components: reaction.components.map((component, index) =>
              index === reaction.components.length - 1 ? component + change : component,
            ),
          }
        : reaction,
    ),
  };
}

/** A curve whose values are all multiplied. */
function scaled(curve: Piecewise, factor: number): Piecewise {
  return {
    ...curve,
    pieces: curve.pieces.map((piece) => ({
      ...piece,
      coefficients: piece.coefficients.map((c) => c * factor),
    })),
  };
}

const overhang = checked({
  points: '{ A: 0 m, B: 6 m, C: 8 m }',
  supports: '{ A: pin, B: roller }',
  loads: '[ { uniform: 4 kN/m }, { point: 5 kN, at: C } ]',
});

describe('runChecks', () => {
  test('finds nothing on a true result', () => {
    expect(overhang.findings(overhang.result)).toEqual([]);
  });

  test.each(['A', 'B'])(
    'catches a wrong reaction at %s, by however little it prints differently',
    (point) => {
      expect(overhang.findings(withReaction(overhang.result, point, 10))).not.toEqual(
        [],
      );
      expect(
        overhang.findings(withReaction(overhang.result, point, -0.01)),
      ).not.toEqual([]);
    },
  );

  test('catches a reaction along the beam that nothing calls for', () => {
    const claim: BeamResult = {
      ...overhang.result,
      reactions: overhang.result.reactions.map((one) =>
        one.point === 'A'
          ? {
              ...one,
              x: 50,
              components: one.components.map((c, index) => (index === 0 ? 50 : c)),
            }
          : one,
      ),
    };
    expect(overhang.findings(claim)).toContain('the forces along x leave 0.05000 kN');
  });

  test('catches forces along the axes that are not those of the restraints', () => {
    const claim: BeamResult = {
      ...overhang.result,
      reactions: overhang.result.reactions.map((one) =>
        one.point === 'B' ? { ...one, y: (one.y ?? 0) * 2 } : one,
      ),
    };
    expect(overhang.findings(claim).join()).toContain(
      'the reaction at B is not that of its restraints',
    );
  });

  test('catches curves that do not belong to the reactions and loads', () => {
    const { shear, moment } = overhang.result;
    expect(
      overhang.findings({ ...overhang.result, moment: scaled(moment, 1.001) }),
    ).not.toEqual([]);
    expect(
      overhang.findings({ ...overhang.result, shear: scaled(shear, 0.999) }),
    ).not.toEqual([]);
  });

  test('catches extremes that the curves do not have, or pass', () => {
    const { extremes } = overhang.result;
    const lower = {
      ...extremes,
      moment: {
        ...extremes.moment,
        max: { ...extremes.moment.max, value: extremes.moment.max.value * 0.99 },
      },
    };
    expect(overhang.findings({ ...overhang.result, extremes: lower }).join()).toContain(
      'moment curve does not have the extremes',
    );
    const elsewhere = {
      ...extremes,
      shear: { ...extremes.shear, max: { value: extremes.shear.max.value, x: 1 } },
    };
    expect(overhang.findings({ ...overhang.result, extremes: elsewhere })).not.toEqual(
      [],
    );
  });

  test('catches a hinge force, and a moment at a hinge', () => {
    const hinged = checked({
      points: '{ A: 0 m, H: 4 m, B: 10 m }',
      supports: '{ A: fixed, B: roller }',
      hinges: '[ H ]',
      loads: '[ { uniform: 2 kN/m } ]',
    });
    expect(hinged.findings(hinged.result)).toEqual([]);
    const wrong = hinged.result.hingeForces.map((force) => ({
      ...force,
      y: force.y + 1,
    }));
    expect(hinged.findings({ ...hinged.result, hingeForces: wrong })).not.toEqual([]);
    const { moment } = hinged.result;
    const lifted = {
      ...moment,
      pieces: moment.pieces.map((piece) => ({
        ...piece,
        coefficients: [
          (piece.coefficients[0] ?? 0) + 5,
          ...piece.coefficients.slice(1),
        ],
      })),
    };
    expect(hinged.findings({ ...hinged.result, moment: lifted }).join()).toContain(
      'the hinge at H would pass',
    );
  });

  test('lets couples stand on both sides of one hinge', () => {
    const hinged = checked({
      points: '{ A: 0 m, H: 4 m, B: 10 m }',
      supports: '{ A: fixed, B: roller }',
      hinges: '[ H ]',
      loads:
        '[ { couple: 3 kN m, at: H, side: left, turn: clockwise }, { couple: 7 kN m, at: H, side: right, turn: clockwise } ]',
    });
    expect(hinged.findings(hinged.result)).toEqual([]);
  });

  test('catches a case that is idle and yet has a reaction', () => {
    const { project, work } = derivedBeam(
      { points: '{ A: 0 m, B: 6 m }', supports: '{ A: pin, B: roller }' },
      si,
    );
    const claim = withReaction(work.solution.results[0]!, 'B', 1);
    expect(runChecks(claimed(project, work, claim)).every(({ holds }) => holds)).toBe(
      false,
    );
  });

  test('works checks that hold only under conditions nowhere else', () => {
    const names = (rest: Readonly<Record<string, string>>) =>
      stepsOf(checked(rest).derivation, 'reasonable').flatMap((step) =>
        step.kind === 'check' ? [step.check] : [],
      );
    const span = { points: '{ A: 0 m, B: 6 m }', supports: '{ A: pin, B: roller }' };
    expect(names({ ...span, loads: '[ { uniform: 4 kN/m } ]' })).toEqual([
      'moments-about',
      'symmetry',
      'between-bounds',
      'moment-bound',
      'standard-case',
      'diagram-closes',
      'cut-from-right',
    ]);
    expect(names({ ...span, loads: '[ { point: 4 kN, at: 1 m } ]' })).toContain(
      'opposite-distances',
    );
    expect(
      names({ ...span, loads: '[ { point: 4 kN, at: 1 m, direction: up } ]' }),
    ).toEqual(['moments-about', 'standard-case', 'diagram-closes', 'cut-from-right']);
    expect(
      names({
        ...span,
        loads: '[ { couple: 4 kN m, at: 1 m, turn: clockwise }, { uniform: 1 kN/m } ]',
      }),
    ).not.toContain('between-bounds');
  });

  test('closes a hinged beam as a whole with the shares that its pieces were worked with', () => {
    const hinged = checked({
      points: '{ A: 0 m, H: 4 m, B: 10 m }',
      supports: '{ A: fixed, B: roller }',
      hinges: '[ H ]',
      loads: '[ { uniform: 2 kN/m } ]',
    });
    const [closure] = stepsOf(hinged.derivation, 'reasonable');
    expect(
      closure?.kind === 'check' ? linesOfStatement(closure.statement).join() : '',
    ).toContain('− 8.000 kN (2 m) + 6.000 kN (10 m) − 12.00 kN (7 m) = 0');
  });
});

describe('deriveBeam', () => {
  const withResult = (work: BeamWork, result: BeamResult): BeamWork => ({
    ...work,
    solution: {
      ...work.solution,
      results: [result, ...work.solution.results.slice(1)],
    },
  });

  test('gives no sheet for a result that fails a check, and says by what', () => {
    const { project, work, result } = overhang;
    const outcome = deriveBeam(
      project,
      withResult(work, withReaction(result, 'B', 100)),
    );
    expect('failed' in outcome && outcome.failed.findings.length > 0).toBe(true);
  });

  test('gives none for a combination that is not the sum of its cases', () => {
    const { project, work } = derivedBeam(
      {
        points: '{ A: 0 m, B: 6 m }',
        supports: '{ A: pin, B: roller }',
        loads: '[ { case: G, uniform: 4 kN/m } ]',
      },
      {
        ...si,
        'loads.yaml':
          'cases: { G: { kind: dead } }\ncombinations: [ { mark: 1.35G, factors: { G: 1.35 } } ]\n',
      },
    );
    const [combined] = work.combined;
    const outcome = deriveBeam(project, {
      ...work,
      combined: [withReaction(combined!, 'B', 100)],
    });
    expect('failed' in outcome ? outcome.failed : undefined).toMatchObject({
      case: '1.35G',
    });
    expect(deriveBeam(project, work)).toHaveProperty('derivation');
  });
});
