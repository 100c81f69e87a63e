import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  breakpointsOf,
  compatibilityOf,
  determinacy,
  differentiate,
  isClosed,
  jumpsOf,
  sizeOf,
  solveBeam,
  superpose,
  valueAt,
  wholeOf,
  type BeamResult,
  type BeamStructure,
  type Load,
  type Piecewise,
} from '../../src/statics/index.ts';
import { elasticBeam } from '../support/random-elastic-beam.ts';

const runs = { numRuns: 30 };
const usual = elasticBeam({ ratio: 100, movements: true });
const unequal = elasticBeam({ ratio: 1e4, movements: true });
const extreme = elasticBeam({ ratio: 1e6, movements: true });
const unmoved = elasticBeam({ ratio: 100, movements: false });

function solved(structure: BeamStructure): readonly BeamResult[] {
  const outcome = solveBeam(structure);
  if (outcome.kind !== 'beam') throw new Error(JSON.stringify(outcome.unsolved));
  return outcome.results;
}

/** Small beside a size; only a failure goes through `expect`, which is slow. */
function expectNear(actual: number, expected: number, size: number): void {
  if (!(Math.abs(actual - expected) <= 1e-9 * size))
    throw new Error(`${actual} is not ${expected} beside ${size}`);
}

/** Abscissae and weights on −1 … 1 that are exact up to the ninth power. */
const gauss: readonly (readonly [number, number])[] = [
  [0, 128 / 225],
  ...[1, -1].flatMap((sign): (readonly [number, number])[] => [
    [
      (sign * Math.sqrt(5 - 2 * Math.sqrt(10 / 7))) / 3,
      (322 + 13 * Math.sqrt(70)) / 900,
    ],
    [
      (sign * Math.sqrt(5 + 2 * Math.sqrt(10 / 7))) / 3,
      (322 - 13 * Math.sqrt(70)) / 900,
    ],
  ]),
];

/** ∫ f over the beam, and ∫ |f|, where f is a polynomial between the stations. */
function integral(
  stations: readonly number[],
  f: (x: number) => number,
): readonly [number, number] {
  const ordered = [...new Set(stations)].sort((a, b) => a - b);
  let [sum, size] = [0, 0];
  for (const [index, end] of ordered.slice(1).entries()) {
    const start = ordered[index]!;
    for (const [point, weight] of gauss) {
      const part = f((start + end) / 2 + (point * (end - start)) / 2) * weight;
      sum += (part * (end - start)) / 2;
      size += (Math.abs(part) * (end - start)) / 2;
    }
  }
  return [sum, size];
}

function stiffnessAt(structure: BeamStructure, x: number): number {
  return structure.stiffness!.find(({ to }) => x <= to)!.EI;
}

function freeCurvatureAt(structure: BeamStructure, mark: string, x: number): number {
  return structure
    .curvatures!.filter((one) => one.case === mark && one.from <= x && one.to >= x)
    .reduce((sum, { curvature }) => sum + curvature, 0);
}

/** Stations between which everything is one polynomial. */
function stationsOf(
  structure: BeamStructure,
  ...curves: readonly Piecewise[]
): number[] {
  return [
    ...curves.flatMap(breakpointsOf),
    ...structure.stiffness!.map(({ from }) => from),
    ...structure.curvatures!.flatMap(({ from, to }) => [from, to]),
  ];
}

/** Σ load · movement of another state, and the sum of sizes. */
function workOn(
  loads: readonly Load[],
  { displacement }: BeamResult,
): readonly [number, number] {
  const { deflection, slope } = displacement!;
  let [work, size] = [0, 0];
  const add = (part: number): void => {
    work += part;
    size += Math.abs(part);
  };
  for (const load of loads) {
    if (load.kind === 'point') add(load.fy * valueAt(deflection, load.x, 'left'));
    else if (load.kind === 'couple')
      add(load.m * valueAt(slope, load.x, load.side ?? 'left'));
    else {
      const { from, to } = load;
      const inside = breakpointsOf(deflection).filter((x) => x > from && x < to);
      const [part, parts] = integral([from, ...inside, to], (x) => {
        const q = load.y1 + ((load.y2 - load.y1) * (x - from)) / (to - from);
        return q * valueAt(deflection, x, 'left');
      });
      work += part;
      size += parts;
    }
  }
  return [work, size];
}

