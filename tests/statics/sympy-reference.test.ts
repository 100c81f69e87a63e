import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import {
  solveBeam,
  valueAt,
  type BeamResult,
  type BeamStructure,
  type Load,
  type Support,
} from '../../src/statics/index.ts';
import { fixed, roller } from '../support/beam.ts';

/** What tests/support/sympy-reference/make_reference.py writes; couples counterclockwise, moments sagging, all else up. */
interface ReferenceBeam {
  readonly name: string;
  readonly length: number;
  readonly supports: readonly (readonly [x: number, kind: 'fixed' | 'roller'])[];
  readonly hinges: readonly number[];
  readonly stretches: readonly (readonly [end: number, EI: number])[];
  readonly loads: readonly (readonly ['force' | 'couple' | 'spread', ...number[]])[];
  readonly reactions: readonly (readonly [
    x: number,
    up: number,
    turn: number | null,
  ])[];
  readonly moments: readonly (readonly [x: number, moment: number])[];
  readonly deflections: readonly (readonly [x: number, v: number])[];
}

const { beams } = JSON.parse(
  readFileSync(new URL('sympy-reference.json', import.meta.url), 'utf8'),
) as { readonly beams: readonly ReferenceBeam[] };

function asLoad(
  [kind, a = 0, b = 0, c = 0, d = 0]: ReferenceBeam['loads'][number],
  index: number,
): Load {
  const head = { id: `q${index}`, case: 'all' };
  switch (kind) {
    case 'force':
      return { ...head, kind: 'point', x: a, fx: 0, fy: b };
    case 'couple':
      return { ...head, kind: 'couple', x: a, m: b };
    case 'spread':
      return {
        ...head,
        kind: 'distributed',
        from: a,
        to: b,
        x1: 0,
        y1: c,
        x2: 0,
        y2: d,
      };
  }
}

function structureOf(reference: ReferenceBeam): BeamStructure {
  const stations = new Set([0, ...reference.supports.map(([x]) => x)]);
  for (const x of [...reference.hinges, reference.length]) stations.add(x);
  const points = [...stations]
    .sort((a, b) => a - b)
    .map((x, index) => ({ name: `P${index}`, x }));
  const pointAt = (x: number): string => points.find((one) => one.x === x)!.name;
  // The reference knows no axis: the first roller is made a pin, so that nothing slides.
  const isHeld = reference.supports.some(([, kind]) => kind === 'fixed');
  const supports = reference.supports.map(([x, kind], index): Support => {
    const place = { point: pointAt(x), x };
    if (kind === 'fixed') return { ...place, ...fixed };
    if (isHeld || index > 0) return { ...place, ...roller() };
    const alongX = { kind: 'force', direction: [1, 0] } as const;
    return { ...place, type: 'pin', restraints: [alongX, ...roller().restraints] };
  });
  return {
    kind: 'beam',
    points,
    supports,
    hinges: reference.hinges.map((x) => ({ point: pointAt(x), x })),
    loads: reference.loads.map(asLoad),
    cases: ['all'],
    stiffness: reference.stretches.map(([to, EI], index) => ({
      from: reference.stretches[index - 1]?.[0] ?? 0,
      to,
      EI,
    })),
  };
}

function solved(structure: BeamStructure): BeamResult {
  const outcome = solveBeam(structure);
  if (outcome.kind !== 'beam') throw new Error(outcome.unsolved.reason);
  return outcome.results[0]!;
}

function expectSame(found: readonly number[], given: readonly number[]): void {
  const scale = Math.max(...given.map(Math.abs));
  for (const [index, value] of found.entries())
    expect(Math.abs(value - given[index]!)).toBeLessThanOrEqual(1e-12 * scale);
}

describe('every beam that sympy worked in exact fractions', () => {
  test('is there, determinate and indeterminate', () => {
    expect(beams.length).toBeGreaterThanOrEqual(60);
    const redundants = beams.map((one) => {
      const outcome = solveBeam(structureOf(one));
      return outcome.kind === 'beam' ? outcome.determinacy.redundants : NaN;
    });
    expect(redundants.filter((count) => count === 0).length).toBeGreaterThan(20);
    expect(redundants.filter((count) => count > 0).length).toBeGreaterThan(40);
    expect(Math.max(...redundants)).toBeGreaterThanOrEqual(4);
  });

  test.each(beams)('$name: reactions, moments and deflections', (reference) => {
    const result = solved(structureOf(reference));
    expectSame(
      result.reactions.map(({ y }) => y!),
      reference.reactions.map(([, up]) => up),
    );
    expectSame(
      result.reactions.flatMap(({ moment }) => moment ?? []),
      reference.reactions.flatMap(([, , turn]) => turn ?? []),
    );
    expectSame(
      reference.moments.map(([x]) => valueAt(result.moment, x, 'left')),
      reference.moments.map(([, moment]) => moment),
    );
    expectSame(
      reference.deflections.map(([x]) =>
        valueAt(result.displacement!.deflection, x, 'left'),
      ),
      reference.deflections.map(([, v]) => v),
    );
  });
});
