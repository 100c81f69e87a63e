import { expect, test } from 'vitest';
import { idealiseStiffness } from '../../../src/project/idealise/idealise-stiffness.ts';
import { soundBeam } from '../../support/folder.ts';

test('a beam of one cross-section has one stiffness from end to end', () => {
  // 200 GPa times 8.36e-5 m4 is 16.72 MN m2.
  expect(
    idealiseStiffness(
      soundBeam({
        points: '{ A: 1 m, B: 7 m, C: 9 m }',
        section: '{ I: 83.6e6 mm^4 }',
        material: '{ E: 200 GPa }',
      }),
    ),
  ).toEqual([{ from: 1, to: 9, EI: expect.closeTo(16.72e6, 2) }]);
});

test('a stepped beam has one stiffness a stretch, from left to right', () => {
  const stretches = idealiseStiffness(
    soundBeam({
      points: '{ A: 0 m, B: 3 m, C: 8 m }',
      sections:
        '[ { from: B, to: C, section: { I: 2e8 mm^4 } }, { from: A, to: B, section: { I: 1e8 mm^4 } } ]',
      material: '{ E: 200 GPa }',
    }),
  );
  expect(stretches).toEqual([
    { from: 0, to: 3, EI: expect.closeTo(20e6, 2) },
    { from: 3, to: 8, EI: expect.closeTo(40e6, 2) },
  ]);
});

test.each([
  ['E is not known', { section: '{ I: 1e8 mm^4 }', material: '{ density: 490 pcf }' }],
  ['no material is given', { section: '{ I: 1e8 mm^4 }' }],
  ['no cross-section is given', { material: '{ E: 200 GPa }' }],
  [
    'I of one stretch is not known',
    {
      sections:
        '[ { from: A, to: B, section: { I: 1e8 mm^4 } }, { from: B, to: C, section: { A: 1 in^2 } } ]',
      material: '{ E: 200 GPa }',
    },
  ],
])('where %s, no stiffness is known anywhere', (_, rest) => {
  expect(idealiseStiffness(soundBeam(rest))).toBeUndefined();
});
