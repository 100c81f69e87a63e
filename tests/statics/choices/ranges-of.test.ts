import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  breakpointsOf,
  sizeOf,
  solveBeam,
  valueAt,
  type Arrangement,
  type BeamResult,
  type BeamStructure,
  type Piecewise,
  type RangeResult,
} from '../../../src/statics/index.ts';
import { beam, down, fixed, pin, roller, spread } from '../../support/beam.ts';
import { everyArrangement, patterned } from '../../support/patterned.ts';
import { determinateBeam } from '../../support/random-beam.ts';
import { redundantBeam } from '../../support/random-redundant.ts';

function solved(structure: BeamStructure): {
  results: readonly BeamResult[];
  range: (mark: string) => RangeResult;
} {
  const outcome = solveBeam(structure);
  if (outcome.kind === 'unsolved') throw new Error(outcome.unsolved.reason);
  const { results, ranges } = outcome;
  return { results, range: (mark) => ranges.find((range) => range.mark === mark)! };
}

/** The case with exactly the options of an arrangement standing. */
function stood(
  structure: BeamStructure,
  mark: string,
  arrangement: Arrangement,
): BeamResult {
  const { choices = [], ...rest } = structure;
  const loads = arrangement.choices.flatMap(
    ({ id, option }) =>
      choices
        .find((choice) => choice.id === id)!
        .options.find(({ name }) => name === option)!.loads,
  );
  const outcome = solveBeam({ ...rest, loads: [...rest.loads, ...loads] });
  if (outcome.kind === 'unsolved') throw new Error(outcome.unsolved.reason);
  return outcome.results.find((result) => result.mark === mark)!;
}

/** Holds a range against every arrangement, at every breakpoint from both sides and between them. */
function holdAgainstAll(
  structure: BeamStructure,
  mark: string,
  tolerance: number = 1e-9,
): void {
  const range = solved(structure).range(mark);
  const all = everyArrangement(structure, mark);
  for (const what of ['shear', 'moment'] as const) {
    const curves = all.map((result) => result[what]);
    const scale = Math.max(1e-9, ...curves.map(sizeOf));
    const breaks = breakpointsOf(range[what].max);
    const between = breaks.slice(1).map((x, index) => (x + breaks[index]!) / 2);
    for (const x of [...breaks, ...between]) {
      for (const side of ['left', 'right'] as const) {
        const values = curves.map((f) => valueAt(f, x, side));
        expect(
          Math.abs(valueAt(range[what].max, x, side) - Math.max(...values)) / scale,
        ).toBeLessThan(tolerance);
        expect(
          Math.abs(valueAt(range[what].min, x, side) - Math.min(...values)) / scale,
        ).toBeLessThan(tolerance);
      }
    }
    for (const sense of ['max', 'min'] as const) {
      const extreme = range.extremes[what][sense];
      const best = Math.max(
        ...all.map(
          ({ extremes }) => (sense === 'max' ? 1 : -1) * extremes[what][sense].value,
        ),
      );
      expect(
        Math.abs((sense === 'max' ? 1 : -1) * extreme.value - best) / scale,
      ).toBeLessThan(tolerance);
      const there = stood(structure, mark, extreme.arrangement);
      expect(
        Math.abs(there.extremes[what][sense].value - extreme.value) / scale,
      ).toBeLessThan(tolerance);
    }
  }
  for (const [index, reaction] of range.reactions.entries()) {
    for (const part of ['x', 'y', 'moment'] as const) {
      const values = all.map((result) => result.reactions[index]![part]);
      const here = reaction[part];
      if (here === null) expect(values.every((value) => value === null)).toBe(true);
      else {
        const numbers = values.map((value) => value!);
        const scale = Math.max(1e-9, ...numbers.map(Math.abs));
        expect(Math.abs(here.max.value - Math.max(...numbers)) / scale).toBeLessThan(
          tolerance,
        );
        expect(Math.abs(here.min.value - Math.min(...numbers)) / scale).toBeLessThan(
          tolerance,
        );
        const there = stood(structure, mark, here.min.arrangement).reactions[index]![
          part
        ]!;
        expect(Math.abs(there - here.min.value) / scale).toBeLessThan(tolerance);
      }
    }
  }
}

