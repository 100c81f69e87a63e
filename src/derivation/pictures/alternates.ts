import {
  partsOf,
  type BeamResult,
  type EntryResult,
  type Load,
} from '../../statics/index.ts';
import { pointAt, type MemberContext } from '../case-context.ts';
import { degreesOf } from '../direction.ts';
import { lengthText, valueText } from '../printing.ts';

/** What the drawing of the member as loaded shows, with its numbers, for someone who cannot see it. */
export function describeMember(context: MemberContext): string {
  const { structure, printing, definition } = context;
  const length = (structure.points.at(-1)?.x ?? 0) - (structure.points[0]?.x ?? 0);
  const supports = definition.supports.map(({ point, type }) => `${type} at ${point}`);
  const hinges = definition.hinges.map(({ point }) => `hinge at ${point}`);
  const loads = structure.loads.map((load) => describeLoad(context, load));
  return [
    `Beam ${definition.mark} to scale, ${lengthText(printing, length)} long: ${[...supports, ...hinges].join(', ')}.`,
    loads.length === 0 ? 'No loads.' : `Loads: ${loads.join('; ')}.`,
  ].join(' ');
}

/** What the free body shows. */
export function describeFreeBody({ structure, symbols }: MemberContext): string {
  const unknowns = structure.supports.flatMap(({ point, restraints }) =>
    restraints.map(
      (_, index) => symbols.unknown({ kind: 'reaction', point, index }).meaning,
    ),
  );
  return `Free body of the whole member: the supports are replaced by ${unknowns.join(', ')}; every load acts as given.`;
}

/** What the drawing of the pieces shows. */
export function describePieces(context: MemberContext): string {
  const pieces = partsOf(context.structure).map(
    ({ from, to }) => `${placeText(context, from)} to ${placeText(context, to)}`,
  );
  return `Free bodies of the pieces ${pieces.join(', ')}; the forces through each hinge are drawn equal and opposite on its two sides.`;
}

/** What the diagrams show. */
export function describeDiagrams(context: MemberContext, result: BeamResult): string {
  return `Shear and moment diagrams of ${result.mark}: ${extremesText(context, result)}.`;
}

/** What an envelope shows. */
export function describeEnvelope(
  context: MemberContext,
  results: readonly EntryResult[],
): string {
  const each = results.map(
    (result) => `${result.mark}: ${extremesText(context, result)}`,
  );
  return `Envelope of shear and moment. ${each.join('. ')}.`;
}

function extremesText(context: MemberContext, { extremes }: EntryResult): string {
  const { printing } = context;
  const one = (
    what: 'force' | 'moment',
    { value, x }: { value: number; x: number },
  ): string => `${valueText(printing, what, value)} at ${placeText(context, x)}`;
  return [
    `shear between ${one('force', extremes.shear.min)} and ${one('force', extremes.shear.max)}`,
    `moment between ${one('moment', extremes.moment.min)} and ${one('moment', extremes.moment.max)}`,
  ].join(', ');
}

function placeText({ structure, printing }: MemberContext, x: number): string {
  return pointAt(structure, x) ?? `x = ${lengthText(printing, x)}`;
}

function describeLoad(context: MemberContext, load: Load): string {
  const { printing } = context;
  const tag = `${load.case}: `;
  switch (load.kind) {
    case 'point': {
      const size = Math.hypot(load.fx, load.fy);
      const degrees = Number(degreesOf([load.fx, load.fy]).toFixed(2));
      const way =
        degrees === 270 ? 'down' : degrees === 90 ? 'up' : `toward ${degrees}°`;
      return `${tag}${valueText(printing, 'force', size)} ${way} at ${placeText(context, load.x)}`;
    }
    case 'couple':
      return `${tag}couple ${valueText(printing, 'moment', Math.abs(load.m))} ${load.m < 0 ? 'clockwise' : 'counterclockwise'} at ${placeText(context, load.x)}`;
    case 'distributed': {
      const ends = [Math.hypot(load.x1, load.y1), Math.hypot(load.x2, load.y2)].map(
        (si) => valueText(printing, 'force-per-length', si),
      );
      const size = ends[0] === ends[1] ? ends[0] : ends.join(' to ');
      return `${tag}${size} from ${placeText(context, load.from)} to ${placeText(context, load.to)}`;
    }
  }
}
