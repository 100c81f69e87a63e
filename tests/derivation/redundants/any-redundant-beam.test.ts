import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { statementsOf } from '../../../src/derivation/map-statements.ts';
import { handDifference } from '../../../src/derivation/sense-checks/hand-agrees.ts';
import { lineToLinear, recheck } from '../../../src/equation/index.ts';
import { claimed, derivedFolder } from '../../support/derived.ts';
import { redundantBeam } from '../../support/random-redundant.ts';
import { redundantFolder } from '../../support/redundant-file.ts';

describe('the sheet of any indeterminate beam', { timeout: 300_000 }, () => {
  test('is derived, its hand method agrees with the figures reported, and every line can be worked again', () => {
    fc.assert(
      fc.property(redundantBeam(), (structure) => {
        const { project, works, derivations } = derivedFolder(
          redundantFolder(structure),
        );
        for (const work of works) {
          for (const result of work.solution.results) {
            const apart = handDifference(claimed(project, work, result));
            expect(apart!.difference).toBeLessThanOrEqual(apart!.allowed);
          }
        }
        const [derivation] = derivations;
        const redundants = derivation!.sections.filter(
          ({ kind }) => kind === 'redundants',
        );
        expect(redundants).toHaveLength(1);
        for (const statement of redundants.flatMap(({ steps }) =>
          steps.flatMap(statementsOf),
        )) {
          for (const { agrees, line } of recheck(statement)) {
            const said = statement.lines[line]!;
            expect(
              agrees || said.margin === 'carried unrounded',
              lineToLinear(said),
            ).toBe(true);
          }
        }
      }),
      { numRuns: 14 },
    );
  });
});