/** A beam with overhangs on both sides of its supports, hinged so that statics solves it. */
const gerber = beam({
  points: { A: 0, B: 2, C: 8, H: 10, D: 15, E: 17 },
  supports: { B: pin, C: roller(), D: roller() },
  hinges: ['H'],
  loads: [
    spread(3, 'A', 'E'),
    down(5, 4),
    down(2, 'A'),
    down(4, 12),
    spread(1, 'A', 'E', { case: 'D' }),
  ],
});

describe('a case with patterned spans', () => {
  test('has the greatest and the least of all arrangements, each with an arrangement that gives it', () => {
    holdAgainstAll(patterned(gerber, 'all'), 'all');
  });

  test('keeps as its state the one with every span loaded, and leaves other cases without a range', () => {
    const { results, range } = solved(patterned(gerber, 'all'));
    const plain = solveBeam(gerber);
    if (plain.kind === 'unsolved') throw new Error('unsolved');
    const [state, whole] = [results, plain.results].map((list) =>
      list.find(({ mark }) => mark === 'all')!,
    );
    for (const what of ['max', 'min'] as const)
      expect(state!.extremes.moment[what].value).toBeCloseTo(
        whole!.extremes.moment[what].value,
        9,
      );
    expect(state!.reactions.map(({ y }) => y)).toEqual(
      whole!.reactions.map(({ y }) => expect.closeTo(y!, 9) as number),
    );
    expect(range('D')).toBeUndefined();
  });

  test('loads the overhang alone for the least moment over its support, and leaves it empty for the greatest in the span', () => {
    const simple = patterned(
      beam({
        points: { A: 0, B: 10, C: 14 },
        supports: { A: pin, B: roller() },
        loads: [spread(2, 'A', 'C')],
      }),
      'all',
    );
    const { extremes, reactions } = solved(simple).range('all');
    // By hand: −w c²/2 = −16 whatever the span carries; w L²/8 = 25 in the middle with an empty overhang.
    expect(extremes.moment.min).toMatchObject({
      value: expect.closeTo(-16, 12) as number,
      x: 10,
    });
    expect(extremes.moment.max.value).toBeCloseTo(25, 12);
    expect(extremes.moment.max.x).toBeCloseTo(5, 12);
    expect(extremes.moment.max.arrangement.choices).toEqual([
      { id: 'all:1', option: 'on' },
      { id: 'all:2', option: 'off' },
    ]);
    // Reaction at A: 10 with the span alone, −8·2/10 = −1.6 with the overhang alone.
    expect(reactions[0]!.y!.max.value).toBeCloseTo(10, 12);
    expect(reactions[0]!.y!.min.value).toBeCloseTo(-1.6, 12);
    expect(reactions[0]!.y!.min.arrangement.choices).toEqual([
      { id: 'all:1', option: 'off' },
      { id: 'all:2', option: 'on' },
    ]);
  });

  test('on any beam that statics solves comes to what trying every arrangement finds', () => {
    fc.assert(
      fc.property(determinateBeam, (structure) => {
        const choices = patterned(structure, 'L');
        fc.pre(
          (choices.choices?.length ?? 0) > 0 && (choices.choices?.length ?? 0) <= 6,
        );
        holdAgainstAll(choices, 'L');
      }),
      { numRuns: 20 },
    );
  });

  test('on indeterminate beams with springs, steps, settlements and warmth comes to the same', () => {
    fc.assert(
      fc.property(redundantBeam({ degrees: [1, 4] }), (structure) => {
        const choices = patterned(structure, 'T');
        const count = choices.choices?.length ?? 0;
        fc.pre(count > 0 && count <= 6);
        holdAgainstAll(choices, 'T', 1e-8);
      }),
      { numRuns: 20 },
    );
  });

  test('on six equal spans finds the 64 arrangements of them', () => {
    const six = beam({
      points: { A: 0, B: 5, C: 10, D: 15, E: 20, F: 25, G: 30 },
      supports: {
        A: pin,
        B: roller(),
        C: roller(),
        D: roller(),
        E: roller(),
        F: roller(),
        G: roller(),
      },
      loads: [spread(20, 'A', 'G'), down(8, 12)],
    });
    const structure = patterned(six, 'all');
    expect(everyArrangement(structure, 'all')).toHaveLength(64);
    holdAgainstAll(structure, 'all');
  });

  test('holds between its greatest and its least every span loaded and none', () => {
    fc.assert(
      fc.property(determinateBeam, (structure) => {
        const choices = patterned(structure, 'L');
        fc.pre((choices.choices?.length ?? 0) > 0);
        const { results, range } = solved(choices);
        const { shear, moment } = range('L');
        const state = results.find(({ mark }) => mark === 'L')!;
        const within = (
          curves: { max: Piecewise; min: Piecewise },
          f: Piecewise,
        ): void => {
          const scale = Math.max(sizeOf(curves.max), sizeOf(curves.min), 1e-9);
          for (const x of breakpointsOf(curves.max))
            for (const side of ['left', 'right'] as const) {
              const [least, most] = [
                valueAt(curves.min, x, side),
                valueAt(curves.max, x, side),
              ];
              const here = valueAt(f, x, side);
              expect(here - most).toBeLessThanOrEqual(1e-9 * scale);
              expect(least - here).toBeLessThanOrEqual(1e-9 * scale);
              expect(least).toBeLessThanOrEqual(1e-9 * scale);
              expect(most).toBeGreaterThanOrEqual(-1e-9 * scale);
            }
        };
        within(shear, state.shear);
        within(moment, state.moment);
      }),
      { numRuns: 20 },
    );
  });
});

