import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  determinacy,
  isClosed,
  jumpsOf,
  partsOf,
  segmentsOf,
  sizeOf,
  solveBeam,
  solvingOrder,
  superpose,
  termsOfSum,
  valueAt,
  valueOfUnknown,
  wholeOf,
  keyOfUnknown,
  differentiate,
  sumsOfStep,
  unknownsOf,
  type BeamResult,
  type BeamStructure,
  type Load,
  type Piecewise,
  type SumTerm,
  type Support,
} from '../../src/statics/index.ts';
import { determinateBeam } from '../support/random-beam.ts';

const runs = { numRuns: 90 };

function solved(structure: BeamStructure): readonly BeamResult[] {
  const outcome = solveBeam(structure);
  if (outcome.kind !== 'beam') throw new Error(JSON.stringify(outcome.unsolved));
  return outcome.results;
}

/** The sum of sizes of a case's forces and of its moments, loads and reactions. */
function sizesOf(
  structure: BeamStructure,
  result: BeamResult,
): { force: number; moment: number } {
  const { from, to } = wholeOf(structure);
  let force = 0;
  let couple = 0;
  for (const load of structure.loads.filter((one) => one.case === result.mark)) {
    if (load.kind === 'couple') couple += Math.abs(load.m);
    else if (load.kind === 'point') force += Math.abs(load.fx) + Math.abs(load.fy);
    else {
      const ends = [load.x1, load.y1, load.x2, load.y2].map(Math.abs);
      force += ends.reduce((a, b) => a + b, 0) * (load.to - load.from);
    }
  }
  for (const { x, y, moment } of result.reactions) {
    force += Math.abs(x ?? 0) + Math.abs(y ?? 0);
    couple += Math.abs(moment ?? 0);
  }
  const length = to - from;
  return { force: force + couple / length, moment: force * length + couple };
}

/**
 * Internal forces at a cut by brute force: everything left of it added up, spread loads by
 * Simpson's rule (exact for the straight lines times an arm that occur).
 */
function cutForces(
  structure: BeamStructure,
  result: BeamResult,
  x: number,
): { axial: number; shear: number; moment: number } {
  let [fx, fy, m] = [0, 0, 0];
  const add = (at: number, px: number, py: number): void => {
    fx += px;
    fy += py;
    m += py * (x - at);
  };
  for (const [at, px, py, couple] of reactionsLeftOf(structure, result, x)) {
    add(at, px, py);
    m -= couple;
  }
  for (const load of structure.loads.filter((one) => one.case === result.mark)) {
    if (load.kind === 'point' && load.x < x) add(load.x, load.fx, load.fy);
    if (load.kind === 'couple' && load.x < x) m -= load.m;
    if (load.kind === 'distributed') {
      for (const [at, px, py] of lumped(load, x)) add(at, px, py);
    }
  }
  return { axial: 0 - fx, shear: fy, moment: m };
}

/** Station, forces and couple of every support left of a cut. */
function reactionsLeftOf(
  structure: BeamStructure,
  result: BeamResult,
  cut: number,
): readonly (readonly [number, number, number, number])[] {
  return structure.supports.flatMap((support, index) => {
    const { x, y, moment } = result.reactions[index]!;
    return support.x < cut ? [[support.x, x ?? 0, y ?? 0, moment ?? 0] as const] : [];
  });
}

/** What is left of a cut of a spread load, as the three forces of Simpson's rule. */
function lumped(
  load: Extract<Load, { kind: 'distributed' }>,
  x: number,
): readonly (readonly [number, number, number])[] {
  const base = Math.max(0, Math.min(load.to, x) - load.from);
  return (
    [
      [0, 1],
      [0.5, 4],
      [1, 1],
    ] as const
  ).map(([part, weight]) => {
    const at = load.from + part * base;
    const along = (at - load.from) / (load.to - load.from);
    const times = (weight / 6) * base;
    return [
      at,
      times * (load.x1 + (load.x2 - load.x1) * along),
      times * (load.y1 + (load.y2 - load.y1) * along),
    ];
  });
}

function expectNear(actual: number, expected: number, size: number): void {
  // Only a failure goes through `expect`, which is slow for the tens of thousands of values here.
  if (!(Math.abs(actual - expected) <= 1e-9 * size)) {
    expect(actual).toBeCloseTo(expected, 12);
    throw new Error(`${actual} is not ${expected} beside ${size}`);
  }
}

