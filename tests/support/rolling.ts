import fc from 'fast-check';
import {
  solverOf,
  valueAt,
  type BeamSolver,
  type BeamStructure,
  type Piecewise,
  type Train,
  type TrainPlace,
} from '../../src/statics/index.ts';

/** A beam made ready that is known to be solvable. */
export function solverFor(structure: BeamStructure): BeamSolver {
  const outcome = solverOf(structure);
  if (outcome.kind === 'unsolved') throw new Error(outcome.unsolved.reason);
  return outcome;
}

/** A train that looks like one: sizes of axles, and each spacing as one number or two bounds. */
export function train(
  axles: readonly number[],
  spacings: readonly (number | readonly [number, number])[],
  of: Partial<Train> = {},
): Train {
  return {
    id: 'T',
    case: 'L',
    axles,
    spacings: spacings.map((spacing) =>
      typeof spacing === 'number'
        ? { least: spacing, greatest: spacing }
        : { least: spacing[0], greatest: spacing[1] },
    ),
    travel: 'both',
    relieving: 'kept',
    ...of,
  };
}

/** Random trains for a beam of a length: up to four axles, one or two spacings of them variable. */
export function randomTrain(length: number): fc.Arbitrary<Train> {
  const spacing = fc
    .tuple(fc.integer({ min: 1, max: 40 }), fc.constantFrom(0, 0, 0, 7, 20))
    .map(([n, more]) => [(n * length) / 80, ((n + more) * length) / 80] as const);
  return fc
    .array(fc.tuple(fc.integer({ min: 1, max: 9 }), spacing), {
      minLength: 1,
      maxLength: 4,
    })
    .chain((parts) =>
      fc
        .record({
          travel: fc.constantFrom('right', 'left', 'both' as const),
          relieving: fc.constantFrom('kept', 'left out' as const),
          lane: fc.constantFrom(0, 0, 0.3),
        })
        .map((of) =>
          train(
            parts.map(([size]) => size),
            parts.slice(1).map(([, gap]) => gap),
            of,
          ),
        ),
    );
}

/** Σ P η of a train with its front axle at a station and its spacings at shares of their bounds, lane load left out. */
export function sumAtPlace(
  line: Piecewise,
  { axles, spacings, relieving }: Train,
  at: {
    readonly front: number;
    readonly direction: TrainPlace['direction'];
    readonly shares: readonly number[];
    readonly sense: 'max' | 'min';
  },
): number {
  const [start, end] = [line.pieces[0]!.start, line.pieces.at(-1)!.end];
  let x = at.front;
  let sum = 0;
  for (const [index, axle] of axles.entries()) {
    if (x >= start && x <= end) {
      const part = axle * valueAt(line, x, 'left');
      const relieves = at.sense === 'max' ? part < 0 : part > 0;
      if (relieving === 'kept' || !relieves) sum += part;
    }
    const { least, greatest } = spacings[index] ?? { least: 0, greatest: 0 };
    const gap = least + (at.shares[index] ?? 0) * (greatest - least);
    x += at.direction === 'right' ? -gap : gap;
  }
  return sum;
}