describe('choices of carried reactions', () => {
  const carried: BeamStructure = {
    ...beam({
      points: { A: 0, B: 4, C: 10 },
      supports: { A: pin, C: roller() },
      loads: [down(10, 7)],
    }),
    choices: [
      {
        id: 'B2.C:all',
        case: 'all',
        options: [
          {
            name: 'greatest',
            loads: [{ id: 'c1', case: 'all', kind: 'point', x: 4, fx: 0, fy: -20 }],
          },
          {
            name: 'least',
            loads: [{ id: 'c2', case: 'all', kind: 'point', x: 4, fx: 0, fy: 5 }],
          },
        ],
      },
    ],
  };

  test('stand beside the fixed loads, at their greatest in the state', () => {
    const { results, range } = solved(carried);
    // A carries 0.3 of the 10 at 7 and 0.6 of what stands at 4.
    expect(results[0]!.reactions[0]!.y).toBeCloseTo(3 + 12, 12);
    expect(range('all').reactions[0]!.y!.max.value).toBeCloseTo(15, 12);
    expect(range('all').reactions[0]!.y!.min.value).toBeCloseTo(0, 12);
    holdAgainstAll(carried, 'all');
  });
});

describe('choices that no reader of definitions would build', () => {
  const one = { id: 'a', case: 'all', options: [{ name: 'on', loads: [] }] };
  const base = beam({ points: { A: 0, B: 4 }, supports: { A: fixed } });

  test.each([
    ['two of one name', [one, one], 'two choices are called a'],
    ['one of a case that is not listed', [{ ...one, case: 'W' }], 'of no case listed'],
    ['one without options', [{ ...one, options: [] }], 'has no option'],
    [
      'two options of one name',
      [{ ...one, options: [...one.options, ...one.options] }],
      'two options of one name',
    ],
  ])('%s are refused', (_, choices, message) => {
    expect(() => solveBeam({ ...base, choices })).toThrow(message);
  });
});
