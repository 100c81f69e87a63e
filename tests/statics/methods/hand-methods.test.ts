import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { solveBeam, type BeamStructure } from '../../../src/statics/index.ts';
import { forceMethod } from '../../../src/statics/methods/force-method.ts';
import { slopeDeflection } from '../../../src/statics/methods/slope-deflection.ts';
import { redundantBeam } from '../../support/random-redundant.ts';

/** The worst difference of components as a share of their scale, forces and moments apart; and what is allowed. */
function apart(
  structure: BeamStructure,
  components: readonly (readonly number[])[],
): { off: number; allowed: number } {
  const outcome = solveBeam(structure);
  if (outcome.kind !== 'beam') throw new Error(JSON.stringify(outcome.unsolved));
  const result = outcome.results[0]!;
  let off = 0;
  for (const kind of ['force', 'moment'] as const) {
    const pairs = structure.supports.flatMap(({ restraints }, s) =>
      restraints.flatMap((r, i) =>
        r.kind === kind
          ? [[components[s]![i]!, result.reactions[s]!.components[i]!] as const]
          : [],
      ),
    );
    const scale =
      kind === 'force'
        ? Math.max(...pairs.map(([, b]) => Math.abs(b)), 1)
        : Math.max(
            ...pairs.map(([, b]) => Math.abs(b)),
            Math.abs(result.extremes.moment.max.value),
            Math.abs(result.extremes.moment.min.value),
            1,
          );
    for (const [a, b] of pairs) off = Math.max(off, Math.abs(a - b) / scale);
  }
  return { off, allowed: result.agreement?.allowed ?? 1e-9 };
}

describe('hand methods against the solver', () => {
  test('slope-deflection finds the reactions of any beam', () => {
    fc.assert(
      fc.property(redundantBeam(), (structure) => {
        const { off, allowed } = apart(
          structure,
          slopeDeflection(structure, 'T').components,
        );
        expect(off).toBeLessThanOrEqual(allowed);
      }),
      { numRuns: 150 },
    );
  }, 100000);

  test('the force method finds the reactions of any beam of low degree', () => {
    fc.assert(
      fc.property(redundantBeam({ degrees: [1, 3] }), (structure) => {
        const { off, allowed } = apart(
          structure,
          forceMethod(structure, 'T').components,
        );
        expect(off).toBeLessThanOrEqual(allowed);
      }),
      { numRuns: 100 },
    );
  }, 100000);
});
