import { bendingRedundants } from '../bending-redundants.ts';
import { actsAlongBeam, determinacy } from '../determinacy.ts';
import type { BeamStructure, Restraint } from '../structure.ts';
import { unknownsOf, type Unknown } from '../unknowns.ts';
import { stiffnessAt } from './stretches.ts';

/** A reaction that is released, and its restraint. */
export interface Release {
  readonly unknown: Extract<Unknown, { kind: 'reaction' }>;
  readonly x: number;
  readonly restraint: Restraint;
}

/** Restraints to release so that statics solves what is left, and what that is. */
export interface ReleaseChoice {
  readonly releases: readonly Release[];
  readonly leaves: 'cantilever' | 'simple-beam' | 'other';
  /** The beam without the released restraints, springs and movements of supports. */
  readonly released: BeamStructure;
}

/**
 * Chooses as many restraints as there are redundants of bending, so that the beam without them stands
 * and statics solves it: a cantilever is best, a simple beam next; interior supports go before
 * outer ones, and springs, the softest first, before rigid restraints.
 *
 * @throws RangeError where no choice leaves a stable beam.
 */
export function chooseReleases(structure: BeamStructure): ReleaseChoice {
  const all = releasable(structure);
  const choices = subsets(all, bendingRedundants(structure)).flatMap(
    (releases): readonly ReleaseChoice[] => {
      const released = without(structure, releases);
      return statics(released)
        ? [{ releases, leaves: whatIsLeft(released), released }]
        : [];
    },
  );
  const [best] = [...choices].sort((a, b) => rank(structure, a) - rank(structure, b));
  if (best === undefined) throw new RangeError('no releases leave a stable beam');
  return best;
}

function releasable(structure: BeamStructure): readonly Release[] {
  return unknownsOf(structure).flatMap((unknown): readonly Release[] => {
    if (unknown.kind !== 'reaction') return [];
    const support = structure.supports.find(({ point }) => point === unknown.point);
    const restraint = support?.restraints[unknown.index];
    if (support === undefined || restraint === undefined || actsAlongBeam(restraint))
      return [];
    return [{ unknown, x: support.x, restraint }];
  });
}

function subsets<T>(of: readonly T[], count: number): readonly (readonly T[])[] {
  if (count === 0) return [[]];
  return of.flatMap((first, index) =>
    subsets(of.slice(index + 1), count - 1).map((rest) => [first, ...rest]),
  );
}

/** The beam with some restraints gone; stiffness and movements, which a determinate beam does not feel, go too. */
function without(
  structure: BeamStructure,
  releases: readonly Release[],
): BeamStructure {
  const { kind, points, hinges, loads, cases } = structure;
  const supports = structure.supports.flatMap((support) => {
    const restraints = support.restraints.flatMap((restraint, index) => {
      const isReleased = releases.some(
        ({ unknown }) => unknown.point === support.point && unknown.index === index,
      );
      if (isReleased) return [];
      const plain: Restraint =
        restraint.kind === 'moment'
          ? { kind: 'moment' }
          : { kind: 'force', direction: restraint.direction };
      return [plain];
    });
    return restraints.length === 0 ? [] : [{ ...support, restraints }];
  });
  return { kind, points, hinges, loads, cases, supports };
}

function statics(structure: BeamStructure): boolean {
  if (structure.supports.length === 0) return false;
  const { stable, redundants, axialOnly } = determinacy(structure);
  return stable && (redundants === 0 || axialOnly);
}

function whatIsLeft({ supports, hinges }: BeamStructure): ReleaseChoice['leaves'] {
  if (hinges.length > 0) return 'other';
  const across = supports.flatMap(({ restraints }) =>
    restraints.filter((restraint) => !actsAlongBeam(restraint)),
  );
  const moments = across.filter(({ kind }) => kind === 'moment').length;
  const places = supports.filter(({ restraints }) =>
    restraints.some((restraint) => !actsAlongBeam(restraint)),
  ).length;
  if (moments === 0) return 'simple-beam';
  return moments === 1 && across.length === 2 && places === 1 ? 'cantilever' : 'other';
}

/** Least is best. A support that loses one of several restraints across is half released, which reads worse. */
function rank(structure: BeamStructure, { releases, leaves }: ReleaseChoice): number {
  const { points, supports } = structure;
  const from = points[0]?.x ?? 0;
  const to = points.at(-1)?.x ?? 0;
  const kinds = new Set(releases.map(({ restraint }) => restraint.kind));
  const left = { cantilever: 0, 'simple-beam': 1, other: 4 }[leaves];
  const half = releases.filter(({ unknown, restraint }) => {
    const support = supports.find(({ point }) => point === unknown.point);
    return (
      restraint.kind === 'force' &&
      (support?.restraints.some((r) => r.kind === 'moment') ?? false)
    );
  }).length;
  const outer = releases.reduce(
    (sum, { x }) => sum + Math.abs(2 * x - from - to) / (to - from),
    0,
  );
  return (
    left + 2 * half + (kinds.size > 1 ? 1 : 0) + sway(structure, releases) + outer / 100
  );
}

/**
 * How badly what is left would sway on springs that stay: beside a soft one the movements at the releases
 * are small differences of great ones, which no figures on a page would carry.
 */
function sway(structure: BeamStructure, releases: readonly Release[]): number {
  const { points, stiffness = [] } = structure;
  const length = (points.at(-1)?.x ?? 0) - (points[0]?.x ?? 0);
  const EI = stiffnessAt(stiffness, points[0]?.x ?? 0);
  return releasable(structure).reduce((sum, { unknown, restraint }) => {
    const isReleased = releases.some(
      (one) =>
        one.unknown.point === unknown.point && one.unknown.index === unknown.index,
    );
    if (isReleased || restraint.stiffness === undefined) return sum;
    const reach = restraint.kind === 'moment' ? length : length ** 3;
    return sum + 0.5 + 2 * Math.log10(1 + EI / (restraint.stiffness * reach));
  }, 0);
}
