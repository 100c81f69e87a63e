import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { narrateDisplacements } from '../../../src/derivation/displacements/narrate-displacements.ts';
import { statementsOf } from '../../../src/derivation/map-statements.ts';
import { reworkable } from '../../../src/derivation/rework.ts';
import { lineToLinear, recheck } from '../../../src/equation/index.ts';
import { bendingBeam, contextsOf } from '../../support/bending-beam.ts';

describe('the displacements of any beam', () => {
  test('can be worked again from the page, or say that they are carried unrounded', () => {
    fc.assert(
      fc.property(bendingBeam, (structure) => {
        for (const context of contextsOf(structure)) {
          const statements = narrateDisplacements(context)
            .flatMap(statementsOf)
            .map((statement) => reworkable(statement));
          for (const statement of statements) {
            const missed = recheck(statement).flatMap(({ agrees, line }) =>
              agrees || statement.lines[line]!.margin !== undefined
                ? []
                : [lineToLinear(statement.lines[line]!)],
            );
            expect(missed).toEqual([]);
          }
        }
      }),
      { numRuns: 14 },
    );
  });
});
