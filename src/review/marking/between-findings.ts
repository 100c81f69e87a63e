import { sameButAngle } from '../../units/index.ts';
import { isClose, isCloseIn } from '../matching/closeness.ts';
import type { Finding } from '../verdict.ts';
import type { WrittenConclusion } from './conclude.ts';
import { displayOf, showAs } from './shown-as.ts';
import type { StepRequest } from './step-mark.ts';

/** What stands between the symbol of a conclusion and its value must come to the value, link by link. */
export function betweenFindings(
  request: StepRequest,
  { between, value, dimension, unit }: WrittenConclusion,
): readonly Finding[] {
  return between.flatMap((link, index): readonly Finding[] => {
    const next = between[index + 1] ?? { text: undefined, value, dimension };
    const { dimension: own } = link;
    if (own === undefined || next.dimension === undefined) return [];
    if (!sameButAngle(own, next.dimension))
      return [
        {
          kind: 'unit',
          term: link.text,
          message: 'This does not measure what stands after it.',
        },
      ];
    const isSame =
      isClose(next.value, link.value) || isCloseIn(unit, next.value, link.value);
    if (isSame) return [];
    const show = showAs(request, displayOf({ dimension: own }));
    return [
      {
        kind: 'arithmetic',
        term: link.text,
        message: `This comes to ${show(link.value)}, not ${show(next.value)}.`,
      },
    ];
  });
}
