import type { BeamDefinition, BeamSupport } from '../../definitions.ts';
import type { Reading } from '../../reading.ts';
import type { Placed } from '../../shape/shape.ts';
import type { Axis } from './axis.ts';
import { findPoint } from './place.ts';

type Hinges = BeamDefinition['hinges'];

/** The hinges of a beam from left to right; one at an end, at a support that holds rotation, or given twice is reported. */
export function readHinges(
  entries: readonly Placed<string>[],
  context: { readonly axis: Axis; readonly supports: readonly BeamSupport[] },
  reading: Reading,
): Hinges {
  const read = entries.flatMap((entry, index) => {
    const place = findPoint(entry, context.axis, reading);
    if (place === undefined) return [];
    const isTwice = entries.findIndex((other) => other.value === entry.value) < index;
    if (isTwice) {
      reading.report({
        code: 'hinge-twice',
        message: `\`${entry.value}\` is listed as a hinge already`,
        span: entry.span,
        hints: ['list each hinge once'],
      });
      return [];
    }
    reportMisplaced(entry, context, reading);
    return [{ point: entry.value, x: place.x, span: entry.span }];
  });
  return read.sort((one, other) => one.x - other.x);
}

function reportMisplaced(
  entry: Placed<string>,
  context: { readonly axis: Axis; readonly supports: readonly BeamSupport[] },
  reading: Reading,
): void {
  const { axis, supports } = context;
  const support = supports.find((one) => one.point === entry.value);
  const holdsRotation =
    support !== undefined &&
    (support.type === 'fixed' ||
      support.type === 'guide' ||
      support.rotation !== undefined);
  const isEnd =
    axis.whole &&
    [axis.points[0]?.name, axis.points.at(-1)?.name].includes(entry.value);
  if (holdsRotation)
    reading.report({
      code: 'hinge-at-fixed-support',
      message: `the support at \`${entry.value}\` holds rotation, and a hinge would let go of it`,
      span: entry.span,
      hints: ['make the support a pin or a roller, or take the hinge out'],
    });
  else if (isEnd)
    reading.report({
      code: 'hinge-at-end',
      message: `\`${entry.value}\` is an end of the beam, where the moment is 0 without a hinge`,
      span: entry.span,
      hints: ['take it out; a pin or a roller at an end turns freely'],
    });
}
