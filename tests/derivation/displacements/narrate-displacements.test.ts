import { describe, expect, test } from 'vitest';
import { recheck } from '../../../src/equation/index.ts';
import { statementsOf } from '../../../src/derivation/map-statements.ts';
import { derivedBeam, linesOf, siProject, stepsOf } from '../../support/derived.ts';

const stiff = { material: '{ E: 29000 ksi }', section: '{ I: 204 in^4 }' };

const storeBeam = {
  ...stiff,
  points: '{ A: 0 ft, B: 6 ft, C: 21 ft }',
  supports: '{ A: pin, C: roller }',
  loads: '[ { point: 8.4 kip, at: B }, { point: 2.4 kip, at: 15 ft } ]',
};

describe('the displacements of a simple beam', () => {
  const { derivation } = derivedBeam(storeBeam);
  const lines = linesOf(derivation, 'displacements');

  test('write the moment once in brackets, in letters and in figures', () => {
    expect(lines).toContain(
      'E I v″(x) = R_A ⟨x⟩¹ − P_1 ⟨x − 6 ft⟩¹ − P_2 ⟨x − 15 ft⟩¹',
    );
    expect(lines).toContain(
      'E I v″(x) = 6.686 kip ⟨x⟩¹ − 8.4 kip ⟨x − 6 ft⟩¹ − 2.4 kip ⟨x − 15 ft⟩¹',
    );
  });

  test('integrate it twice and find both constants from the supports', () => {
    expect(lines).toContain(
      'E I v(x) = (6.686 kip / 6) ⟨x⟩³ − (8.4 kip / 6) ⟨x − 6 ft⟩³ − (2.4 kip / 6) ⟨x − 15 ft⟩³ + c_1 x + c_2',
    );
    expect(lines).toContain('c_2 = 0');
    expect(lines).toContain('= −262.3 kip·ft²');
  });

  test('find the greatest deflection where the slope is 0, by both ways the same', () => {
    const steps = stepsOf(derivation, 'displacements');
    expect(steps).toContainEqual(
      expect.objectContaining({ kind: 'greatest-deflection', place: 'zero-slope' }),
    );
    expect(lines).toContain('x = 9.856 ft');
    expect(lines.filter((line) => line === '= −0.4669 in')).toHaveLength(2);
  });

  test('are worked again from the page, line by line', () => {
    const links = stepsOf(derivation, 'displacements')
      .flatMap(statementsOf)
      .flatMap((statement) => recheck(statement));
    expect(links.length).toBeGreaterThan(10);
    expect(links.filter(({ agrees }) => !agrees)).toEqual([]);
  });
});

describe('the displacements of other beams', () => {
  test('of a cantilever of two stiffnesses are those of the equivalent uniform one', () => {
    // P L³/(3 E I) of the outer part, and what the inner part's bending adds (E I₁ = 2 E I₂).
    const { derivation, work } = derivedBeam(
      {
        points: '{ A: 0 m, B: 2 m, C: 3 m }',
        supports: '{ A: fixed }',
        loads: '[ { point: 9 kN, at: C } ]',
        material: '{ E: 200 GPa }',
        sections:
          '[ { from: A, to: B, section: { I: 2e7 mm^4 } }, { from: B, to: C, section: { I: 1e7 mm^4 } } ]',
      },
      { 'project.yaml': siProject },
    );
    // ∫ P s²/EI ds with s from the tip: 9 kN (1/3)/2000 + 9 kN (27 − 1)/3/4000 = 21 mm.
    expect(work.solution.results[0]!.displacement!.extremes.min.value).toBeCloseTo(
      -0.021,
      12,
    );
    const lines = linesOf(derivation, 'displacements');
    expect(lines.filter((line) => line === '= −21.00 mm')).toHaveLength(2);
    expect(lines.join('\n')).toContain('(n_2 − 1) M(2 m) ⟨x − 2 m⟩⁰');
  });

  test('over a hinge take one more constant, and tell how the slope changes', () => {
    const { derivation } = derivedBeam({
      ...stiff,
      points: '{ A: 0 ft, H: 10 ft, B: 16 ft }',
      supports: '{ A: fixed, B: roller }',
      hinges: '[ H ]',
      loads: '[ { point: 4 kip, at: 13 ft } ]',
    });
    const steps = stepsOf(derivation, 'displacements');
    expect(steps).toContainEqual(
      expect.objectContaining({
        kind: 'hinge-slopes',
        hinges: [expect.objectContaining({ point: 'H' })],
      }),
    );
    expect(linesOf(derivation, 'displacements').join('\n')).toContain(
      'c_H ⟨x − 10 ft⟩¹',
    );
  });

  test('on a settling support and a spring start from what these move', () => {
    const { derivation } = derivedBeam({
      ...stiff,
      points: '{ A: 0 ft, B: 12 ft }',
      supports:
        '{ A: { type: pin, settlement: 0.5 in }, B: { type: spring, stiffness: 20 kip/in } }',
      loads: '[ { point: 6 kip, at: 6 ft } ]',
    });
    const text = linesOf(derivation, 'displacements').join('\n');
    expect(text).toContain('v(0 ft) = −0.5 in = −0.5000 in');
    expect(text).toContain('v(12 ft) = −3.000 kip / (20 kip/in) = −0.1500 in');
  });

  test('of a propped beam close the condition that its redundant has met', () => {
    const { derivation } = derivedBeam({
      ...stiff,
      points: '{ A: 0 ft, B: 16 ft }',
      supports: '{ A: fixed, B: roller }',
      loads: '[ { uniform: 1 kip/ft } ]',
    });
    const steps = stepsOf(derivation, 'displacements');
    expect(steps).toContainEqual(
      expect.objectContaining({
        kind: 'other-conditions',
        conditions: [expect.objectContaining({ what: 'deflection', point: 'B' })],
      }),
    );
  });

  test('over many spans are worked on the span of the extreme alone', () => {
    const { derivation } = derivedBeam({
      ...stiff,
      points: '{ A: 0 ft, B: 16 ft, C: 32 ft, D: 48 ft, E: 64 ft }',
      supports: '{ A: pin, B: roller, C: roller, D: roller, E: roller }',
      loads: '[ { point: 5 kip, at: 24 ft } ]',
    });
    expect(stepsOf(derivation, 'displacements')).toContainEqual(
      expect.objectContaining({
        kind: 'integration',
        isPart: true,
        from: expect.objectContaining({ point: 'B' }) as unknown,
        to: expect.objectContaining({ point: 'C' }) as unknown,
      }),
    );
  });

  test('are not there without E and I, and the sheet says so', () => {
    const { derivation } = derivedBeam({
      points: '{ A: 0 ft, B: 16 ft }',
      supports: '{ A: pin, B: roller }',
      loads: '[ { uniform: 1 kip/ft } ]',
    });
    expect(stepsOf(derivation, 'displacements')).toEqual([]);
    expect(stepsOf(derivation, 'given')).toContainEqual(
      expect.objectContaining({ kind: 'taken', hasStiffness: false }),
    );
  });
});
