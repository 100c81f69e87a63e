import { functionOf, sum, type Expression, type Term } from '../../equation/index.ts';
import { segmentsOf, valueAt } from '../../statics/index.ts';
import { loadsOfCase, pointAt, type CaseContext } from '../case-context.ts';
import { momentFromRight } from '../moment-from-right.ts';
import { tidy, value, valueText } from '../printing.ts';
import { shearAreas } from '../shear-areas.ts';
import { momentSymbol } from '../symbols.ts';
import { agree, type CheckOutcome } from './check-outcome.ts';

/** What the moment changes by from its value just right of the left end: areas of one sign and jumps, up to just left of a station. */
function changesUpTo(context: CaseContext, x: number): readonly number[] {
  const segments = segmentsOf(context.result);
  const margin = 1e-9 * ((segments.at(-1)?.to ?? 0) - (segments[0]?.from ?? 0));
  return shearAreas(segments).flatMap(({ to, area, segment }) => {
    if (to > x + margin) return [];
    const isPast = to === segment.to && to < x - margin && segment.momentJump !== 0;
    return isPast ? [area, segment.momentJump] : [area];
  });
}

function sumOfChanges(
  { printing }: CaseContext,
  changes: readonly number[],
): Expression {
  const terms = changes
    .filter((change) => change !== 0)
    .map((si): Term => ({
      sign: si < 0 ? -1 : 1,
      of: value(printing, 'moment', Math.abs(si)),
    }));
  return terms.length === 0 ? value(printing, 'moment', 0) : sum(...terms);
}

const totalOf = (changes: readonly number[]): number =>
  changes.reduce((all, change) => all + change, 0);
const scaleOf = (changes: readonly number[]): number =>
  changes.reduce((all, change) => all + Math.abs(change), 0);

/** The areas of the shear diagram, and the couples, carry the moment from its first value to its last. */
export function areaCheck(context: CaseContext): readonly CheckOutcome[] {
  const { printing, result } = context;
  const segments = segmentsOf(result);
  const start = segments[0]?.moment.start ?? 0;
  const end = segments.at(-1)?.moment.end ?? 0;
  const changes = [start, ...changesUpTo(context, segments.at(-1)?.to ?? 0)];
  const [total, scale] = [totalOf(changes), scaleOf(changes)];
  if (scale === 0) return [];
  const hasCouples = segments.slice(0, -1).some(({ momentJump }) => momentJump !== 0);
  return [
    {
      fact: {
        kind: 'check',
        check: 'diagram-closes',
        facts: {
          start: start === 0 ? '' : 'yes',
          couples: hasCouples ? 'yes' : '',
          end: valueText(printing, 'moment', end),
        },
        statement: {
          lines: [
            {
              left: sumOfChanges(context, changes),
              chain: [
                {
                  sign: '=',
                  of: value(printing, 'moment', agree(total, 0, scale) ? 0 : end),
                },
              ],
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

/** No hinge passes a moment: the areas and couples up to it leave none. A couple at the hinge counts on the piece that carries it. */
export function hingeChecks(context: CaseContext): readonly CheckOutcome[] {
  const { structure, result, printing } = context;
  const start = segmentsOf(result)[0]?.moment.start ?? 0;
  return structure.hinges.map(({ point, x }) => {
    const onLeft = loadsOfCase(structure, context.mark).flatMap((load) =>
      load.kind === 'couple' && load.x === x && load.side !== 'right' ? [-load.m] : [],
    );
    const changes = [start, ...changesUpTo(context, x), ...onLeft];
    const total = totalOf(changes);
    return {
      fact: {
        kind: 'check',
        check: 'hinge-moment',
        facts: { point },
        statement: {
          lines: [
            {
              left: functionOf(momentSymbol, tidy(printing, 'length', x)),
              chain: [{ sign: '=', of: sumOfChanges(context, changes) }],
              recheck: 'none',
            },
            {
              chain: [{ sign: '=', of: value(printing, 'moment', 0) }],
              recheck: 'closure',
            },
          ],
        },
      },
      holds: agree(total, 0, Math.max(scaleOf(changes), momentScale(context))),
      finding: `the hinge at ${point} would pass ${valueText(printing, 'moment', total)}`,
    };
  });
}

function momentScale({ result }: CaseContext): number {
  const { max, min } = result.extremes.moment;
  return Math.max(Math.abs(max.value), Math.abs(min.value));
}

/** The extreme moment found again from everything right of its station. */
export function cutFromRight(context: CaseContext): readonly CheckOutcome[] {
  const { result, printing, structure } = context;
  const { max, min } = result.extremes.moment;
  const extreme = Math.abs(max.value) >= Math.abs(min.value) ? max : min;
  if (extreme.value === 0) return [];
  const fromLeft = valueAt(result.moment, extreme.x, 'left');
  const fromRight = valueAt(result.moment, extreme.x, 'right');
  const isLeft =
    Math.abs(fromLeft - extreme.value) < Math.abs(fromRight - extreme.value);
  const side = isLeft ? 'left' : 'right';
  const jumps = !agree(fromLeft, fromRight, Math.abs(extreme.value));
  // At the right end nothing is left beyond the cut; the areas have said what the moment is there.
  if (extreme.x === structure.points.at(-1)?.x) return [];
  const { expression, total, scale } = momentFromRight(context, extreme.x, side);
  return [
    {
      fact: {
        kind: 'check',
        check: 'cut-from-right',
        facts: { point: pointAt(structure, extreme.x) ?? '', side: jumps ? side : '' },
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
