import { functionOf, name, sum, type Term } from '../../equation/index.ts';
import { segmentsOf, valueAt } from '../../statics/index.ts';
import { pointAt, type CaseContext } from '../case-context.ts';
import { momentFromRight } from '../moment-from-right.ts';
import { tidy, value, valueText } from '../printing.ts';
import { momentSymbol } from '../symbols.ts';
import { agree, type CheckOutcome } from './check-outcome.ts';

/** The areas of the shear diagram, and the couples, carry the moment from its first value to its last. */
export function areaCheck(context: CaseContext): readonly CheckOutcome[] {
  const { printing, result } = context;
  const segments = segmentsOf(result);
  const start = segments[0]?.moment.start ?? 0;
  const end = segments.at(-1)?.moment.end ?? 0;
  const changes = segments.flatMap(({ shearArea, momentJump }, index) => [
    shearArea,
    ...(index < segments.length - 1 && momentJump !== 0 ? [momentJump] : []),
  ]);
  const total = changes.reduce((all, change) => all + change, start);
  const scale = changes.reduce((all, change) => all + Math.abs(change), Math.abs(start));
  const terms = [...(start === 0 ? [] : [start]), ...changes.filter((change) => change !== 0)].map(
    (si): Term => ({ sign: si < 0 ? -1 : 1, of: value(printing, 'moment', Math.abs(si)) }),
  );
  if (terms.length === 0) return [];
  return [
    {
      fact: {
        kind: 'check',
        check: 'diagram-closes',
        facts: { start: start === 0 ? '' : 'yes', end: valueText(printing, 'moment', end) },
        statement: {
          lines: [
            {
              left: sum(...terms),
              chain: [{ sign: '=', of: value(printing, 'moment', agree(total, 0, scale) ? 0 : end) }],
              recheck: 'closure',
            },
          ],
        },
      },
      holds: agree(total, end, scale),
      finding: `the areas of the shear diagram end at ${valueText(printing, 'moment', total)} instead of ${valueText(printing, 'moment', end)}`,
    },
  ];
}

/** No hinge passes a moment. */
export function hingeChecks(context: CaseContext): readonly CheckOutcome[] {
  const { structure, result, printing } = context;
  const { max, min } = result.extremes.moment;
  const scale = Math.max(Math.abs(max.value), Math.abs(min.value));
  return structure.hinges.map(({ point, x }) => {
    const left = valueAt(result.moment, x, 'left');
    const right = valueAt(result.moment, x, 'right');
    // A couple at the hinge stands on one side of it; the other side is free of moment.
    const at = Math.min(Math.abs(left), Math.abs(right));
    return {
      fact: {
        kind: 'check',
        check: 'hinge-moment',
        facts: { point },
        statement: {
          lines: [
            {
              left: functionOf(momentSymbol, tidy(printing, 'length', x)),
              chain: [{ sign: '=', of: value(printing, 'moment', 0) }],
              recheck: 'none',
            },
          ],
        },
      },
      holds: agree(at, 0, scale),
      finding: `the hinge at ${point} would pass ${valueText(printing, 'moment', at)}`,
    };
  });
}

/** The extreme moment found again from everything right of its station. */
export function cutFromRight(context: CaseContext): readonly CheckOutcome[] {
  const { result, printing, structure } = context;
  const { max, min } = result.extremes.moment;
  const extreme = Math.abs(max.value) >= Math.abs(min.value) ? max : min;
  if (extreme.value === 0) return [];
  const fromLeft = valueAt(result.moment, extreme.x, 'left');
  const fromRight = valueAt(result.moment, extreme.x, 'right');
  const isLeft = Math.abs(fromLeft - extreme.value) < Math.abs(fromRight - extreme.value);
  const side = isLeft ? 'left' : 'right';
  // At the right end nothing is left beyond the cut; the areas have said what the moment is there.
  if (extreme.x === structure.points.at(-1)?.x) return [];
  const { expression, total, scale } = momentFromRight(context, extreme.x, side);
  return [
    {
      fact: {
        kind: 'check',
        check: 'cut-from-right',
        facts: { point: pointAt(structure, extreme.x) ?? '' },
        statement: {
          lines: [
            {
              left: functionOf(momentSymbol, tidy(printing, 'length', extreme.x)),
              chain: [{ sign: '=', of: expression }],
              recheck: 'none',
            },
            { chain: [{ sign: '=', of: value(printing, 'moment', extreme.value) }] },
          ],
        },
      },
      holds: agree(total, extreme.value, scale),
      finding: `the part right of ${valueText(printing, 'length', extreme.x)} gives ${valueText(printing, 'moment', total)} instead of ${valueText(printing, 'moment', extreme.value)}`,
    },
  ];
}