/** A share of the beam's length, off the grid of the generator. */
const share = fc.integer({ min: 0, max: 1009 }).map((n) => n / 1009);

describe('any determinate beam', () => {
  test('is found determinate and is solved, every residual closed', () => {
    fc.assert(
      fc.property(determinateBeam, (structure) => {
        const found = determinacy(structure);
        expect(found).toMatchObject({
          degree: 0,
          redundants: 0,
          mechanisms: 0,
          stable: true,
        });
        for (const result of solved(structure)) {
          expect(result.residuals.filter((residual) => !isClosed(residual))).toEqual(
            [],
          );
        }
      }),
      runs,
    );
  });

  test('is in balance about any point whatever, on every piece', () => {
    fc.assert(
      fc.property(determinateBeam, share, (structure, where) => {
        const { from, to } = wholeOf(structure);
        const about = from + (to - from) * (3 * where - 1);
        for (const result of solved(structure)) {
          const size = sizesOf(structure, result);
          for (const part of [wholeOf(structure), ...partsOf(structure)]) {
            const moments = termsOfSum(structure, result.mark, part, {
              kind: 'moments',
              about,
            });
            expectNear(worth(moments, result), 0, 3 * size.moment);
            for (const along of ['x', 'y'] as const) {
              const forces = termsOfSum(structure, result.mark, part, {
                kind: 'forces',
                along,
              });
              expectNear(worth(forces, result), 0, size.force);
            }
          }
        }
      }),
      runs,
    );
  });

  test('has the internal forces that adding up everything left of a cut gives', () => {
    fc.assert(
      fc.property(
        determinateBeam,
        fc.array(share, { minLength: 4, maxLength: 4 }),
        (structure, where) => {
          const { from, to } = wholeOf(structure);
          for (const result of solved(structure)) {
            const size = sizesOf(structure, result);
            for (const at of where) {
              const x = from + at * (to - from);
              if (x === from) continue;
              const cut = cutForces(structure, result, x);
              expectNear(valueAt(result.axial, x, 'left'), cut.axial, size.force);
              expectNear(valueAt(result.shear, x, 'left'), cut.shear, size.force);
              expectNear(valueAt(result.moment, x, 'left'), cut.moment, size.moment);
            }
          }
        },
      ),
      runs,
    );
  });

  test('has no moment at free ends and hinges that carry no couple', () => {
    fc.assert(
      fc.property(determinateBeam, (structure) => {
        const { from, to } = wholeOf(structure);
        for (const result of solved(structure)) {
          const hasCouple = (x: number): boolean =>
            structure.loads.some(
              (load) =>
                load.case === result.mark && load.kind === 'couple' && load.x === x,
            ) ||
            structure.supports.some(
              (support) =>
                support.x === x && support.restraints.some((r) => r.kind === 'moment'),
            );
          for (const x of [from, to, ...structure.hinges.map((hinge) => hinge.x)]) {
            if (hasCouple(x)) continue;
            const { moment } = sizesOf(structure, result);
            expectNear(valueAt(result.moment, x, 'left'), 0, 1e-3 * moment);
            expectNear(valueAt(result.moment, x, 'right'), 0, 1e-3 * moment);
          }
        }
      }),
      runs,
    );
  });

  test('has shear as the slope of moment, load as the slope of shear, and jumps that equal the loads', () => {
    fc.assert(
      fc.property(determinateBeam, share, (structure, where) => {
        for (const result of solved(structure)) {
          const size = sizesOf(structure, result);
          const { from, to } = wholeOf(structure);
          const x = from + where * (to - from);
          const slope = differentiate(result.moment);
          expectNear(
            valueAt(slope, x, 'left'),
            valueAt(result.shear, x, 'left'),
            size.force,
          );
          const load = intensityUp(structure, result.mark, x);
          expectNear(
            valueAt(differentiate(result.shear), x, 'left'),
            load,
            1e6 + Math.abs(load),
          );
          for (const jump of jumpsOf(result.shear)) {
            expectNear(
              jump.right - jump.left,
              forceUpAt(structure, result, jump.x),
              size.force,
            );
          }
          for (const jump of jumpsOf(result.moment)) {
            expectNear(
              jump.right - jump.left,
              -coupleAt(structure, result, jump.x),
              size.moment,
            );
          }
        }
      }),
      runs,
    );
  });

  test('changes its moment over each segment by the area under the shear, and by the couples between', () => {
    fc.assert(
      fc.property(determinateBeam, (structure) => {
        for (const result of solved(structure)) {
          const { moment } = sizesOf(structure, result);
          const segments = segmentsOf(result);
          let now = segments[0]!.moment.start;
          for (const segment of segments) {
            expectNear(segment.moment.start, now, moment);
            expectNear(segment.moment.end, now + segment.shearArea, moment);
            now += segment.shearArea + segment.momentJump;
          }
        }
      }),
      runs,
    );
  });

  test('has no value beyond its extremes', () => {
    fc.assert(
      fc.property(determinateBeam, share, (structure, where) => {
        const { from, to } = wholeOf(structure);
        for (const result of solved(structure)) {
          for (const name of ['axial', 'shear', 'moment'] as const) {
            const { max, min } = result.extremes[name];
            const size = sizeOf(result[name]);
            for (const side of ['left', 'right'] as const) {
              const value = valueAt(result[name], from + where * (to - from), side);
              expect(value).toBeLessThanOrEqual(max.value + 1e-9 * size);
              expect(value).toBeGreaterThanOrEqual(min.value - 1e-9 * size);
            }
            for (const extreme of [max, min]) {
              const there = (['left', 'right'] as const).map((side) =>
                Math.abs(valueAt(result[name], extreme.x, side) - extreme.value),
              );
              expect(Math.min(...there)).toBeLessThanOrEqual(2e-9 * size);
            }
          }
        }
      }),
      runs,
    );
  });
});

