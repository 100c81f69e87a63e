import { expect, test } from 'vitest';
import { closureOf, governingOf, totalsOf } from '../../src/archive/figures-of.ts';
import { resultsOf, workProject } from '../../src/pipeline.ts';
import {
  readResults,
  type BeamResults,
  type Results,
} from '../../src/results/index.ts';
import { issueShed } from '../support/issue.ts';

const reading = readResults(resultsOf(workProject(issueShed(), 'shed')));
if (reading.kind !== 'results') throw new Error(reading.kind);
const one = reading.results;
const beam = one.members[0] as BeamResults;

/** Results of several beams with the ratios given, each judged as its own words say. */
function withRatios(ratios: Readonly<Record<string, readonly number[]>>): Results {
  return {
    ...one,
    members: Object.entries(ratios).map(([mark, list]) => ({
      ...beam,
      mark,
      checks: list.map((ratio) => ({ ...beam.checks[0]!, ratio, passes: ratio <= 1 })),
    })),
  };
}

test('the check farthest beyond its limit governs, the first of equals', () => {
  const results = withRatios({ B1: [0.4, 1.2], B2: [1.2, 0.9], B3: [] });
  expect(governingOf(results)).toEqual({
    member: 'B1',
    check: 'deflection, S, A to B',
    ratio: 1.2,
    passes: false,
  });
  expect(totalsOf(results, 9)).toMatchObject({ members: 3, checks: 4, failing: 2 });
  expect(governingOf(withRatios({ B1: [] }))).toBeNull();
});

test('members without results are counted, and add neither checks nor closure', () => {
  const unsolved = {
    mark: 'B9',
    kind: 'beam',
    error: { code: 'unstable', message: 'x' },
  };
  const results = { ...one, members: [unsolved] };
  expect(totalsOf(results, 2)).toEqual({
    members: 1,
    unsolved: 1,
    sheets: 2,
    checks: 0,
    failing: 0,
    governing: null,
  });
  expect(closureOf(results)).toBeNull();
});

test('closure is the greatest share of its own scale, whatever its sign; a sum without terms leaves nothing over', () => {
  const sum = (
    residual: number,
    scale: number,
    equation: string,
  ): BeamResults['closure'][0] => ({
    result: 'S',
    equation,
    residual: { value: residual, unit: 'kip' },
    scale: { value: scale, unit: 'kip' },
  });
  const closure = [sum(1e-9, 100, 'one'), sum(-4e-10, 2, 'two'), sum(0, 0, 'three')];
  expect(closureOf({ ...one, members: [{ ...beam, closure }] })).toEqual({
    member: 'B1',
    result: 'S',
    equation: 'two',
    share: 2e-10,
  });
});
