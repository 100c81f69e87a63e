import type { BeamStructure, Restraint, Support } from '../../statics/index.ts';
import { totalLoads, type LoadAmount, type TotalLoads } from './total-loads.ts';

/** A support as handbooks know them: it holds y, or y and the rotation. */
interface ViewSupport {
  readonly point: string;
  /** Distance from the end that the view begins at, m. */
  readonly at: number;
  readonly holds: 'simple' | 'fixed';
  /** Downward movement in this case, m. */
  readonly settlement: number;
}

/**
 * One case of a beam as a handbook draws it: from whichever end, the loads down or turned round.
 * Stations run from the end where the view begins; forces count downward, couples counterclockwise
 * as this view shows them. A formula that fits a view fits the beam, because small displacements are linear.
 */
export interface CaseView {
  readonly mirrored: boolean;
  /** −1 where every load of the case is turned round, so that uplift reads as a load downward. */
  readonly sense: 1 | -1;
  readonly length: number;
  /** What holds the beam, from the first end to the other: `fixed free`, `simple simple free`. */
  readonly scheme: string;
  readonly supports: readonly ViewSupport[];
  readonly loads: TotalLoads;
}

/**
 * The four ways to look at a case; none where a handbook would not know the beam: hinges, springs, slanted or
 * sliding supports, loads along the beam, temperature, no constant stiffness although forces depend on it.
 */
export function caseViews(structure: BeamStructure, mark: string): readonly CaseView[] {
  const first = structure.points[0]?.x ?? 0;
  const last = structure.points.at(-1)?.x ?? 0;
  const length = last - first;
  const supports = structure.supports.map((one) => viewSupport(one, mark, first));
  const known = supports.flatMap((one) => one ?? []);
  const loads = totalLoads(structure, mark);
  const isWarm = (structure.curvatures ?? []).some((one) => one.case === mark);
  if (
    known.length < supports.length ||
    loads === undefined ||
    structure.hinges.length > 0 ||
    isWarm
  )
    return [];
  const plain = { mirrored: false, sense: 1, length, supports: known, loads } as const;
  return [plain, mirror(plain)].flatMap((one) => {
    const seen = { ...one, scheme: schemeOf(one) };
    return [seen, turnedRound(seen)];
  });
}

function viewSupport(
  { point, x, restraints }: Support,
  mark: string,
  first: number,
): ViewSupport | undefined {
  const isKnown = (restraint: Restraint): boolean =>
    restraint.stiffness === undefined &&
    (restraint.kind === 'moment'
      ? movementOf(restraint, mark) === 0
      : restraint.direction.includes(0));
  const holder = restraints.find((r) => r.kind === 'force' && r.direction[1] === 1);
  if (holder === undefined || !restraints.every(isKnown)) return undefined;
  const holds = restraints.some(({ kind }) => kind === 'moment') ? 'fixed' : 'simple';
  return { point, at: x - first, holds, settlement: movementOf(holder, mark) };
}

function movementOf({ settlements }: Restraint, mark: string): number {
  return settlements?.find((one) => one.case === mark)?.value ?? 0;
}

type Unnamed = Omit<CaseView, 'scheme'>;

function schemeOf({ supports, length }: Unnamed): string {
  const margin = 1e-9 * length;
  const [first, last] = [supports[0]?.at ?? length, supports.at(-1)?.at ?? 0];
  return [
    ...(first > margin ? ['free'] : []),
    ...supports.map(({ holds }) => holds),
    ...(last < length - margin ? ['free'] : []),
  ].join(' ');
}

function mirror(view: Unnamed): Unnamed {
  const turn = (at: number): number => view.length - at;
  const { stretches, points, couples } = view.loads;
  return {
    ...view,
    mirrored: true,
    supports: view.supports.map((one) => ({ ...one, at: turn(one.at) })).reverse(),
    loads: {
      stretches: stretches
        .map(({ from, to, start, end }) => ({
          from: turn(to),
          to: turn(from),
          start: end,
          end: start,
        }))
        .reverse(),
      points: points.map((one) => ({ ...one, at: turn(one.at) })).reverse(),
      couples: couples
        .map(({ at, amount }) => ({ at: turn(at), amount: opposite(amount) }))
        .reverse(),
    },
  };
}

function turnedRound(view: CaseView): CaseView {
  const { stretches, points, couples } = view.loads;
  const turn = <T extends { readonly amount: LoadAmount }>(all: readonly T[]): T[] =>
    all.map((one) => ({ ...one, amount: opposite(one.amount) }));
  return {
    ...view,
    sense: -1,
    supports: view.supports.map((one) => ({ ...one, settlement: 0 - one.settlement })),
    loads: {
      stretches: stretches.map((one) => ({
        ...one,
        start: opposite(one.start),
        end: opposite(one.end),
      })),
      points: turn(points),
      couples: turn(couples),
    },
  };
}

function opposite({ si, terms }: LoadAmount): LoadAmount {
  return {
    si: 0 - si,
    terms: terms.map((term) => ({ ...term, si: 0 - term.si })),
  };
}