describe('results', () => {
  test('superpose: the factored cases added up are the solution for the factored loads', () => {
    const factor = fc.constantFrom(1.2, 1.6, 0.5, -1, 0);
    fc.assert(
      fc.property(determinateBeam, factor, factor, (structure, d, l) => {
        const factors = [
          { case: 'D', factor: d },
          { case: 'L', factor: l },
        ];
        const sum = superpose(solved(structure), factors, 'sum');
        const at = { D: d, L: l };
        const loads = structure.loads.map((load) => ({
          ...factored(load, at[load.case as 'D' | 'L']),
          case: 'sum',
        }));
        const [direct] = solved({ ...structure, loads, cases: ['sum'] });
        const cases = solved(structure);
        const size = cases
          .map((result) => sizesOf(structure, result))
          .reduce((a, b) => ({
            force: a.force + b.force,
            moment: a.moment + b.moment,
          }));
        expectSameResult(sum, direct!, size);
        expect(sum.residuals.every(isClosed)).toBe(true);
      }),
      runs,
    );
  });

  test('scale with the loads, and with the lengths, whatever the units', () => {
    const scale = fc.constantFrom(0.3048, 1000, 1 / 0.0254, 4.4482216);
    fc.assert(
      fc.property(determinateBeam, scale, scale, (structure, length, force) => {
        const other = rescaled(structure, length, force);
        const [before, after] = [determinacy(structure), determinacy(other)];
        expect(after.condition / before.condition).toBeCloseTo(1, 9);
        const results = solved(structure);
        for (const [index, result] of solved(other).entries()) {
          const original = results[index]!;
          const size = sizesOf(structure, original);
          for (const [place, reaction] of result.reactions.entries()) {
            const first = original.reactions[place]!;
            expectNear((reaction.x ?? 0) / force, first.x ?? 0, size.force);
            expectNear((reaction.y ?? 0) / force, first.y ?? 0, size.force);
            expectNear(
              (reaction.moment ?? 0) / force / length,
              first.moment ?? 0,
              size.moment,
            );
          }
          expectNear(
            result.extremes.moment.max.value / force / length,
            original.extremes.moment.max.value,
            size.moment,
          );
          expectNear(
            result.extremes.shear.min.value / force,
            original.extremes.shear.min.value,
            size.force,
          );
        }
      }),
      runs,
    );
  });

  test('mirror: the beam seen from behind has the mirrored results', () => {
    fc.assert(
      fc.property(determinateBeam, share, (structure, where) => {
        const { from, to } = wholeOf(structure);
        const results = solved(structure);
        for (const [index, result] of solved(mirrored(structure)).entries()) {
          const original = results[index]!;
          const size = sizesOf(structure, original);
          for (const reaction of original.reactions) {
            const twin = result.reactions.find(
              ({ point }) => point === reaction.point,
            )!;
            expectNear(twin.x ?? 0, -(reaction.x ?? 0), size.force);
            expectNear(twin.y ?? 0, reaction.y ?? 0, size.force);
            expectNear(twin.moment ?? 0, -(reaction.moment ?? 0), size.moment);
          }
          const x = from + where * (to - from);
          const far = to - (x - from);
          expectNear(
            valueAt(result.moment, far, 'right'),
            valueAt(original.moment, x, 'left'),
            size.moment,
          );
          expectNear(
            valueAt(result.shear, far, 'right'),
            -valueAt(original.shear, x, 'left'),
            size.force,
          );
          expectNear(
            valueAt(result.axial, far, 'right'),
            valueAt(original.axial, x, 'left'),
            size.force,
          );
        }
      }),
      runs,
    );
  });

  test('do not depend on the order of supports, hinges and loads', () => {
    fc.assert(
      fc.property(determinateBeam, (structure) => {
        const turned: BeamStructure = {
          ...structure,
          supports: [...structure.supports].reverse(),
          hinges: [...structure.hinges].reverse(),
          loads: [...structure.loads].reverse(),
        };
        const results = solved(structure);
        for (const [index, result] of solved(turned).entries()) {
          const original = results[index]!;
          const size = sizesOf(structure, original);
          const reordered = {
            ...result,
            reactions: [...result.reactions].reverse(),
            hingeForces: [...result.hingeForces].reverse(),
          };
          expectSameResult(reordered, original, size);
        }
      }),
      runs,
    );
  });
});

