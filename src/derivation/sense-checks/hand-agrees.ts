import { wholeOf, type BeamResult } from '../../statics/index.ts';
import type { CaseContext } from '../case-context.ts';
import { handComponents } from '../redundants/hand-components.ts';
import { agreementTolerance, type CheckOutcome } from './check-outcome.ts';

/** How far the hand method and the result reported are apart. */
export interface HandDifference {
  /** Worst difference of a reaction, forces against the scale of forces, moments against that of moments. */
  readonly difference: number;
  readonly allowed: number;
  readonly finding: string;
}

/** The arithmetic of the hand method finds the reactions reported; worked without being printed by itself. */
export function handAgrees(context: CaseContext): readonly CheckOutcome[] {
  const found = handDifference(context);
  if (found === undefined) return [];
  return [{ holds: found.difference <= found.allowed, finding: found.finding }];
}

/** The hand method compared with the result reported; undefined where statics alone finds the reactions. */
export function handDifference(context: CaseContext): HandDifference | undefined {
  const work = handComponents(context);
  if (work === undefined) return undefined;
  const { result } = context;
  const { difference, place } = worstReaction(context, work.components);
  return {
    difference,
    allowed: Math.max(
      agreementTolerance,
      result.agreement?.allowed ?? 0,
      work.stopsAt ?? 0,
    ),
    finding: `the hand method finds another reaction at ${place}, ${difference.toExponential(1)} of scale apart`,
  };
}

/** The reaction that the hand method finds furthest from the one reported, as a share of scale. */
function worstReaction(
  { structure, result }: CaseContext,
  components: readonly (readonly number[])[],
): { readonly difference: number; readonly place: string } {
  const { from, to } = wholeOf(structure);
  const scales = scalesOf(result, to - from);
  let [difference, place] = [0, ''];
  for (const [index, { point, restraints }] of structure.supports.entries()) {
    for (const [at, { kind }] of restraints.entries()) {
      const hand = components[index]?.[at] ?? 0;
      const off = Math.abs(hand - componentOf(result, point, at));
      // Where nothing acts there is no scale, and nothing may be found either.
      const share = off === 0 ? 0 : off / scales[kind];
      if (share > difference) [difference, place] = [share, point];
    }
  }
  return { difference, place };
}

function componentOf({ reactions }: BeamResult, point: string, at: number): number {
  return reactions.find((reaction) => reaction.point === point)?.components[at] ?? 0;
}

/** Where nothing but couples acts, forces are judged by what moments make of them over the beam, and the other way round. */
function scalesOf(
  { reactions, extremes }: BeamResult,
  length: number,
): { readonly force: number; readonly moment: number } {
  const greatest = (of: BeamResult['extremes']['shear']): number =>
    Math.max(Math.abs(of.max.value), Math.abs(of.min.value));
  const forces = reactions.flatMap(({ x, y }) => [Math.abs(x ?? 0), Math.abs(y ?? 0)]);
  const moments = reactions.map(({ moment }) => Math.abs(moment ?? 0));
  const force = Math.max(greatest(extremes.shear), greatest(extremes.axial), ...forces);
  const moment = Math.max(greatest(extremes.moment), ...moments);
  return {
    force: Math.max(force, moment / (1000 * length)),
    moment: Math.max(moment, (force * length) / 1000),
  };
}
