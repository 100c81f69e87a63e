import type { CarriedReaction } from '../../project/index.ts';
import type { Load } from '../../statics/index.ts';
import type { BeamWork } from '../beam-work.ts';

/** Along which axis forces are summed over the project. */
export type Along = 'x' | 'y';

/** Values of one row, one a case in the order of the cases, N. */
export type CaseValues = readonly number[];

/** A reaction by its member and support. */
export interface PlacedValues {
  readonly mark: string;
  readonly point: string;
  readonly values: CaseValues;
}

/** One case summed over the project: applied + again + beyond = ground but for the residual. */
export interface CaseSum {
  readonly case: string;
  readonly applied: number;
  readonly again: number;
  readonly beyond: number;
  readonly ground: number;
  readonly residual: number;
  /** Sum of the sizes of all terms, to judge the residual by. */
  readonly scale: number;
  /** True where the residual is no more than rounding leaves. */
  readonly closes: boolean;
}

/**
 * What goes into a project and what comes out at the ground, case by case, along one axis. Loads count positive
 * against the positive sense of reactions (down, or left), so that applied loads and reactions agree in sign.
 */
export interface ProjectClosure {
  readonly along: Along;
  readonly cases: readonly string[];
  /** Resultant of each member's own loads; reactions that it carries are not among them. */
  readonly applied: readonly { readonly mark: string; readonly values: CaseValues }[];
  /** Reactions carried other than once: in all `times` times. */
  readonly again: readonly (PlacedValues & { readonly times: number })[];
  /**
   * Reactions carried on as a greatest value, where the case has no single state: how much more (times included) acts on
   * the members below than the state that is summed here gives.
   */
  readonly beyond: readonly PlacedValues[];
  /** Reactions that no member carries. */
  readonly ground: readonly PlacedValues[];
  readonly sums: readonly CaseSum[];
  readonly closes: boolean;
}

/** A residual smaller than this share of the sum of all sizes is rounding. */
const rounding = 1e-9;

/**
 * Sums a project along one axis. In each member reactions balance its own loads and those that it carries;
 * a reaction carried n times comes n times as a load and once as a reaction, so over all members
 * applied loads + (n − 1) times each carried reaction = reactions that nothing carries.
 * Along x a reaction goes along only with `carry: all`; what is left behind counts as at the ground.
 */
export function projectClosure(
  works: readonly BeamWork[],
  along: Along,
): ProjectClosure {
  const cases = works[0]?.structure.cases ?? [];
  const by = (value: (mark: string) => number): CaseValues => cases.map(value);
  const applied = works.map((work) => ({
    mark: work.definition.mark,
    values: by((mark) => sumOf(ownLoads(work, mark), along)),
  }));
  const reactions = works.flatMap((work) => reactionsOf(work, cases, along));
  const timesOf = ({ mark, point }: PlacedValues): number =>
    carriedFrom(works, along)
      .filter((one) => one.member === mark && one.point === point)
      .reduce((all, { times }) => all + times, 0);
  const carried = reactions
    .map((one) => ({ ...one, times: timesOf(one) }))
    .filter(({ times }) => times > 0);
  const beyond = carried.map(({ mark, point, times, values }) => ({
    mark,
    point,
    values: by(
      (of) =>
        acting(works, { mark, point, case: of, along }) -
        times * (values[cases.indexOf(of)] ?? 0),
    ),
  }));
  const parts = {
    applied,
    again: carried.filter(({ times }) => times !== 1),
    beyond: beyond.filter(({ values }, index) =>
      values.some(
        (value, i) =>
          Math.abs(value) > rounding * Math.abs(carried[index]?.values[i] ?? 0),
      ),
    ),
    ground: reactions.filter((one) => timesOf(one) === 0),
  };
  const sums = cases.map((mark, index) => sumCase(parts, mark, index));
  return {
    along,
    cases,
    ...parts,
    sums,
    closes: sums.every(({ closes }) => closes),
  };
}

type Parts = Pick<ProjectClosure, 'applied' | 'again' | 'beyond' | 'ground'>;

function sumCase(
  { applied, again, beyond, ground }: Parts,
  mark: string,
  index: number,
): CaseSum {
  const at = ({ values }: { readonly values: CaseValues }): number =>
    values[index] ?? 0;
  const terms = {
    applied: applied.map(at),
    again: again.map((one) => (one.times - 1) * at(one)),
    beyond: beyond.map(at),
    ground: ground.map(at),
  };
  const scale = total(Object.values(terms).flat().map(Math.abs));
  const [a, b, c, d] = [
    total(terms.applied),
    total(terms.again),
    total(terms.beyond),
    total(terms.ground),
  ];
  const residual = a + b + c - d;
  return {
    case: mark,
    applied: a,
    again: b,
    beyond: c,
    ground: d,
    residual,
    scale,
    closes: Math.abs(residual) <= rounding * scale,
  };
}

const total = (values: readonly number[]): number =>
  values.reduce((all, value) => all + value, 0);

/** Loads of a case that the member does not carry from another. */
function ownLoads({ structure, carried }: BeamWork, mark: string): readonly Load[] {
  return structure.loads.filter((load) => load.case === mark && !carried.has(load.id));
}

/** The resultant of loads along an axis, positive against reactions. */
function sumOf(loads: readonly Load[], along: Along): number {
  return -total(loads.map((load) => resultantAlong(load, along))) + 0;
}

function resultantAlong(load: Load, along: Along): number {
  switch (load.kind) {
    case 'point':
      return along === 'x' ? load.fx : load.fy;
    case 'couple':
      return 0;
    case 'distributed': {
      const [start, end] = along === 'x' ? [load.x1, load.x2] : [load.y1, load.y2];
      return ((start + end) / 2) * (load.to - load.from);
    }
  }
}

function reactionsOf(
  { definition, solution }: BeamWork,
  cases: readonly string[],
  along: Along,
): readonly PlacedValues[] {
  const first = solution.results[0]?.reactions ?? [];
  return first
    .filter((reaction) => reaction[along] !== null)
    .map(({ point }) => ({
      mark: definition.mark,
      point,
      values: cases.map(
        (mark) =>
          solution.results
            .find((result) => result.mark === mark)
            ?.reactions.find((reaction) => reaction.point === point)?.[along] ?? 0,
      ),
    }));
}

/** Carried reactions of the whole project as far as they go along an axis. */
function carriedFrom(
  works: readonly BeamWork[],
  along: Along,
): readonly CarriedReaction[] {
  return works
    .flatMap(({ definition }) => definition.carried)
    .filter(({ carry }) => along === 'y' || carry === 'all');
}

/** What acts on other members in the name of one reaction. */
function acting(
  works: readonly BeamWork[],
  of: {
    readonly mark: string;
    readonly point: string;
    readonly case: string;
    readonly along: Along;
  },
): number {
  const loads = works.flatMap(({ structure, carried }) =>
    structure.loads.filter((load) => {
      const from = carried.get(load.id);
      return (
        load.case === of.case && from?.member === of.mark && from.point === of.point
      );
    }),
  );
  return sumOf(loads, of.along);
}
