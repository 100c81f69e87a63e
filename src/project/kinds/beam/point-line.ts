import type { BeamLoad } from '../../definitions.ts';
import { spreadCases } from './cases.ts';
import { down } from './direction.ts';
import { basesOf } from './load-base.ts';
import type { LoadContext } from './load-context.ts';
import type { LoadLine } from './load-line.ts';
import { readPlace } from './place.ts';

/** Point loads of one line: one for each case and place. */
export function readPointLine(
  line: Extract<LoadLine, { kind: 'point' }>,
  context: LoadContext,
): readonly BeamLoad[] {
  const { axis, premises, reading, nextId } = context;
  const sizes = spreadCases(line.point, line.case, premises, reading);
  const places = line.at.flatMap((at) => readPlace(at, axis, reading) ?? []);
  return basesOf(line, sizes, line.lineSpan, context).flatMap(({ base, value }) =>
    places.map((at) => ({
      ...base,
      id: nextId(),
      kind: 'point',
      at,
      size: value,
      direction: line.direction ?? down,
    })),
  );
}
