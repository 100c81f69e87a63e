import type { BeamPicture } from '../figure-spec.ts';
import { besidePoint } from '../labels/candidates.ts';
import type { Wish } from '../labels/settle-labels.ts';
import { setSmall } from '../labels/small-label.ts';
import type { StripSetting } from './strip-setting.ts';

/** How far a name stands from its point: close beside it, beside a support's triangle, beside its ground. */
const gapsBeside = [3.6, 7.4, 12] as const;
const gapBelow = 3.4;
const gapAbove = 3;

/** The names of the points, close under the member beside what stands there. */
export function namePoints(
  points: BeamPicture['points'],
  setting: StripSetting,
): readonly Wish[] {
  return points.map((point): Wish => {
    const label = setSmall({ kind: 'text', text: point.name }, setting);
    const at = { x: setting.stations.xOf(point.x), y: 0 };
    const isRight = at.x > (setting.ends.left + setting.ends.right) / 2;
    const below = isRight ? (['se', 'sw'] as const) : (['sw', 'se'] as const);
    const above = isRight ? (['ne', 'nw'] as const) : (['nw', 'ne'] as const);
    return {
      label,
      candidates: [
        besidePoint(at, 's', label, { x: 0, y: gapBelow + 0.6 }),
        ...gapsBeside.flatMap((gap) =>
          below.map((side) => besidePoint(at, side, label, { x: gap, y: gapBelow })),
        ),
        ...gapsBeside
          .slice(0, 2)
          .flatMap((gap) =>
            above.map((side) => besidePoint(at, side, label, { x: gap, y: gapAbove })),
          ),
        besidePoint(at, 's', label, { x: 0, y: 17 }),
      ],
      anchors: [{ x: at.x, y: 1 }],
      outward: 'down',
    };
  });
}
