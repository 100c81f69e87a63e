import { describe, expect, test } from 'vitest';
import { judgeLimits } from '../../../src/derivation/limits/judge-limits.ts';
import { spanName } from '../../../src/derivation/limits/limit-spans.ts';
import { derivedBeam, linesOf, stepsOf } from '../../support/derived.ts';

const si = (limits: string): string =>
  `project: { title: Weir crossing }\nunits: si\ncriteria: { deflection_limits: ${limits} }\n`;
const loads =
  'cases:\n  D: { title: Dead, kind: dead }\n  L: { title: Live, kind: live }\ncombinations: [ asce7-strength, { mark: D + 0.5L, factors: { D: 1, L: 0.5 }, for: service } ]\n';
const stiff = { material: '{ E: 200 GPa }', section: '{ I: 2e7 mm^4 }' };

function judged(rest: Readonly<Record<string, string>>, limits: string) {
  const { project, work, derivation } = derivedBeam(
    { ...stiff, ...rest },
    { 'project.yaml': si(limits), 'loads.yaml': loads },
  );
  const all = judgeLimits(project, work);
  return {
    ...all,
    derivation,
    told: all.judged.map(({ entry, span, ratio, passes }) => ({
      entry,
      span: spanName(span),
      ratio: Number(ratio.toPrecision(6)),
      passes,
    })),
  };
}

// 5 w L⁴/(384 E I) = 5 (4 kN/m) (6 m)⁴/(384 · 4000 kN·m²) = 16.875 mm; P L³/(48 E I) = 11.25 mm for 10 kN.
const simple = {
  points: '{ A: 0 m, B: 6 m }',
  supports: '{ A: pin, B: roller }',
  loads: '[ { uniform: { D: 4 kN/m } }, { case: L, point: 10 kN, at: 3 m } ]',
};

describe('limits of deflection', () => {
  test('are judged on cases, on sums with factors and on service combinations', () => {
    expect(judged(simple, '{ L: L/360, D+L: L/240, D + 0.5L: 20 mm }').told).toEqual([
      { entry: 'L', span: 'A to B', ratio: 0.675, passes: true },
      { entry: 'D+L', span: 'A to B', ratio: 1.125, passes: false },
      { entry: 'D + 0.5L', span: 'A to B', ratio: 1.125, passes: false },
    ]);
  });

  test('are never judged on a combination for strength', () => {
    const { told, unjudged } = judged(simple, '{ 1.2D + 1.6L: L/360 }');
    expect(told).toEqual([]);
    expect(unjudged).toMatchObject([{ entry: '1.2D + 1.6L', why: 'strength' }]);
  });

  test('without E and I are not checked, and the sheet says why', () => {
    const { unjudged, derivation } = judged(
      { ...simple, section: '{ A: 3000 mm^2 }' },
      '{ L: L/360 }',
    );
    expect(unjudged).toMatchObject([{ entry: 'L', why: 'no-stiffness' }]);
    expect(stepsOf(derivation, 'limits')).toMatchObject([
      { kind: 'limits-unchecked', why: 'no-stiffness' },
    ]);
    expect(derivation.summary).toMatchObject({ failing: 0, unjudged: 1 });
  });

  // A cantilever tip: P L³/(3 E I) = 3 kN (2 m)³/(3 · 4000 kN·m²) = 2 mm.
  const cantilever = {
    points: '{ A: 0 m, B: 2 m }',
    supports: '{ A: fixed }',
    loads: '[ { case: L, point: 3 kN, at: B } ]',
  };

  test('count a cantilever with twice its length unless that is turned off', () => {
    expect(judged(cantilever, '{ L: L/400 }').told).toMatchObject([{ ratio: 0.2 }]);
    expect(judged(cantilever, '{ L: L/400, cantilevers: plain }').told).toMatchObject([
      { ratio: 0.4 },
    ]);
  });

  test('of a member stand in place of those of the project', () => {
    const { told } = judged(
      { ...cantilever, deflection_limits: '{ L: 4 mm }' },
      '{ D: L/1000 }',
    );
    expect(told).toEqual([{ entry: 'L', span: 'A to B', ratio: 0.5, passes: true }]);
  });

  test('measure a span from the chord of its displaced supports, and a hinge ends none', () => {
    const { told, derivation } = judged(
      {
        ...simple,
        supports:
          '{ A: { type: pin, settlement: 8 mm, case: D }, B: { type: roller, settlement: 20 mm, case: D } }',
      },
      '{ D: L/240 }',
    );
    // Settlements of determinate supports bend nothing: the 16.875 mm of the load alone count.
    expect(told).toMatchObject([{ ratio: 0.675 }]);
    expect(linesOf(derivation, 'limits').join('\n')).toContain(
      'δ = −30.88 mm + 14.00 mm = −16.88 mm',
    );
  });

  test('measure a tip from its support with that support’s rotation, up like down', () => {
    // Span loaded at its middle, P L²/(16 E I) = 10 kN (6 m)²/16/4000 = 5.625 mrad lifts a tip 2 m out by 11.25 mm.
    const { told } = judged(
      {
        points: '{ A: 0 m, B: 6 m, C: 8 m }',
        supports: '{ A: pin, B: roller }',
        loads: '[ { case: L, point: 10 kN, at: 3 m } ]',
      },
      '{ L: 10 mm }',
    );
    expect(told).toEqual([
      { entry: 'L', span: 'A to B', ratio: 1.125, passes: false },
      { entry: 'L', span: 'B to C', ratio: 1.125, passes: false },
    ]);
  });

  test('a failing ratio never prints as 1.00', () => {
    const { derivation } = judged(simple, '{ L: 11.249 mm }');
    const [row] = stepsOf(derivation, 'limits').flatMap((step) =>
      step.kind === 'limit-table' ? step.rows : [],
    );
    expect(row).toMatchObject({ passes: false, ratio: '1.0001' });
  });

  test('of patterned spans take the arrangement that is worst from the chord', () => {
    const patterned = loads.replace('kind: live }', 'kind: live, pattern: true }');
    const beam = {
      ...stiff,
      points: '{ A: 0 m, B: 6 m, C: 12 m }',
      supports: '{ A: pin, B: roller, C: roller }',
      loads: '[ { case: L, uniform: 4 kN/m } ]',
    };
    const of = (loadsFile: string): number => {
      const { project, work } = derivedBeam(beam, {
        'project.yaml': si('{ L: L/360 }'),
        'loads.yaml': loadsFile,
      });
      return judgeLimits(project, work).judged[0]!.greatest.value;
    };
    // One span loaded alone sags more than both together; 0.0092 and 0.0054 of w L⁴/(E I) (from memory).
    const unit = (4 * 6 ** 4) / 4000;
    expect(of(patterned) / unit).toBeCloseTo(-0.0092, 4);
    expect(of(loads) / unit).toBeCloseTo(-0.0054, 4);
  });
});
