import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  sizeOf,
  solveBeam,
  valueAt,
  type BeamResult,
  type BeamStructure,
  type Piecewise,
} from '../../src/statics/index.ts';
import { redundantBeam } from '../support/random-redundant.ts';

const solved = (structure: BeamStructure): BeamResult => {
  const outcome = solveBeam(structure);
  if (outcome.kind !== 'beam') throw new Error(outcome.unsolved.reason);
  return outcome.results[0]!;
};

const ends = ({ points }: BeamStructure): readonly [number, number] => [
  points[0]!.x,
  points.at(-1)!.x,
];

/** Stations between any two breaks of a beam: nowhere near a jump. */
function stations(structure: BeamStructure): readonly number[] {
  const [from, to] = ends(structure);
  return [0.0137, 0.2113, 0.3871, 0.5233, 0.7019, 0.9377].map(
    (share) => from + share * (to - from),
  );
}

function expectSame(
  f: Piecewise,
  g: { readonly at: (x: number) => number; readonly size: number },
  { xs, share }: { readonly xs: readonly number[]; readonly share: number },
): void {
  const scale = Math.max(sizeOf(f), g.size);
  for (const x of xs)
    expect(Math.abs(valueAt(f, x, 'left') - g.at(x))).toBeLessThanOrEqual(
      share * scale,
    );
}

/** The two ways of solving agree to this; what is compared here is judged by the same. */
const share = 1e-8;

describe('the elastic curve of any beam', () => {
  test('under loads grows as E I falls, forces staying as they are: springs softened alike, feet at rest', () => {
    fc.assert(
      fc.property(
        redundantBeam({ degrees: [0, 4] }),
        fc.double({ min: 0.05, max: 20, noNaN: true }),
        (given, factor) => {
          const still: BeamStructure = {
            ...given,
            curvatures: [],
            supports: given.supports.map((support) => ({
              ...support,
              restraints: support.restraints.map((restraint) => ({
                ...restraint,
                settlements: [],
              })),
            })),
          };
          const scaled: BeamStructure = {
            ...still,
            stiffness: still.stiffness!.map((one) => ({ ...one, EI: one.EI * factor })),
            supports: still.supports.map((support) => ({
              ...support,
              restraints: support.restraints.map((restraint) =>
                restraint.stiffness === undefined
                  ? restraint
                  : { ...restraint, stiffness: restraint.stiffness * factor },
              ),
            })),
          };
          const [one, other] = [solved(still), solved(scaled)];
          const xs = stations(given);
          const by = (f: Piecewise, times: number) => ({
            at: (x: number) => valueAt(f, x, 'left') * times,
            size: sizeOf(f) * times,
          });
          expectSame(other.moment, by(one.moment, 1), { xs, share });
          const { slope, deflection } = one.displacement!;
          expectSame(other.displacement!.slope, by(slope, 1 / factor), { xs, share });
          expectSame(other.displacement!.deflection, by(deflection, 1 / factor), {
            xs,
            share,
          });
        },
      ),
      { numRuns: 60 },
    );
  });
});
