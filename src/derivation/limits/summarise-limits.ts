import { formatRatio } from '../../units/index.ts';
import type { MemberContext } from '../case-context.ts';
import type { Summary } from '../derivation.ts';
import { valueText } from '../printing.ts';
import type { JudgedLimits } from './judge-limits.ts';
import { spanName } from './limit-spans.ts';
import { worstOf } from './narrate-limits.ts';

/** What the index says of a member's limits: the one that comes out worst, how many fail, how many are not judged. */
export function summariseLimits(
  { printing }: MemberContext,
  { judged, unjudged }: JudgedLimits,
): Pick<Summary, 'limit' | 'failing' | 'unjudged'> {
  const worst = worstOf(judged);
  return {
    ...(worst === undefined
      ? {}
      : {
          limit: {
            entry: worst.entry,
            span: spanName(worst.span),
            demand: valueText(printing, 'deflection', Math.abs(worst.greatest.value)),
            limit: valueText(printing, 'deflection', worst.size.si),
            text: worst.text,
            ratio: formatRatio(worst.ratio),
            passes: worst.passes,
          },
        }),
    failing: judged.filter(({ passes }) => !passes).length,
    unjudged: unjudged.length,
  };
}
