import type { CarriedReaction } from '../../definitions.ts';
import { readUses, type LoadContext } from './load-context.ts';
import type { LoadLine } from './load-line.ts';
import { readPlace } from './place.ts';
import { sideFits } from './couple-line.ts';

/** The reactions that one line carries: one for each place. Whether the other member has such a support is checked when all members are read. */
export function readCarried(
  line: Extract<LoadLine, { kind: 'reaction' }>,
  context: LoadContext,
): readonly CarriedReaction[] {
  const { axis, premises, reading, nextId } = context;
  const dot = line.reaction.value.indexOf('.');
  const member = line.reaction.value.slice(0, Math.max(0, dot));
  const point = line.reaction.value.slice(dot + 1);
  const carry = line.carry ?? 'vertical';
  const uses = readUses(line.uses, premises, reading);
  const places = line.at.flatMap((at) => {
    const place = readPlace(at, axis, reading);
    // Only what turns the piece has to say which piece; a vertical reaction passes through a hinge.
    const needsSide = carry === 'all' || line.side !== undefined;
    const fits =
      place !== undefined &&
      (!needsSide || sideFits(place, { side: line.side, span: at.span }, context));
    return fits ? [place] : [];
  });
  if (dot < 1 || point === '') {
    reading.report({
      code: 'not-a-reaction',
      message: `\`${line.reaction.value}\` names no member and support`,
      span: line.reaction.span,
      hints: ['write the mark of the member, a dot and the point: B2.C'],
    });
    return [];
  }
  return places.map((at) => ({
    id: nextId(),
    member,
    point,
    at,
    times: line.times ?? 1,
    carry,
    uses,
    span: line.reaction.span,
    ...(line.side === undefined ? {} : { side: line.side.value }),
    ...(line.because === undefined ? {} : { because: line.because }),
    ...(line.note === undefined ? {} : { note: line.note }),
  }));
}
