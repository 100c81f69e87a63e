import { factorLu, solveLu } from '../linear/lu.ts';
import type { Piecewise } from '../piecewise.ts';
import type { BeamResult } from '../solution.ts';
import { solveBeam } from '../solve-beam.ts';
import type { BeamStructure, Load, Restraint } from '../structure.ts';
import { tidyStructure } from '../tidy-structure.ts';
import { unknownsOf, valueOfUnknown, type Unknown } from '../unknowns.ts';
import { chooseReleases, type Release, type ReleaseChoice } from './choose-releases.ts';
import { settledSum } from './linear-form.ts';
import {
  freeCurvature,
  integralOf,
  productOf,
  stiffnessAt,
  stretchesOf,
  type Stretch,
} from './stretches.ts';

/** A part of a movement that comes of one stretch: EI₀ ∫ a b / EI over it. */
export interface StretchShare {
  readonly stretch: Stretch;
  readonly value: number;
}

/** A part that comes of a support which gives way: EI₀ r R / k, or EI₀ r s where its foot moves by s. */
export interface SupportShare {
  readonly unknown: Extract<Unknown, { kind: 'reaction' }>;
  readonly restraint: Restraint;
  /** What the unit redundant calls up there. */
  readonly unit: number;
  /** What the loads, or the other unit redundant, call up there; absent for a moving foot. */
  readonly force?: number;
  /** The movement of the foot against the restraint's direction; absent for a spring. */
  readonly moved?: number;
  readonly value: number;
}

/** The movement at a release under something, times EI₀, in the redundant's direction. */
export interface Movement {
  /** Shares of bending; two functions a stretch: the unit moment, and the moment that acts. */
  readonly bending: readonly StretchShare[];
  /** Shares of the curvature that the beam would take by itself. */
  readonly curvature: readonly StretchShare[];
  readonly supports: readonly SupportShare[];
  readonly total: number;
}

/** The force method worked for one case. Moments and reactions of unit redundants are per newton or newton metre. */
export interface ForceMethod extends ReleaseChoice {
  /** The reference stiffness that movements are multiplied by; 1 where it is not known. */
  readonly EI: number;
  /** The released beam under the loads of the case. */
  readonly base: BeamResult;
  /** The released beam under each redundant alone, of size 1. */
  readonly units: readonly BeamResult[];
  /** Under the loads, one a redundant. */
  readonly underLoads: readonly Movement[];
  /** [j][k]: at release j under unit redundant k. */
  readonly underUnits: readonly (readonly Movement[])[];
  /** What each release allows by itself, times EI₀: the spring's give a unit (added to the diagonal), and the foot's movement. */
  readonly allowed: readonly { readonly give: number; readonly moved: number }[];
  /** Values of the redundants. */
  readonly redundants: readonly number[];
  /** Values of every restraint, support by support. */
  readonly components: readonly (readonly number[])[];
}

/** The mark of the case under which the released beam carries a unit redundant. */
export const unitMark: string = 'unit';

/**
 * The force method for one case: movements at the releases by virtual work, the equations that bring
 * them to what the supports allow, and every reaction by superposition.
 * — Hibbeler, Structural Analysis, chapter on the force method (from memory).
 *
 * @throws RangeError where the beam is unstable or the structure is no beam.
 */
export function forceMethod(structure: BeamStructure, mark: string): ForceMethod {
  const tidy = tidyStructure(structure);
  const choice = chooseReleases(tidy);
  const { releases, released } = choice;
  const base = solved({
    ...released,
    cases: [mark],
    loads: tidy.loads.filter((load) => load.case === mark),
  });
  const units = releases.map((release) => solved(unitStructure(released, release)));
  const EI = stiffnessAt(tidy.stiffness ?? [], tidy.points[0]?.x ?? 0);
  const setting: Setting = { structure: tidy, mark, choice, EI };
  const underLoads = releases.map((_, j) =>
    movement(setting, { unit: units[j], acting: base, withFeet: true }),
  );
  const underUnits = releases.map((_, j) =>
    releases.map((__, k) =>
      movement(setting, { unit: units[j], acting: units[k], withFeet: false }),
    ),
  );
  const allowed = releases.map(({ restraint }) => ({
    give: restraint.stiffness === undefined ? 0 : EI / restraint.stiffness,
    moved: EI * footOf(restraint, mark),
  }));
  const matrix = underUnits.map((row, j) =>
    row.map(({ total }, k) => total + (j === k ? (allowed[j]?.give ?? 0) : 0)),
  );
  const right = underLoads.map(({ total }, j) => -total - (allowed[j]?.moved ?? 0));
  const redundants = solveLu(factorLu(matrix), right);
  const components = superposed(tidy, { choice, base, units, redundants });
  return {
    ...choice,
    EI,
    base,
    units,
    underLoads,
    underUnits,
    allowed,
    redundants,
    components,
  };
}

