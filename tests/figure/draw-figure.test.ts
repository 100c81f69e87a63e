import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { layOutFigure } from '../../src/figure/index.ts';
import { faultsOf } from '../support/figure-checks.ts';
import { figureSetting } from '../support/figure-preview.ts';
import { figureSamples } from '../support/figure-samples.ts';
import { somePicture } from '../support/random-pictures.ts';

describe('layOutFigure', () => {
  for (const [name, spec] of Object.entries(figureSamples)) {
    test(`the sample ${name} has no label over anything and nothing outside`, () => {
      expect(faultsOf(layOutFigure(spec, figureSetting))).toEqual([]);
    });
  }

  test('no picture whatever has a label over anything or anything outside', () => {
    fc.assert(
      fc.property(
        somePicture,
        fc.constantFrom('member' as const, 'free-body' as const),
        (picture, kind) => {
          const spec =
            kind === 'member'
              ? { kind, picture, alternate: '' }
              : { kind, pictures: [picture], alternate: '' };
          expect(faultsOf(layOutFigure(spec, figureSetting))).toEqual([]);
        },
      ),
      { numRuns: 60 },
    );
  });
});
