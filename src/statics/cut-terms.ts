import {
  loadActionsOn,
  reactionActionsOn,
  type Action,
  type Extent,
} from './actions.ts';
import { factorOf, termOf, type Sum, type SumTerm } from './equilibrium.ts';
import type { CaseFactor } from './loading.ts';
import { wholeOf } from './parts.ts';
import { breakpointsOf, valueAt } from './piecewise.ts';
import type { BeamResult } from './solution.ts';
import type { BeamStructure } from './structure.ts';
import { tidyStructure } from './tidy-structure.ts';
import { stationTolerance } from './tolerances.ts';

/** An imaginary cut through the beam, just left or just right of what stands at a station. */
export interface Cut {
  readonly x: number;
  readonly side: 'left' | 'right';
}

/** A piece of the beam between cuts; an end left out is the beam's own. */
export interface CutPart {
  readonly from?: Cut;
  readonly to?: Cut;
}

/** One of the three forces at a cut, in the signs of the diagrams. */
export interface CutForce {
  readonly kind: 'cut';
  readonly cut: Cut;
  readonly force: 'axial' | 'shear' | 'moment';
}

/** A term of a sum over a part that ends at cuts: as `SumTerm`, or an internal force at a cut. */
export type CutTerm =
  SumTerm | (Omit<SumTerm, 'source'> & { readonly source: CutForce });

/**
 * The terms of a sum over a part between cuts, in the order reactions, internal forces at the
 * cuts (N, V, M at each), loads. On the part left of a cut N acts to the right, V down and M counterclockwise;
 * on the part right of it the other way round. Hinges inside are no matter.
 *
 * @throws RangeError where the cuts leave nothing between them, or a case is not the structure's.
 */
export function termsOfCutSum(
  structure: BeamStructure,
  loading: string | readonly CaseFactor[],
  part: CutPart,
  sum: Sum,
): readonly CutTerm[] {
  const tidy = tidyStructure(structure);
  const extent = extentOfCut(tidy, part);
  const cuts = [
    ...(part.from === undefined
      ? []
      : cutTerms({ ...part.from, x: extent.from }, -1, sum)),
    ...(part.to === undefined ? [] : cutTerms({ ...part.to, x: extent.to }, 1, sum)),
  ];
  const asTerm = (action: Action): SumTerm => termOf(action, sum);
  return [
    ...reactionActionsOn(tidy, extent).map(asTerm),
    ...cuts,
    ...loadActionsOn(tidy, loading, extent).map(asTerm),
  ];
}

/** What a result has for an internal force at a cut, N or N·m; 0 outside the beam's ends. */
export function valueOfCutForce(result: BeamResult, { cut, force }: CutForce): number {
  const stations = breakpointsOf(result[force]);
  const start = stations[0] ?? 0;
  const end = stations.at(-1) ?? 0;
  const margin = stationTolerance * (end - start);
  const isBefore = cut.side === 'left' && cut.x <= start + margin;
  const isBehind = cut.side === 'right' && cut.x >= end - margin;
  return isBefore || isBehind ? 0 : valueAt(result[force], cut.x, cut.side);
}

function extentOfCut(structure: BeamStructure, part: CutPart): Extent {
  const whole = wholeOf(structure);
  const margin = stationTolerance * (whole.to - whole.from);
  const places = [...structure.points, ...structure.loads.flatMap(placesOf)].map(
    ({ x }) => x,
  );
  const exact = (x: number): number =>
    places.find((place) => Math.abs(place - x) <= margin) ?? x;
  const from = part.from === undefined ? whole.from : exact(part.from.x);
  const to = part.to === undefined ? whole.to : exact(part.to.x);
  const holdsFrom = part.from?.side !== 'right';
  const holdsTo = part.to?.side !== 'left';
  if (
    to < from ||
    (to === from && !(holdsFrom && holdsTo)) ||
    from < whole.from ||
    to > whole.to
  ) {
    throw new RangeError(`no part of the beam between ${from} and ${to}`);
  }
  const holds = (x: number): boolean =>
    (x > from || (x === from && holdsFrom)) && (x < to || (x === to && holdsTo));
  return { from, to, holds };
}

function placesOf(
  load: BeamStructure['loads'][number],
): readonly { readonly x: number }[] {
  return load.kind === 'distributed' ? [{ x: load.from }, { x: load.to }] : [load];
}

/** N, V and M on the face of a part: `face` is 1 where the part is left of the cut. */
function cutTerms(cut: Cut, face: 1 | -1, sum: Sum): readonly CutTerm[] {
  const effects: readonly (readonly [CutForce['force'], Action['effect']])[] = [
    ['axial', { kind: 'force', direction: [face, 0] }],
    ['shear', { kind: 'force', direction: [0, -face] }],
    ['moment', { kind: 'couple', turn: face }],
  ];
  return effects.map(([force, effect]) => ({
    source: { kind: 'cut', cut, force },
    quantity: effect.kind,
    factor: factorOf({ effect, x: cut.x }, sum),
    x: cut.x,
  }));
}