describe('any elastic beam', () => {
  test('is of every degree from 0 to 6, with and without redundancy along the beam', () => {
    const beams = fc.sample(usual, 400);
    const degrees = new Set(beams.map((one) => determinacy(one).redundants));
    expect([...degrees]).toEqual(expect.arrayContaining([0, 1, 2, 3, 4, 5, 6]));
  });

  test.each([
    ['a hundred', usual],
    ['ten thousand', unequal],
  ] as const)(
    'is solved alike by both ways to 1e-9 of scale, stiffnesses apart by %s and more',
    (_, beams) => {
      fc.assert(
        fc.property(beams, (structure) => {
          const { redundants, axialOnly } = determinacy(structure);
          for (const result of solved(structure)) {
            expect(result.residuals.every(isClosed)).toBe(true);
            expect(result.agreement !== undefined).toBe(redundants > 0 && !axialOnly);
            expect(result.agreement?.difference ?? 0).toBeLessThanOrEqual(1e-9);
          }
        }),
        runs,
      );
    },
  );

  test('is solved alike to 1e-9 times the condition estimate beyond that', () => {
    fc.assert(
      fc.property(extreme, (structure) => {
        for (const { agreement } of solved(structure)) {
          if (agreement === undefined) continue;
          const { allowed, condition, difference } = agreement;
          expect(allowed).toBeLessThanOrEqual(1e-9 * Math.max(1, condition));
          expect(allowed).toBeLessThanOrEqual(1e-6);
          expect(difference).toBeLessThanOrEqual(allowed);
        }
      }),
      runs,
    );
  });

  test('moves with every support, its foot and its spring', () => {
    fc.assert(
      fc.property(unequal, (structure) => {
        for (const result of solved(structure)) {
          const residuals = compatibilityOf(structure, result, result.mark);
          expect(residuals.length).toBeGreaterThan(0);
          expect(residuals.filter((one) => !isClosed(one))).toEqual([]);
        }
      }),
      runs,
    );
  });

  test('bends by M / EI and its free curvature, breaks only at hinges and is nowhere torn', () => {
    fc.assert(
      fc.property(usual, fc.integer({ min: 1, max: 1008 }), (structure, place) => {
        const { from, to } = wholeOf(structure);
        const x = from + ((to - from) * place) / 1009;
        for (const result of solved(structure)) {
          const { deflection, slope } = result.displacement!;
          const bends = differentiate(slope);
          const EI = stiffnessAt(structure, x);
          const bend = valueAt(result.moment, x, 'left') / EI;
          const free = freeCurvatureAt(structure, result.mark, x);
          const size =
            sizeOf(result.moment) / EI + Math.abs(free) + sizeOf(slope) / (to - from);
          expectNear(valueAt(bends, x, 'left'), bend + free, size);
          expect(jumpsOf(deflection)).toEqual([]);
          const hinges = structure.hinges.map((hinge) => hinge.x);
          for (const jump of jumpsOf(slope)) expect(hinges).toContain(jump.x);
        }
      }),
      runs,
    );
  });

  test('keeps a support that does not give way at exactly 0', () => {
    fc.assert(
      fc.property(unmoved, (structure) => {
        for (const { displacement } of solved(structure)) {
          for (const { x, restraints } of structure.supports) {
            const isHeld = restraints.some(
              (one) =>
                one.kind === 'force' &&
                one.direction[1] === 1 &&
                one.stiffness === undefined,
            );
            if (!isHeld) continue;
            for (const side of ['left', 'right'] as const)
              expect(valueAt(displacement!.deflection, x, side)).toBe(0);
          }
        }
      }),
      runs,
    );
  });

  test('has no deflection beyond its extremes, which are somewhere on it', () => {
    fc.assert(
      fc.property(usual, fc.integer({ min: 0, max: 1009 }), (structure, place) => {
        const { from, to } = wholeOf(structure);
        for (const { displacement } of solved(structure)) {
          const { deflection, extremes } = displacement!;
          const size = sizeOf(deflection);
          const value = valueAt(
            deflection,
            from + ((to - from) * place) / 1009,
            'left',
          );
          expect(value).toBeLessThanOrEqual(extremes.max.value + 1e-9 * size);
          expect(value).toBeGreaterThanOrEqual(extremes.min.value - 1e-9 * size);
          for (const extreme of [extremes.max, extremes.min])
            expectNear(valueAt(deflection, extreme.x, 'left'), extreme.value, size);
        }
      }),
      runs,
    );
  });

  test('obeys Betti: the loads of one case do on the other case what those do on it', () => {
    fc.assert(
      fc.property(unmoved, (structure) => {
        const [dead, live] = solved(structure);
        const loadsOf = (mark: string): readonly Load[] =>
          structure.loads.filter((load) => load.case === mark);
        // Loads along an inclined support also work on the slide of the beam, which is not reported.
        const slides = structure.supports.some(({ restraints }) =>
          restraints.some((one) => one.kind === 'force' && one.direction[0] === 0.6),
        );
        fc.pre(!slides);
        const [there, size] = workOn(loadsOf('D'), live!);
        const [back, other] = workOn(loadsOf('L'), dead!);
        expectNear(there, back, size + other);
      }),
      runs,
    );
  });

  test('lets no self-equilibrated state do work: compatibility by virtual work', () => {
    fc.assert(
      fc.property(usual, (structure) => {
        // The same loads on other stiffnesses: what the two solutions differ by needs no loads.
        const other = {
          ...structure,
          stiffness: structure.stiffness!.map((one, index) => ({
            ...one,
            EI: one.EI * (index % 2 === 0 ? 3 : 0.2),
          })),
        };
        const states = solved(other);
        for (const [index, result] of solved(structure).entries()) {
          const self = states[index]!;
          const spare = (x: number): number =>
            valueAt(self.moment, x, 'left') - valueAt(result.moment, x, 'left');
          const stations = stationsOf(structure, result.moment, self.moment);
          const [inner, size] = integral(stations, (x) => {
            const bend = valueAt(result.moment, x, 'left') / stiffnessAt(structure, x);
            return spare(x) * (bend + freeCurvatureAt(structure, result.mark, x));
          });
          let [outer, outerSize] = [0, 0];
          for (const [place, { restraints }] of structure.supports.entries()) {
            for (const [which, restraint] of restraints.entries()) {
              const value = result.reactions[place]!.components[which]!;
              const more = self.reactions[place]!.components[which]! - value;
              const foot = (restraint.settlements ?? [])
                .filter((one) => one.case === result.mark)
                .reduce((sum, one) => sum + one.value, 0);
              const spring =
                restraint.stiffness === undefined ? 0 : value / restraint.stiffness;
              outer -= more * (foot + spring);
              outerSize += Math.abs(more) * (Math.abs(foot) + Math.abs(spring));
            }
          }
          expectNear(
            inner,
            outer,
            size + outerSize + (1e-3 * sizeOf(result.moment) ** 2) / 2e7,
          );
        }
      }),
      runs,
    );
  });

  test('superposes, displacement and all', () => {
    const factor = fc.constantFrom(1.2, 1.6, 0.5, -1, 0);
    fc.assert(
      fc.property(usual, factor, factor, (structure, d, l) => {
        const factors = { D: d, L: l } as const;
        const of = (mark: string): number => factors[mark as 'D' | 'L'];
        const cases = solved(structure);
        const sum = superpose(
          cases,
          [
            { case: 'D', factor: d },
            { case: 'L', factor: l },
          ],
          'sum',
        );
        const [direct] = solved({
          ...structure,
          cases: ['sum'],
          loads: structure.loads.map((load) => times(load, of(load.case))),
          curvatures: structure.curvatures!.map((one) => ({
            ...one,
            case: 'sum',
            curvature: one.curvature * of(one.case),
          })),
          supports: structure.supports.map((support) => ({
            ...support,
            restraints: support.restraints.map((restraint) => ({
              ...restraint,
              settlements: (restraint.settlements ?? []).map((one) => ({
                case: 'sum',
                value: one.value * of(one.case),
              })),
            })),
          })),
        });
        const { from, to } = wholeOf(structure);
        for (const share of [0, 0.13, 0.41, 0.77, 1]) {
          const x = from + (to - from) * share;
          const compare = (read: (result: BeamResult) => Piecewise): void => {
            const size = cases.reduce((all, one) => all + 2 * sizeOf(read(one)), 0);
            expectNear(
              valueAt(read(sum), x, 'left'),
              valueAt(read(direct!), x, 'left'),
              size,
            );
          };
          compare((one) => one.moment);
          compare((one) => one.displacement!.deflection);
          compare((one) => one.displacement!.slope);
        }
      }),
      runs,
    );
  });

  test('seen from behind has the mirrored results', () => {
    fc.assert(
      fc.property(usual, fc.integer({ min: 1, max: 1008 }), (structure, place) => {
        const { from, to } = wholeOf(structure);
        const x = from + ((to - from) * place) / 1009;
        const far = to - (x - from);
        const results = solved(structure);
        for (const [index, twin] of solved(mirrored(structure)).entries()) {
          const result = results[index]!;
          const [one, other] = [result.displacement!, twin.displacement!];
          expectNear(
            valueAt(twin.moment, far, 'right'),
            valueAt(result.moment, x, 'left'),
            sizeOf(result.moment),
          );
          expectNear(
            valueAt(other.deflection, far, 'right'),
            valueAt(one.deflection, x, 'left'),
            sizeOf(one.deflection),
          );
          expectNear(
            valueAt(other.slope, far, 'right'),
            -valueAt(one.slope, x, 'left'),
            sizeOf(one.slope),
          );
        }
      }),
      runs,
    );
  });
});

