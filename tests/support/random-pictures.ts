import fc from 'fast-check';
import type {
  BeamPicture,
  Label,
  PictureLoad,
  PictureReaction,
  PictureSupport,
} from '../../src/figure/index.ts';
import { figure, words } from './pictures.ts';

const station = (end: number): fc.Arbitrary<number> =>
  fc.integer({ min: 0, max: 1000 }).map((part) => (part * end) / 1000);
const size = fc.integer({ min: 1, max: 400 }).map((tenths) => tenths / 10);
const someLabel: fc.Arbitrary<Label> = fc.oneof(
  size.map((count) => figure(`${count} kip`)),
  fc
    .integer({ min: 1, max: 30 })
    .map((length) => words('roof beam and parapet, given'.slice(0, length))),
);
const turn = fc.constantFrom('clockwise' as const, 'counterclockwise' as const);
const degrees = fc.oneof(
  fc.constantFrom(0, 90, 180, 270, 270, 270),
  fc.integer({ min: 0, max: 359 }),
);
const someCase = fc.constantFrom('D', 'L', 'W');

function someLoad(end: number, withCases: boolean): fc.Arbitrary<PictureLoad> {
  const tag = withCases ? someCase.map((name) => ({ case: name })) : fc.constant({});
  const force = fc.record({
    kind: fc.constant('force' as const),
    x: station(end),
    degrees,
    size,
    label: someLabel,
  });
  const couple = fc.record({
    kind: fc.constant('couple' as const),
    x: station(end),
    turn,
    size,
    label: someLabel,
  });
  const intensity = fc.oneof(
    fc.constant(0),
    size,
    size.map((count) => -count),
  );
  const distributed = fc
    .tuple(station(end), station(end), degrees, intensity, size, someLabel, someLabel)
    .filter(([a, b]) => Math.abs(a - b) > end / 500)
    .map(([a, b, turned, first, last, left, right]): PictureLoad => ({
      kind: 'distributed',
      from: Math.min(a, b),
      to: Math.max(a, b),
      degrees: turned,
      sizes: [first, last],
      labels: [first === 0 ? undefined : left, right],
    }));
  const load: fc.Arbitrary<PictureLoad> = fc.oneof(
    { weight: 4, arbitrary: force },
    { weight: 1, arbitrary: couple },
    { weight: 2, arbitrary: distributed },
  );
  return fc.tuple(load, tag).map(([of, name]): PictureLoad => ({ ...of, ...name }));
}

function someReaction(end: number): fc.Arbitrary<PictureReaction> {
  return fc.oneof(
    fc.record({
      kind: fc.constant('force' as const),
      x: station(end),
      degrees: fc.constantFrom(0, 60, 90, 180, 270),
      label: someLabel,
    }),
    fc.record({
      kind: fc.constant('moment' as const),
      x: station(end),
      turn,
      label: someLabel,
    }),
  );
}

function someSupport(end: number): fc.Arbitrary<PictureSupport> {
  return fc.oneof(
    fc.record({
      x: fc.oneof(station(end), fc.constantFrom(0, end)),
      type: fc.constantFrom(
        'pin' as const,
        'roller' as const,
        'fixed' as const,
        'guide' as const,
        'spring' as const,
        'pin-with-rotation-spring' as const,
      ),
    }),
    fc.record({
      x: station(end),
      type: fc.constant('roller' as const),
      normal: fc.integer({ min: 0, max: 359 }),
    }),
  );
}

/** Pictures of any beam with anything on it, many loads among them. */
export const somePicture: fc.Arbitrary<BeamPicture> = fc
  .tuple(fc.double({ min: 0.5, max: 90, noNaN: true }), fc.boolean())
  .chain(([end, withCases]) =>
    fc
      .record({
        points: fc.array(
          fc.record({
            name: fc.constantFrom('A', 'B', 'C', 'D1', 'ridge'),
            x: fc.oneof(station(end), fc.constantFrom(0, end)),
          }),
          { maxLength: 8 },
        ),
        supports: fc.array(someSupport(end), { maxLength: 4 }),
        hinges: fc.array(fc.record({ x: station(end) }), { maxLength: 2 }),
        loads: fc.array(someLoad(end, withCases), { maxLength: 24 }),
        reactions: fc.array(someReaction(end), { maxLength: 5 }),
        cuts: fc.array(fc.uniqueArray(station(end), { maxLength: 12 }), {
          maxLength: 2,
        }),
      })
      .map(({ cuts, ...parts }) => ({
        ...parts,
        start: 0,
        end,
        dimensions: cuts.map((stations) => {
          const sorted = [0, ...stations.filter((x) => x > 0), end].sort(
            (a, b) => a - b,
          );
          return sorted.slice(1).map((to, index) => {
            const from = sorted[index] ?? 0;
            return { from, to, label: figure(`${Number((to - from).toFixed(2))} ft`) };
          });
        }),
      })),
  );
