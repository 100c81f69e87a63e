import { describe, expect, test } from 'vitest';
import { workMembers } from '../../src/derivation/index.ts';
import type { Diagnostic } from '../../src/diagnostics/index.ts';
import { beamYaml, soundFolder } from '../support/folder.ts';

/** The diagnostic that keeps a beam from results, if any. */
function faultOf(rest: Readonly<Record<string, string>>): Diagnostic | undefined {
  const project = soundFolder({
    'project.yaml': 'project: { title: Weir }\nunits: si\n',
    'members/b1.yaml': beamYaml({
      points: '{ A: 0 m, B: 4 m, C: 9 m }',
      supports: '{ A: pin, B: roller, C: roller }',
      loads: '[ { case: G, uniform: 2 kN/m } ]',
      ...rest,
    }),
  });
  const [one] = workMembers(project, []);
  return one?.kind === 'unworked' ? one.diagnostic : undefined;
}

const known = { section: '{ I: 1e8 mm^4 }', material: '{ E: 200 GPa }' };
const warm =
  '[ { case: G, uniform: 2 kN/m }, { case: T, temperature: { difference: 20 K, depth: 400 mm, expansion: 12e-6 1/K } } ]';
const settled = '{ A: pin, B: { type: roller, settlement: 5 mm, case: Z }, C: roller }';
const sprung = '{ A: pin, B: { type: spring, stiffness: 8 kN/mm }, C: roller }';

describe('an indeterminate beam without E and I', () => {
  test.each([
    ['that is warmed', { loads: warm }],
    ['of which a support settles', { supports: settled }],
    ['on a spring', { supports: sprung }],
  ])('%s has no results until they are known', (_, rest) => {
    expect(faultOf(rest)).toMatchObject({
      severity: 'error',
      code: 'needs-stiffness',
      message: expect.stringContaining('indeterminate to degree 1'),
      hints: ['give `section` with I and `material` with E'],
      member: 'B1',
    });
    expect(faultOf({ ...rest, ...known })).toBeUndefined();
  });

  test('that is loaded and no more shares its forces by one stiffness all along', () => {
    expect(faultOf({})).toBeUndefined();
  });
});

describe('a beam that statics can solve', () => {
  test.each([
    ['warmth', { loads: warm, supports: '{ A: pin, C: roller }' }],
    ['a settlement', { supports: settled.replace(', C: roller', '') }],
    ['a spring', { supports: sprung.replace(', C: roller', '') }],
  ])('needs neither E nor I for %s', (_, rest) => {
    expect(faultOf(rest)).toBeUndefined();
  });
});
