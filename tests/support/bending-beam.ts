import fc from 'fast-check';
import type { CaseContext } from '../../src/derivation/case-context.ts';
import { symbolsOf } from '../../src/derivation/symbols.ts';
import {
  solveBeam,
  tidyStructure,
  type BeamResult,
  type BeamStructure,
} from '../../src/statics/index.ts';
import { determinateBeam } from './random-beam.ts';

/** What the numbers of displacements need of a context, for a structure that stands in no file. */
export function bareContext(given: BeamStructure, result: BeamResult): CaseContext {
  const structure = tidyStructure(given);
  return {
    structure,
    result,
    mark: result.mark,
    symbols: symbolsOf(structure),
    printing: { system: 'si', figures: 4 },
    defined: new Map(),
    definition: {
      mark: 'B1',
      sections: [],
      temperatures: [],
      supports: [],
      hinges: [],
    },
    conventions: {},
  } as unknown as CaseContext;
}

/** The contexts of every case of a structure that has a displacement. */
export function contextsOf(structure: BeamStructure): readonly CaseContext[] {
  const outcome = solveBeam(structure);
  if (outcome.kind === 'unsolved')
    throw new Error(`unsolved: ${JSON.stringify(outcome.unsolved)}`);
  return outcome.results.map((result) => bareContext(structure, result));
}

/**
 * Random beams that bend: determinate ones with stiffness in one to three stretches, and on some of
 * them one or two rollers more, a settlement and a free curvature in case D.
 */
export const bendingBeam: fc.Arbitrary<BeamStructure> = fc
  .record({
    beam: determinateBeam,
    steps: fc.array(fc.integer({ min: 1, max: 96 }), { maxLength: 2 }),
    stiffness: fc.array(fc.constantFrom(1e6, 2.5e6, 4e7, 2e7), {
      minLength: 3,
      maxLength: 3,
    }),
    extra: fc.array(fc.nat(), { maxLength: 2 }),
    sinks: fc.option(fc.constantFrom(0.004, -0.002, 0.03)),
    bow: fc.option(
      fc.tuple(fc.integer({ min: 0, max: 60 }), fc.constantFrom(1e-3, -4e-4)),
    ),
  })
  .map(({ beam, steps, stiffness, extra, sinks, bow }) => {
    const start = beam.points[0]!.x;
    const end = beam.points.at(-1)!.x;
    const at = (share: number): number => start + ((end - start) * share) / 97;
    const cuts = [start, ...[...new Set(steps)].sort((a, b) => a - b).map(at), end];
    return withRollers(
      {
        ...beam,
        stiffness: cuts
          .slice(1)
          .map((to, i) => ({ from: cuts[i]!, to, EI: stiffness[i]! })),
        ...(bow === null
          ? {}
          : {
              curvatures: [
                {
                  id: 'T',
                  case: 'D',
                  from: at(bow[0]),
                  to: at(bow[0] + 30),
                  curvature: bow[1],
                },
              ],
            }),
      },
      extra,
      sinks ?? 0,
    );
  });

function withRollers(
  beam: BeamStructure,
  extra: readonly number[],
  sinks: number,
): BeamStructure {
  const free = beam.points.filter(
    ({ x }) =>
      !beam.supports.some((support) => support.x === x) &&
      !beam.hinges.some((hinge) => hinge.x === x),
  );
  const chosen = new Set(
    extra.flatMap((n) => free[n % Math.max(1, free.length)] ?? []),
  );
  const more = [...chosen].map(({ name, x }) => ({
    point: name,
    x,
    type: 'roller' as const,
    restraints: [{ kind: 'force' as const, direction: [0, 1] as const }],
  }));
  const supports = [...beam.supports, ...more].sort((a, b) => a.x - b.x);
  return {
    ...beam,
    supports: supports.map((support, index) =>
      index === supports.length - 1 && sinks !== 0 ? settled(support, sinks) : support,
    ),
  };
}

function settled(
  support: BeamStructure['supports'][number],
  sinks: number,
): BeamStructure['supports'][number] {
  return {
    ...support,
    restraints: support.restraints.map((restraint) =>
      restraint.kind === 'force' && restraint.direction[1] !== 0
        ? {
            ...restraint,
            settlements: [{ case: 'D', value: sinks * restraint.direction[1] }],
          }
        : restraint,
    ),
  };
}
