import type { BeamDefinition } from '../../definitions.ts';
import type { Reading } from '../../reading.ts';
import { present } from '../../shape/present.ts';
import type { Placed } from '../../shape/shape.ts';
import type { Axis } from './axis.ts';
import type { BeamFile } from './beam-file.ts';
import { findPoint } from './place.ts';

type Bracing = NonNullable<BeamDefinition['bracing']>;

/** `bracing` in words for print; the points that it names must exist. */
export function readBracing(
  written: NonNullable<BeamFile['bracing']>,
  axis: Axis,
  reading: Reading,
): Bracing {
  const line = (braced: readonly Placed<string>[] | undefined): string | undefined => {
    const points = (braced ?? []).filter(({ value }) => value !== 'continuous');
    for (const point of points) findPoint(point, axis, reading);
    return braced?.map(({ value }) => value).join(', ');
  };
  return present<Bracing>({ top: line(written.top), bottom: line(written.bottom) });
}
