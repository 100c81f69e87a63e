import type { BeamSupport } from '../../definitions.ts';
import type { Premises } from '../../premises.ts';
import type { Reading } from '../../reading.ts';
import type { Named } from '../../shape/map-of.ts';
import type { Placed } from '../../shape/shape.ts';
import type { Axis } from './axis.ts';
import { theCase } from './cases.ts';
import { findPoint } from './place.ts';
import type { SupportEntry } from './support-entry.ts';

/** The supports of a beam from left to right, each at a point that exists. */
export function readSupports(
  entries: Placed<readonly Named<SupportEntry>[]>,
  context: { readonly axis: Axis; readonly premises: Premises },
  reading: Reading,
): readonly BeamSupport[] {
  if (entries.value.length === 0 && !reading.hasFailed())
    reading.report({
      code: 'no-supports',
      message: 'nothing holds the beam',
      span: entries.span,
      hints: ['write supports: { A: pin, B: roller }'],
    });
  const read = entries.value.flatMap((entry) => {
    const place = findPoint(entry.name, context.axis, reading);
    const support =
      entry.value === undefined
        ? undefined
        : readSupport(entry, entry.value, { ...context, reading });
    return place === undefined || support === undefined
      ? []
      : [{ x: place.x, support }];
  });
  return read.sort((one, other) => one.x - other.x).map(({ support }) => support);
}

function readSupport(
  entry: Named<SupportEntry>,
  written: SupportEntry,
  context: { readonly premises: Premises; readonly reading: Reading },
): BeamSupport | undefined {
  const { settlement, case: own, ...rest } = written;
  const base = { ...rest, point: entry.name.value, span: entry.at };
  if (settlement === undefined) return base;
  const mark = theCase(own, settlement.span, context.premises, context.reading);
  return mark === undefined
    ? undefined
    : { ...base, settlement: { value: settlement.value, case: mark } };
}
