import { describe, expect, test } from 'vitest';
import {
  solvingOrder,
  sumsOfStep,
  type BeamStructure,
  type SolvingStep,
  type Unknown,
  type WorkedSum,
} from '../../src/statics/index.ts';
import { beam, fixed, guide, pin, roller } from '../support/beam.ts';

function short(unknown: Unknown): string {
  return unknown.kind === 'hinge'
    ? `${unknown.point}.${unknown.component}`
    : `${unknown.point}${unknown.index}`;
}

function sumText({ part, sum }: WorkedSum): string {
  const what = sum.kind === 'forces' ? `Σ${sum.along}` : `ΣM(${sum.about})`;
  return `${what} on ${part.from}–${part.to}`;
}

function stepText(step: SolvingStep): string {
  const finds =
    step.kind === 'single' ? short(step.finds) : step.finds.map(short).join(', ');
  return `${sumsOfStep(step).map(sumText).join(' and ')} → ${finds}`;
}

const stepsOf = (structure: BeamStructure): readonly string[] =>
  solvingOrder(structure).steps.map(stepText);
const checksOf = (structure: BeamStructure): readonly string[] =>
  solvingOrder(structure).checks.map(sumText);

const points = { A: 0, B: 6, C: 10 };

describe('solvingOrder', () => {
  test('of a simple beam: moments about the pin, forces up, forces along; checked about the roller', () => {
    const simple = beam({ points, supports: { A: pin, C: roller() } });
    expect(stepsOf(simple)).toEqual([
      'ΣM(0) on 0–10 → C0',
      'Σy on 0–10 → A1',
      'Σx on 0–10 → A0',
    ]);
    expect(checksOf(simple)).toEqual(['ΣM(10) on 0–10']);
    const [first, second] = solvingOrder(simple).steps;
    expect(first).toMatchObject({
      clears: [
        { point: 'A', index: 0 },
        { point: 'A', index: 1 },
      ],
      uses: [],
    });
    expect(second).toMatchObject({
      clears: [{ point: 'A', index: 0 }],
      uses: [{ point: 'C', index: 0 }],
    });
  });

  test('takes moments about the pin wherever it stands, also for a slanted roller', () => {
    expect(stepsOf(beam({ points, supports: { A: roller(), C: pin } }))[0]).toBe(
      'ΣM(10) on 0–10 → A0',
    );
    expect(stepsOf(beam({ points, supports: { B: pin, C: roller(50) } }))).toEqual([
      'ΣM(6) on 0–10 → C0',
      'Σy on 0–10 → B1',
      'Σx on 0–10 → B0',
    ]);
  });

  test('of a cantilever: forces along, forces up, moments about the wall; checked about the tip', () => {
    const left = beam({ points, supports: { A: fixed } });
    expect(stepsOf(left)).toEqual([
      'Σx on 0–10 → A0',
      'Σy on 0–10 → A1',
      'ΣM(0) on 0–10 → A2',
    ]);
    expect(checksOf(left)).toEqual(['ΣM(10) on 0–10']);
    expect(stepsOf(beam({ points, supports: { C: fixed } }))[2]).toBe(
      'ΣM(10) on 0–10 → C2',
    );
  });

  test('of a guide and a roller: the roller from forces up, then the moment about the guide', () => {
    expect(stepsOf(beam({ points, supports: { A: guide, C: roller() } }))).toEqual([
      'Σx on 0–10 → A0',
      'Σy on 0–10 → C0',
      'ΣM(0) on 0–10 → A1',
    ]);
  });

  test('of a beam with hinges: the suspended piece first, then the one that carries it', () => {
    const hung = beam({
      points: { A: 0, B: 6, H: 8, C: 12 },
      supports: { A: pin, B: roller(), C: roller() },
      hinges: ['H'],
    });
    expect(stepsOf(hung)).toEqual([
      'ΣM(8) on 8–12 → C0',
      'Σy on 8–12 → H.y',
      'Σx on 8–12 → H.x',
      'ΣM(0) on 0–8 → B0',
      'Σy on 0–8 → A1',
      'Σx on 0–8 → A0',
    ]);
    expect(checksOf(hung)).toEqual([
      'ΣM(0) on 0–12',
      'Σx on 0–12',
      'Σy on 0–12',
      'ΣM(6) on 0–8',
      'ΣM(12) on 8–12',
    ]);
  });

  test('of a drop-in span: that span first though nothing else holds it, forces along when their turn comes', () => {
    const steps = stepsOf(
      beam({
        points: { A: 0, B: 6, H: 8, I: 12, C: 14, D: 20 },
        supports: { A: pin, B: roller(), C: roller(), D: roller() },
        hinges: ['H', 'I'],
      }),
    );
    expect(steps.slice(0, 3)).toEqual([
      'ΣM(8) on 8–12 → I.y',
      'Σy on 8–12 → H.y',
      'ΣM(0) on 0–8 → B0',
    ]);
    expect(steps.slice(-3)).toEqual([
      'Σx on 12–20 → I.x',
      'Σx on 8–12 → H.x',
      'Σx on 0–8 → A0',
    ]);
  });

  test('solves two sums together where no sum leaves one unknown', () => {
    const order = solvingOrder(
      beam({ points, supports: { A: roller(60), B: roller(), C: roller(120) } }),
    );
    expect(order.steps.map(stepText)).toEqual([
      'ΣM(6) on 0–10 and Σx on 0–10 → A0, C0',
      'Σy on 0–10 → B0',
    ]);
    expect(order.steps[0]).toMatchObject({ kind: 'coupled' });
    expect(order.checks.map(sumText)).toEqual(['ΣM(0) on 0–10']);
  });

  test('solves three together where all three rollers slant', () => {
    const order = solvingOrder(
      beam({ points, supports: { A: roller(60), B: roller(100), C: roller(120) } }),
    );
    expect(order.steps).toHaveLength(1);
    expect(order.steps[0]).toMatchObject({
      kind: 'coupled',
      sums: { length: 3 },
      finds: { length: 3 },
    });
    expect(order.checks.map(({ sum }) => sum)).toContainEqual({
      kind: 'forces',
      along: 'y',
    });
  });

  test('shares the forces along the beam between two pins after everything else', () => {
    const order = solvingOrder(beam({ points, supports: { A: pin, C: pin } }));
    expect(order.steps.map(stepText)).toEqual([
      'ΣM(0) on 0–10 → C1',
      'Σy on 0–10 → A1',
      'Σx on 0–10 → A0, C0',
    ]);
    expect(order.steps[2]!.kind).toBe('axial-sharing');
  });

  test('finds forces along through a hinge between two pins once they are shared', () => {
    const steps = stepsOf(
      beam({
        points: { A: 0, B: 6, H: 8, C: 12 },
        supports: { A: pin, B: roller(), C: pin },
        hinges: ['H'],
      }),
    );
    expect(steps.slice(-2)).toEqual(['Σx on 0–12 → A0, C0', 'Σx on 0–8 → H.x']);
  });

  test('refuses a beam that statics cannot solve', () => {
    expect(() => solvingOrder(beam({ points, supports: { A: roller() } }))).toThrow(
      RangeError,
    );
    expect(() =>
      solvingOrder(beam({ points, supports: { A: fixed, C: roller() } })),
    ).toThrow(RangeError);
  });
});