describe('the hand calculation', () => {
  test('worked step by step from the terms of its sums, finds what the solver finds', () => {
    fc.assert(
      fc.property(determinateBeam, (structure) => {
        const { steps, checks } = solvingOrder(structure);
        const found = steps
          .flatMap((step) => (step.kind === 'single' ? [step.finds] : step.finds))
          .map(keyOfUnknown);
        const all = [
          ...unknownsOf(structure),
          ...structure.hinges.flatMap(({ point }) => [
            { kind: 'hinge', point, component: 'x' } as const,
            { kind: 'hinge', point, component: 'y' } as const,
          ]),
        ].map(keyOfUnknown);
        expect([...found].sort()).toEqual([...all].sort());
        for (const result of solved(structure)) {
          const size = sizesOf(structure, result);
          const values = new Map<string, number>();
          for (const step of steps) {
            const finds = step.kind === 'single' ? [step.finds] : step.finds;
            const equations = sumsOfStep(step).map(({ part, sum }) =>
              termsOfSum(structure, result.mark, part, sum),
            );
            for (const [key, value] of solveByHand(
              equations,
              finds.map(keyOfUnknown),
              values,
            ))
              values.set(key, value);
            for (const unknown of finds) {
              const isMoment = isMomentUnknown(structure, unknown);
              expectNear(
                values.get(keyOfUnknown(unknown))!,
                valueOfUnknown(result, unknown),
                isMoment ? size.moment : 100 * size.force,
              );
            }
          }
          for (const { part, sum } of checks) {
            const terms = termsOfSum(structure, result.mark, part, sum);
            expectNear(
              worth(terms, result),
              0,
              sum.kind === 'moments' ? size.moment : size.force,
            );
          }
        }
      }),
      runs,
    );
  });
});

describe('a mechanism', () => {
  test('made by taking a restraint away is reported and never solved', () => {
    fc.assert(
      fc.property(determinateBeam, fc.nat(), (structure, which) => {
        expectUnstable(without(structure, which));
      }),
      runs,
    );
  });

  test('made by one hinge too many is reported and never solved', () => {
    fc.assert(
      fc.property(determinateBeam, share, (structure, where) => {
        const { from, to } = wholeOf(structure);
        const x = from + where * (to - from);
        fc.pre(
          structure.points.every((point) => Math.abs(point.x - x) > 1e-3 * (to - from)),
        );
        const points = [...structure.points, { name: 'extra', x }].sort(
          (a, b) => a.x - b.x,
        );
        const hinges = [...structure.hinges, { point: 'extra', x }];
        const found = expectUnstable({ ...structure, points, hinges });
        expect(found.mechanisms).toBe(1);
      }),
      runs,
    );
  });

  test('is not hidden by a redundant that brings the count to 0', () => {
    fc.assert(
      fc.property(determinateBeam, fc.nat(), fc.nat(), (structure, gone, doubled) => {
        const left = without(structure, gone);
        const candidates = left.supports.filter(
          (support) => support.restraints.length > 0,
        );
        fc.pre(candidates.length > 0);
        const twice = candidates[doubled % candidates.length]!;
        const supports = left.supports.map((support): Support =>
          support === twice
            ? {
                ...support,
                restraints: [...support.restraints, support.restraints[0]!],
              }
            : support,
        );
        const found = expectUnstable({ ...left, supports });
        expect(found).toMatchObject({ degree: 0, redundants: 1, mechanisms: 1 });
      }),
      runs,
    );
  });
});