function times(load: Load, factor: number): Load {
  const head = { ...load, case: 'sum' };
  switch (head.kind) {
    case 'point':
      return { ...head, fx: head.fx * factor, fy: head.fy * factor };
    case 'couple':
      return { ...head, m: head.m * factor };
    case 'distributed': {
      const [x1, x2] = [head.x1 * factor, head.x2 * factor];
      return { ...head, x1, x2, y1: head.y1 * factor, y2: head.y2 * factor };
    }
  }
}

function mirrored(structure: BeamStructure): BeamStructure {
  const { from, to } = wholeOf(structure);
  const turn = (x: number): number => to - (x - from);
  const stretch = <T extends { from: number; to: number }>(one: T): T => ({
    ...one,
    from: turn(one.to),
    to: turn(one.from),
  });
  return {
    ...structure,
    points: structure.points.map(({ name, x }) => ({ name, x: turn(x) })).reverse(),
    hinges: structure.hinges.map((hinge) => ({ ...hinge, x: turn(hinge.x) })),
    stiffness: structure.stiffness!.map(stretch).reverse(),
    curvatures: structure.curvatures!.map(stretch),
    supports: structure.supports.map((support) => ({
      ...support,
      x: turn(support.x),
      restraints: support.restraints.map((restraint) => {
        // A rotation turns the other way in the mirror; the reaction keeps its sign and its foot moves so.
        if (restraint.kind === 'moment')
          return {
            ...restraint,
            settlements: (restraint.settlements ?? []).map((one) => ({
              ...one,
              value: -one.value,
            })),
          };
        const [dx, dy] = restraint.direction;
        return { ...restraint, direction: [0 - dx, dy] as const };
      }),
    })),
    loads: structure.loads.map((load): Load => {
      switch (load.kind) {
        case 'point':
          return { ...load, x: turn(load.x), fx: -load.fx };
        case 'couple':
          return { ...load, x: turn(load.x), m: -load.m };
        case 'distributed':
          return {
            ...load,
            from: turn(load.to),
            to: turn(load.from),
            x1: -load.x2,
            x2: -load.x1,
            y1: load.y2,
            y2: load.y1,
          };
      }
    }),
  };
}
