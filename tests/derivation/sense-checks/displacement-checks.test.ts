import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { displacementChecks } from '../../../src/derivation/sense-checks/displacement-checks.ts';
import type { CaseContext } from '../../../src/derivation/case-context.ts';
import type { Piecewise } from '../../../src/statics/index.ts';
import { bendingBeam, contextsOf } from '../../support/bending-beam.ts';

describe('the checks of the elastic curve', () => {
  test('hold for any beam that the solver solves', () => {
    fc.assert(
      fc.property(bendingBeam, (structure) => {
        for (const context of contextsOf(structure)) {
          const wrong = displacementChecks(context).filter(({ holds }) => !holds);
          expect(wrong.map(({ finding }) => finding)).toEqual([]);
        }
      }),
      { numRuns: 60 },
    );
  });
});
