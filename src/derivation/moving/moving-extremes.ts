import {
  extremesOf,
  valueAt,
  type RolledCase,
  type Side,
} from '../../statics/index.ts';
import type { CaseContext } from '../case-context.ts';
import { placeAtStation } from '../narrators/places.ts';
import { value } from '../printing.ts';
import type { MovingStep } from '../steps/moving-steps.ts';

/** The greatest and least shear and moment that the trains alone cause, each with its place and that of the axles. */
export function movingExtremes(context: CaseContext, { part }: RolledCase): MovingStep {
  const rows = (['moment', 'shear'] as const).flatMap((of) =>
    (['max', 'min'] as const).flatMap((sense) => {
      const curve = part[of][sense];
      const { value: si, x } = extremesOf(curve)[sense];
      if (si === 0) return [];
      const apart = (at: Side): number => Math.abs(valueAt(curve, x, at) - si);
      const side = apart('left') <= apart('right') ? 'left' : 'right';
      const place = part.arrangementAt({ of, sense, x, side }).trains[0];
      return [
        {
          what: `${of}-${sense}` as const,
          value: value(context.printing, of === 'moment' ? 'moment' : 'force', si),
          at: placeAtStation(context, x),
          direction: place?.direction ?? 'right',
          axles: (place?.axles ?? []).map(({ index, x: at }) => ({
            number: index + 1,
            at: placeAtStation(context, at),
          })),
        },
      ];
    }),
  );
  return { kind: 'moving-extremes', case: context.mark, rows };
}
