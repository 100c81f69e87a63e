import type { Span } from '../../../diagnostics/index.ts';
import type { BeamLoad, BeamPlace } from '../../definitions.ts';
import type { Placed } from '../../shape/shape.ts';
import { spreadCases } from './cases.ts';
import { basesOf } from './load-base.ts';
import type { LoadContext } from './load-context.ts';
import type { LoadLine } from './load-line.ts';
import { readPlace } from './place.ts';

/** Couples of one line: one for each case and place. */
export function readCoupleLine(
  line: Extract<LoadLine, { kind: 'couple' }>,
  context: LoadContext,
): readonly BeamLoad[] {
  const { axis, premises, reading, nextId } = context;
  const sizes = spreadCases(line.couple, line.case, premises, reading);
  const places = line.at.flatMap((at) => {
    const place = readPlace(at, axis, reading);
    return place !== undefined &&
      sideFits(place, { side: line.side, span: at.span }, context)
      ? [place]
      : [];
  });
  return basesOf(line, sizes, line.lineSpan, context).flatMap(({ base, value }) =>
    places.map((at) => ({
      ...base,
      id: nextId(),
      kind: 'couple',
      at,
      size: value,
      turn: line.turn,
      ...(line.side === undefined ? {} : { side: line.side.value }),
    })),
  );
}

/** Reports a couple at a hinge that does not say which piece takes it, and a side where there is no hinge. `at` is the place's span. */
export function sideFits(
  place: BeamPlace,
  written: { readonly side: Placed<'left' | 'right'> | undefined; readonly span: Span },
  context: LoadContext,
): boolean {
  const atHinge = context.hinges.some(
    (hinge) => Math.abs(hinge.x - place.x) <= context.axis.tolerance,
  );
  if (atHinge === (written.side !== undefined)) return true;
  context.reading.report(
    atHinge
      ? {
          code: 'couple-at-hinge',
          message: 'a couple exactly at a hinge must say which piece takes it',
          span: written.span,
          hints: ['add `side: left` or `side: right`'],
        }
      : {
          code: 'side-without-hinge',
          message: '`side` means something at a hinge only, and none is here',
          span: written.side?.span ?? written.span,
          hints: ['take `side` out'],
        },
  );
  return false;
}