/** The released beam with one redundant of size 1 on it, under the case `unit`. */
export function unitStructure(
  released: BeamStructure,
  { restraint, x }: Release,
): BeamStructure {
  const load: Load =
    restraint.kind === 'moment'
      ? { id: unitMark, case: unitMark, kind: 'couple', x, m: 1 }
      : {
          id: unitMark,
          case: unitMark,
          kind: 'point',
          x,
          fx: restraint.direction[0],
          fy: restraint.direction[1],
        };
  return { ...released, cases: [unitMark], loads: [load] };
}

function solved(structure: BeamStructure): BeamResult {
  const outcome = solveBeam(structure);
  const result = outcome.kind === 'beam' ? outcome.results[0] : undefined;
  if (result === undefined) throw new RangeError('the released beam cannot be solved');
  return result;
}

interface Setting {
  readonly structure: BeamStructure;
  readonly mark: string;
  readonly choice: ReleaseChoice;
  readonly EI: number;
}

function movement(
  { structure, mark, choice, EI }: Setting,
  of: {
    readonly unit: BeamResult | undefined;
    readonly acting: BeamResult | undefined;
    readonly withFeet: boolean;
  },
): Movement {
  const { unit, acting, withFeet } = of;
  if (unit === undefined || acting === undefined)
    throw new RangeError('no such redundant');
  const bending = shares(structure, unit.moment, acting.moment).map(
    ({ stretch, value }) => ({ stretch, value: (EI / stretch.EI) * value }),
  );
  const free = withFeet ? freeCurvature(structure, mark) : undefined;
  const curvature =
    free === undefined
      ? []
      : shares(structure, unit.moment, free).map(({ stretch, value }) => ({
          stretch,
          value: EI * value,
        }));
  const supports = unknownsOf(structure).flatMap((unknown) =>
    supportShares({ structure, mark, choice, EI }, { unknown, unit, acting, withFeet }),
  );
  const total = settledSum(
    [...bending, ...curvature, ...supports].map(({ value }) => value),
  );
  return { bending, curvature, supports, total };
}

function shares(
  structure: BeamStructure,
  unit: Piecewise,
  acting: Piecewise,
): readonly StretchShare[] {
  return stretchesOf(structure, [unit, acting]).map((stretch) => {
    const [a = [0], b = [0]] = stretch.functions;
    return { stretch, value: integralOf(productOf(a, b), stretch.to - stretch.from) };
  });
}

/** What restraints that stay add: springs their give under what acts, feet their movement. */
function supportShares(
  { structure, mark, choice, EI }: Setting,
  of: {
    readonly unknown: Unknown;
    readonly unit: BeamResult;
    readonly acting: BeamResult;
    readonly withFeet: boolean;
  },
): readonly SupportShare[] {
  const { unknown, withFeet } = of;
  if (unknown.kind !== 'reaction' || isReleased(choice, unknown)) return [];
  const restraint = structure.supports.find(({ point }) => point === unknown.point)
    ?.restraints[unknown.index];
  if (restraint === undefined) return [];
  const inReleased = placeInReleased(choice, unknown);
  const unit = valueOfUnknown(of.unit, inReleased);
  const force = valueOfUnknown(of.acting, inReleased);
  const moved = withFeet ? footOf(restraint, mark) : 0;
  const head = { unknown, restraint, unit };
  const { stiffness } = restraint;
  return [
    ...(stiffness === undefined || unit === 0
      ? []
      : [{ ...head, force, value: (EI * unit * force) / stiffness }]),
    ...(moved === 0 || unit === 0
      ? []
      : [{ ...head, moved, value: EI * unit * moved }]),
  ];
}

function footOf({ settlements = [] }: Restraint, mark: string): number {
  return settlements
    .filter((one) => one.case === mark)
    .reduce((sum, { value }) => sum + value, 0);
}

function isReleased(
  { releases }: ReleaseChoice,
  { point, index }: Extract<Unknown, { kind: 'reaction' }>,
): boolean {
  return releases.some(
    ({ unknown }) => unknown.point === point && unknown.index === index,
  );
}

/** A restraint that stays, by its place among those of the released beam. */
function placeInReleased(
  { releases }: ReleaseChoice,
  unknown: Extract<Unknown, { kind: 'reaction' }>,
): Extract<Unknown, { kind: 'reaction' }> {
  const before = releases.filter(
    (release) =>
      release.unknown.point === unknown.point && release.unknown.index < unknown.index,
  ).length;
  return { ...unknown, index: unknown.index - before };
}

function superposed(
  structure: BeamStructure,
  of: {
    readonly choice: ReleaseChoice;
    readonly base: BeamResult;
    readonly units: readonly BeamResult[];
    readonly redundants: readonly number[];
  },
): readonly (readonly number[])[] {
  const { choice, base, units, redundants } = of;
  return structure.supports.map(({ point, restraints }) =>
    restraints.map((_, index) => {
      const unknown = { kind: 'reaction', point, index } as const;
      const released = choice.releases.findIndex(
        (release) => release.unknown.point === point && release.unknown.index === index,
      );
      if (released >= 0) return redundants[released] ?? 0;
      const place = placeInReleased(choice, unknown);
      return units.reduce(
        (sum, unit, j) => sum + (redundants[j] ?? 0) * valueOfUnknown(unit, place),
        valueOfUnknown(base, place),
      );
    }),
  );
}