function expectUnstable(structure: BeamStructure): ReturnType<typeof determinacy> {
  const outcome = solveBeam(structure);
  expect(outcome.kind).toBe('unsolved');
  const found = determinacy(structure);
  expect(found.stable).toBe(false);
  expect(found.instability).toBeDefined();
  return found;
}

/** The structure without its n-th restraint. */
function without(structure: BeamStructure, n: number): BeamStructure {
  const count = unknownsOf(structure).length;
  let index = 0;
  const supports = structure.supports.map((support) => ({
    ...support,
    restraints: support.restraints.filter(() => index++ !== n % count),
  }));
  return { ...structure, supports };
}

function worth(terms: readonly SumTerm[], result: BeamResult): number {
  return terms.reduce((sum, { factor, magnitude, source }) => {
    const value = source.kind === 'load' ? magnitude! : valueOfUnknown(result, source);
    return sum + factor * value;
  }, 0);
}

/** Solves sums for the unknowns named, everything else in them known: Gauss's elimination, or sharing between two pins. */
function solveByHand(
  equations: readonly (readonly SumTerm[])[],
  finds: readonly string[],
  known: ReadonlyMap<string, number>,
): readonly (readonly [string, number])[] {
  const rows = equations.map((terms) => {
    const row = new Array<number>(finds.length + 1).fill(0);
    for (const term of terms) {
      if (term.source.kind === 'load') {
        row[finds.length]! -= term.factor * term.magnitude!;
        continue;
      }
      const column = finds.indexOf(keyOfUnknown(term.source));
      if (column >= 0) row[column]! += term.factor;
      else if (term.factor !== 0)
        row[finds.length]! -= term.factor * known.get(keyOfUnknown(term.source))!;
    }
    return row;
  });
  for (const column of finds.keys()) {
    const best = rows
      .slice(column)
      .reduce((a, b) => (Math.abs(b[column]!) > Math.abs(a[column]!) ? b : a));
    const at = rows.indexOf(best);
    [rows[column], rows[at]] = [best, rows[column]!];
    for (const row of rows) {
      if (row === best) continue;
      const times = row[column]! / best[column]!;
      for (const k of row.keys()) row[k]! -= times * best[k]!;
    }
  }
  return finds.map((key, index) => [
    key,
    rows[index]![finds.length]! / rows[index]![index]!,
  ]);
}

function isMomentUnknown(
  structure: BeamStructure,
  unknown: Parameters<typeof keyOfUnknown>[0],
): boolean {
  if (unknown.kind !== 'reaction') return false;
  const support = structure.supports.find(({ point }) => point === unknown.point)!;
  return support.restraints[unknown.index]!.kind === 'moment';
}

function intensityUp(structure: BeamStructure, mark: string, x: number): number {
  let sum = 0;
  for (const load of structure.loads) {
    if (load.case !== mark || load.kind !== 'distributed') continue;
    if (x <= load.from && x !== wholeOf(structure).from) continue;
    if (x > load.to || x < load.from) continue;
    sum += load.y1 + ((load.y2 - load.y1) * (x - load.from)) / (load.to - load.from);
  }
  return sum;
}

function forceUpAt(structure: BeamStructure, result: BeamResult, x: number): number {
  const loads = structure.loads
    .filter(
      (load) => load.case === result.mark && load.kind === 'point' && load.x === x,
    )
    .reduce((sum, load) => sum + (load.kind === 'point' ? load.fy : 0), 0);
  const index = structure.supports.findIndex((support) => support.x === x);
  return loads + (result.reactions[index]?.y ?? 0);
}

