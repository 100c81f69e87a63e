import { describe, expect, test } from 'vitest';
import { findingsOn, soundBeam } from '../../../support/folder.ts';

const supportsOf = (
  supports: string,
  loads: string = '[ { case: T, point: 1 kip, at: B } ]',
): readonly unknown[] => soundBeam({ supports, loads }).supports;

describe('the supports of a beam', () => {
  test('are words', () => {
    expect(supportsOf('{ A: fixed, B: guide, C: roller }')).toMatchObject([
      { point: 'A', type: 'fixed' },
      { point: 'B', type: 'guide' },
      { point: 'C', type: 'roller' },
    ]);
  });

  test('or maps with their particulars', () => {
    expect(
      supportsOf(
        '{ A: { type: pin, rotation: 900 kip ft/rad }, B: { type: spring, stiffness: 40 kip/in, rotation: 5 kip ft/rad }, C: { type: roller, normal: 60 deg } }',
      ),
    ).toMatchObject([
      { point: 'A', type: 'pin', rotation: { text: '900' } },
      {
        point: 'B',
        type: 'spring',
        stiffness: { text: '40' },
        rotation: { text: '5' },
      },
      { point: 'C', type: 'roller', normal: { text: '60' } },
    ]);
  });

  test('stand from left to right, whatever order the file lists them in', () => {
    expect(supportsOf('{ C: roller, A: pin }')).toMatchObject([
      { point: 'A' },
      { point: 'C' },
    ]);
  });

  test('may settle in a case, which may be left out where there is only one', () => {
    expect(
      supportsOf('{ A: pin, C: { type: roller, settlement: 0.5 in, case: T } }'),
    ).toMatchObject([{}, { settlement: { value: { text: '0.5' }, case: 'T' } }]);
    expect(
      supportsOf('{ A: pin, C: { type: roller, settlement: 0.5 in } }'),
    ).toMatchObject([{}, { settlement: { case: 'T' } }]);
  });

  test('keep the place of the whole list and of each', () => {
    const { supportsSpan, supports } = soundBeam({});
    expect(supportsSpan.end).toBeGreaterThan(supportsSpan.start);
    expect(
      supports.every(
        (one) => one.span.start > supportsSpan.start && one.span.end < supportsSpan.end,
      ),
    ).toBe(true);
  });

  test.each([
    [
      '{ A: pin, C: { type: roller, stiffness: 4 kip/in } }',
      'unknown-key 4:40 no key `stiffness` is known here',
    ],
    [
      '{ A: pin, C: { type: spring, stiffness: 0 } }',
      'not-positive 4:51 a force per length greater than 0 belongs here, not `0`',
    ],
    [
      '{ A: pin, C: { type: spring, stiffness: 40 kip } }',
      'unit-misfit 4:51 40 kip is a force, not a force per length',
    ],
    [
      '{ A: pin, C: [ roller ] }',
      'wrong-shape 4:24 one of pin, roller, fixed, guide, spring, or a map that begins with `type` belongs here, not a list',
    ],
  ])('%s is none', (supports, finding) => {
    expect(findingsOn({ supports })).toContain(finding);
  });
});
