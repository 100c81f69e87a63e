import { nearest } from '../../../diagnostics/index.ts';
import {
  dimensions,
  displayUnit,
  parseQuantity,
  type GivenQuantity,
} from '../../../units/index.ts';
import type { BeamPlace } from '../../definitions.ts';
import type { Reading } from '../../reading.ts';
import { placed, type Placed, type Shape } from '../../shape/shape.ts';
import { text } from '../../shape/text.ts';
import type { Axis } from './axis.ts';
import { listed } from '../../shape/listed.ts';

/** A place as written, not looked up yet. */
export const place: Shape<Placed<string>> = placed({
  ...text,
  expects: "a point's name or a station",
});

/** The point of a name; undefined with a report where the beam has no such point, without one where its station could not be read. */
export function findPoint(
  name: Placed<string>,
  axis: Axis,
  reading: Reading,
): BeamPlace | undefined {
  const point = axis.byName.get(name.value);
  if (point !== undefined) return { x: point.x, point: point.name };
  if (!axis.names.has(name.value)) reportUnknownPoint(name, axis, reading);
  return undefined;
}

/** A place as written: the name of a point, which wins, or a station. */
export function readPlace(
  written: Placed<string>,
  axis: Axis,
  reading: Reading,
): BeamPlace | undefined {
  if (axis.names.has(written.value)) return findPoint(written, axis, reading);
  const unitOfZero = displayUnit(reading.units, 'length');
  const parsed = parseQuantity(written.value, dimensions.length, unitOfZero);
  if (parsed.problem === undefined && !parsed.plus)
    return stationPlace({ given: parsed.quantity, span: written.span }, axis, reading);
  if (parsed.problem === undefined) {
    reportPlus(written, reading);
    return undefined;
  }
  // A word without digits was meant as a name; anything else as a station.
  if (!/\d/.test(written.value) || /^\p{L}+\d*$/u.test(written.value))
    reportUnknownPoint(written, axis, reading);
  else
    reading.report({
      code: 'not-a-place',
      message: `\`${written.value}\` is neither a point nor a station: ${parsed.problem.message}`,
      span: written.span,
      hints: [...parsed.problem.hints, pointsHint(axis)],
    });
  return undefined;
}

function reportPlus(written: Placed<string>, reading: Reading): void {
  reading.report({
    code: 'not-a-place',
    message: `\`${written.value}\` counts from a point before it, and there is none here`,
    span: written.span,
    hints: ['give the station from the origin of the axis, or name a point'],
  });
}

function stationPlace(
  station: { readonly given: GivenQuantity; readonly span: Placed<string>['span'] },
  axis: Axis,
  reading: Reading,
): BeamPlace | undefined {
  if (!axis.whole) return undefined;
  const { given, span } = station;
  const point = axis.points.find((one) => Math.abs(one.x - given.si) <= axis.tolerance);
  if (point !== undefined) return { x: point.x, point: point.name, given };
  const [first, last] = [axis.points[0], axis.points.at(-1)];
  if (
    first !== undefined &&
    last !== undefined &&
    (given.si < first.x || given.si > last.x)
  ) {
    reading.report({
      code: 'off-the-member',
      message: `the station lies ${given.si < first.x ? 'left' : 'right'} of the beam, which runs from \`${first.name}\` to \`${last.name}\``,
      span,
      hints: ['give a station on the beam, or lengthen the beam'],
    });
    return undefined;
  }
  return { x: given.si, given };
}

/** Reports a name that no point of the beam has. */
export function reportUnknownPoint(
  name: Placed<string>,
  axis: Axis,
  reading: Reading,
): void {
  const near = nearest(name.value, axis.names);
  reading.report({
    code: 'unknown-point',
    message: `the beam has no point \`${name.value}\``,
    span: name.span,
    hints: [near === undefined ? pointsHint(axis) : `write \`${near}\``],
  });
}

function pointsHint(axis: Axis): string {
  return `points of this beam: ${listed(axis.names)}`;
}