function coupleAt(structure: BeamStructure, result: BeamResult, x: number): number {
  const loads = structure.loads
    .filter(
      (load) => load.case === result.mark && load.kind === 'couple' && load.x === x,
    )
    .reduce((sum, load) => sum + (load.kind === 'couple' ? load.m : 0), 0);
  const index = structure.supports.findIndex((support) => support.x === x);
  return loads + (result.reactions[index]?.moment ?? 0);
}

function factored(load: Load, by: number): Load {
  switch (load.kind) {
    case 'point':
      return { ...load, fx: by * load.fx, fy: by * load.fy };
    case 'couple':
      return { ...load, m: by * load.m };
    case 'distributed':
      return {
        ...load,
        x1: by * load.x1,
        y1: by * load.y1,
        x2: by * load.x2,
        y2: by * load.y2,
      };
  }
}

function rescaled(
  structure: BeamStructure,
  length: number,
  force: number,
): BeamStructure {
  const at = <T extends { readonly x: number }>(place: T): T => ({
    ...place,
    x: place.x * length,
  });
  return {
    ...structure,
    points: structure.points.map(at),
    supports: structure.supports.map(at),
    hinges: structure.hinges.map(at),
    loads: structure.loads.map((load): Load => {
      if (load.kind === 'couple') return { ...at(load), m: load.m * force * length };
      if (load.kind === 'point')
        return at({ ...load, fx: load.fx * force, fy: load.fy * force });
      const moved = { ...load, from: load.from * length, to: load.to * length };
      return factored(moved, force / length);
    }),
  };
}

function mirrored(structure: BeamStructure): BeamStructure {
  const { from, to } = wholeOf(structure);
  const flip = (x: number): number => to - (x - from);
  const at = <T extends { readonly x: number }>(place: T): T => ({
    ...place,
    x: flip(place.x),
  });
  return {
    ...structure,
    points: structure.points.map(at).reverse(),
    supports: structure.supports.map((support) => ({
      ...at(support),
      restraints: support.restraints.map((restraint) =>
        restraint.kind === 'force' && restraint.direction[1] !== 0
          ? {
              ...restraint,
              direction: [-restraint.direction[0], restraint.direction[1]] as const,
            }
          : restraint,
      ),
    })),
    hinges: structure.hinges.map(at).reverse(),
    loads: structure.loads.map((load): Load => {
      switch (load.kind) {
        case 'point':
          return at({ ...load, fx: -load.fx });
        case 'couple':
          return {
            ...at(load),
            m: -load.m,
            side: load.side === 'right' ? 'left' : 'right',
          };
        case 'distributed':
          return {
            ...load,
            from: flip(load.to),
            to: flip(load.from),
            x1: -load.x2,
            y1: load.y2,
            x2: -load.x1,
            y2: load.y1,
          };
      }
    }),
  };
}

function expectSameResult(
  a: BeamResult,
  b: BeamResult,
  size: { readonly force: number; readonly moment: number },
): void {
  for (const [index, reaction] of a.reactions.entries()) {
    const twin = b.reactions[index]!;
    expect(reaction.point).toBe(twin.point);
    expectNear(reaction.x ?? 0, twin.x ?? 0, size.force);
    expectNear(reaction.y ?? 0, twin.y ?? 0, size.force);
    expectNear(reaction.moment ?? 0, twin.moment ?? 0, size.moment);
  }
  for (const [index, hinge] of a.hingeForces.entries()) {
    expectNear(hinge.x, b.hingeForces[index]!.x, size.force);
    expectNear(hinge.y, b.hingeForces[index]!.y, size.force);
  }
  const samples = (f: Piecewise): readonly number[] =>
    f.pieces.flatMap(({ start, end }) =>
      [0.1, 0.5, 0.9].map((s) => start + s * (end - start)),
    );
  for (const name of ['axial', 'shear', 'moment'] as const) {
    const scale = name === 'moment' ? size.moment : size.force;
    for (const x of samples(a[name])) {
      expectNear(valueAt(a[name], x, 'left'), valueAt(b[name], x, 'left'), scale);
    }
    expectNear(a.extremes[name].max.value, b.extremes[name].max.value, scale);
    expectNear(a.extremes[name].min.value, b.extremes[name].min.value, scale);
  }
}
