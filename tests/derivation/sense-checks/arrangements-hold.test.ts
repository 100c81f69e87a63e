import { describe, expect, test } from 'vitest';
import { memberContext } from '../../../src/derivation/member-context.ts';
import { arrangementsHold } from '../../../src/derivation/sense-checks/arrangements-hold.ts';
import { runRangeChecks } from '../../../src/derivation/sense-checks/run-range-checks.ts';
import type { RangeResult } from '../../../src/statics/index.ts';
import { combine } from '../../../src/statics/index.ts';
import { derivedBeam, siProject } from '../../support/derived.ts';

const { project, work } = derivedBeam(
  {
    points: '{ A: 0 m, B: 10 m, C: 14 m }',
    supports: '{ A: pin, B: roller }',
    loads: '[ { uniform: { D: 1 kN/m, L: 2 kN/m } }, { case: L, point: 3 kN, at: C } ]',
  },
  {
    'project.yaml': siProject,
    'loads.yaml':
      'cases: { D: { kind: dead }, L: { kind: live, pattern: true } }\ncombinations: [ { mark: D - 0.5L, factors: { D: 1, L: -0.5 } } ]\n',
  },
);
const context = memberContext(project, work);
const range = work.ranges.get('L')!;
const fails = (claim: RangeResult): readonly string[] =>
  arrangementsHold(context, claim).flatMap(({ holds, finding }) =>
    holds ? [] : [finding],
  );

describe('the bounds of a patterned case', () => {
  test('hold as they were found', () => {
    expect(fails(range)).toEqual([]);
    expect(
      runRangeChecks(context, work)
        .flatMap(({ checks }) => checks)
        .every(({ holds }) => holds),
    ).toBe(true);
  });

  test('are caught with an extreme that its arrangement does not give', () => {
    const { max } = range.extremes.moment;
    const moment = {
      ...range.extremes.moment,
      max: { ...max, value: max.value * 1.001 },
    };
    expect(fails({ ...range, extremes: { ...range.extremes, moment } })[0]).toContain(
      'its arrangement solved as one loading gives',
    );
  });

  test('are caught with an arrangement that gives another value', () => {
    const { max, min } = range.extremes.moment;
    const moment = { max: { ...max, arrangement: min.arrangement }, min };
    expect(fails({ ...range, extremes: { ...range.extremes, moment } })).toHaveLength(
      1,
    );
  });

  test('are caught with a reaction that is no bound', () => {
    const reactions = range.reactions.map((one) =>
      one.point === 'A'
        ? { ...one, y: { max: one.y!.max, min: { ...one.y!.max } } }
        : one,
    );
    expect(fails({ ...range, reactions })).toEqual([
      expect.stringContaining('the least reaction at A') as string,
    ]);
  });

  test('are caught with a curve that leaves a span out', () => {
    const shear = {
      ...range.shear,
      min: combine([{ factor: 0.9, f: range.shear.min }]),
    };
    expect(fails({ ...range, shear }).length).toBeGreaterThan(0);
  });
});

describe('the bounds of a combination', () => {
  test('are caught where the least was not taken under a negative factor', () => {
    const right = work.ranges.get('D - 0.5L')!;
    const wrong = {
      ...right,
      moment: { max: right.moment.min, min: right.moment.max },
    };
    const checks = (claim: RangeResult): readonly string[] =>
      runRangeChecks(context, {
        ...work,
        ranges: new Map([...work.ranges, ['D - 0.5L', claim]]),
      })
        .filter(({ mark }) => mark === 'D - 0.5L')
        .flatMap((one) =>
          one.checks.flatMap(({ holds, finding }) => (holds ? [] : [finding])),
        );
    expect(checks(right)).toEqual([]);
    expect(checks(wrong)[0]).toMatch(
      /the greatest moment at .* but its cases add up to/,
    );
  });
});
