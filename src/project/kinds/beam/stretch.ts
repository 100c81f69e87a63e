import type { Span } from '../../../diagnostics/index.ts';
import type { BeamPlace } from '../../definitions.ts';
import type { Reading } from '../../reading.ts';
import type { Placed } from '../../shape/shape.ts';
import type { Axis } from './axis.ts';
import type { Stretch } from './load-line.ts';
import { findPoint, readPlace } from './place.ts';
import { listed } from '../../shape/listed.ts';

/** Where a load over a length begins and ends. */
export interface Reach {
  readonly start: BeamPlace;
  readonly end: BeamPlace;
}

/** Reads `from` and `to`, or `span`; what is left out is the end of the beam. `at` is the place of the whole entry. */
export function readStretch(
  stretch: Stretch,
  at: { readonly axis: Axis; readonly span: Span },
  reading: Reading,
): Reach | undefined {
  const { axis } = at;
  if (stretch.span !== undefined && (stretch.from ?? stretch.to) !== undefined) {
    reading.report({
      code: 'keys-together',
      message: '`span` cannot stand beside `from` or `to`',
      span: stretch.span.span,
      hints: ['keep `span`, or `from` and `to`'],
    });
    return undefined;
  }
  if (stretch.span !== undefined)
    return checkedReach(
      readSpan(stretch.span, axis, reading),
      stretch.span.span,
      reading,
    );
  const start =
    stretch.from === undefined
      ? endOf(axis, 0)
      : readPlace(stretch.from, axis, reading);
  const end =
    stretch.to === undefined ? endOf(axis, -1) : readPlace(stretch.to, axis, reading);
  const reach = start === undefined || end === undefined ? undefined : { start, end };
  return checkedReach(reach, (stretch.to ?? stretch.from)?.span ?? at.span, reading);
}

function endOf(axis: Axis, index: 0 | -1): BeamPlace | undefined {
  const point = axis.whole ? axis.points.at(index) : undefined;
  return point === undefined ? undefined : { x: point.x, point: point.name };
}

function checkedReach(
  reach: Reach | undefined,
  span: Span,
  reading: Reading,
): Reach | undefined {
  if (reach === undefined || reach.start.x < reach.end.x) return reach;
  const isPoint = reach.start.x === reach.end.x;
  reading.report({
    code: isPoint ? 'no-length' : 'runs-backwards',
    message: isPoint
      ? 'it begins and ends at one place, so it has no length'
      : 'it ends left of where it begins',
    span,
    hints: [isPoint ? 'give it a length, or write a point load' : 'begin at the left'],
  });
  return undefined;
}

// Names of points may hold dashes themselves, so every dash is tried.
function readSpan(
  span: Placed<string>,
  axis: Axis,
  reading: Reading,
): Reach | undefined {
  const written = span.value;
  const splits = [...written.matchAll(/\s*[-–]\s*/g)].map((dash) => ({
    from: written.slice(0, dash.index).trim(),
    to: written.slice(dash.index + dash[0].length).trim(),
  }));
  const fitting = splits.filter(
    ({ from, to }) => axis.names.has(from) && axis.names.has(to),
  );
  const [only, second] = fitting;
  if (only !== undefined && second === undefined) {
    const start = findPoint({ value: only.from, span: span.span }, axis, reading);
    const end = findPoint({ value: only.to, span: span.span }, axis, reading);
    return start === undefined || end === undefined ? undefined : { start, end };
  }
  reading.report({
    code: second === undefined ? 'unknown-span' : 'reads-two-ways',
    message:
      second === undefined
        ? `\`${written}\` is no span between two points of the beam`
        : `\`${written}\` reads as ${fitting.map(({ from, to }) => `\`${from}\` to \`${to}\``).join(' and as ')}`,
    span: span.span,
    hints: [
      second === undefined
        ? `write two of the points ${listed(axis.names)} with a dash between`
        : 'write `from` and `to`',
    ],
  });
  return undefined;
}
