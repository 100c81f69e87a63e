import {
  exactly,
  name,
  number,
  product,
  quotient,
  type Expression,
  type StatementLine,
} from '../../equation/index.ts';
import { displayUnit } from '../../units/index.ts';
import type { Support } from '../../statics/index.ts';
import type { CaseContext } from '../case-context.ts';
import { tidy, value, valueText } from '../printing.ts';
import { momentSymbol, reactionSymbol } from '../symbols.ts';
import { agree, agreementTolerance, type CheckOutcome } from './check-outcome.ts';
import { isSymmetric, simpleSpan, type SimpleSpan } from './simple-span.ts';

/** Checks that are theorems for a beam on two simple supports; each runs only where its conditions hold. */
export function spanChecks(context: CaseContext): readonly CheckOutcome[] {
  const span = simpleSpan(context);
  if (span === undefined || span.loads.length === 0) return [];
  return [
    ...symmetryCheck(context, span),
    ...distancesCheck(context, span),
    ...nearerCheck(context, span),
    ...boundsCheck(context, span),
    ...momentBoundCheck(context, span),
  ];
}

/** The vertical reaction at a support: its symbol, value and figure. */
function vertical(
  context: CaseContext,
  support: Support,
): { si: number; symbol: Expression; figure: Expression } {
  const si =
    context.result.reactions.find(({ point }) => point === support.point)?.y ?? 0;
  const symbol = name(
    reactionSymbol(support.point, { kind: 'force', direction: [0, 1] }),
  );
  return { si, symbol, figure: value(context.printing, 'force', si) };
}

function symmetryCheck(
  context: CaseContext,
  span: SimpleSpan,
): readonly CheckOutcome[] {
  if (!isSymmetric(context.structure, span)) return [];
  const [a, b] = [vertical(context, span.left), vertical(context, span.right)];
  return [
    {
      fact: {
        kind: 'check',
        check: 'symmetry',
        facts: { left: span.left.point, right: span.right.point },
        statement: {
          lines: [
            {
              left: a.symbol,
              chain: [
                { sign: '=', of: b.symbol },
                { sign: '=', of: a.figure },
              ],
              recheck: 'none',
            },
          ],
        },
      },
      holds: agree(a.si, b.si, Math.abs(a.si)),
      finding: `a symmetric beam would have unequal reactions ${valueText(context.printing, 'force', a.si)} and ${valueText(context.printing, 'force', b.si)}`,
    },
  ];
}

/** One downward load: each support's share is as the opposite distance, so the products of reaction and own distance agree. */
function distancesCheck(
  context: CaseContext,
  span: SimpleSpan,
): readonly CheckOutcome[] {
  const { downward, isBetween, loads, left, right } = span;
  if (downward === undefined || !isBetween || loads.length !== 1) return [];
  if (isSymmetric(context.structure, span)) return [];
  const [a, b] = [vertical(context, left), vertical(context, right)];
  const [toA, toB] = [downward.centroid - left.x, right.x - downward.centroid];
  const [ma, mb] = [a.si * toA, b.si * toB];
  const line = (of: typeof a, arm: number, moment: number): StatementLine => ({
    left: product(of.figure, tidy(context.printing, 'length', arm)),
    chain: [{ sign: '=', of: value(context.printing, 'moment', moment) }],
  });
  return [
    {
      fact: {
        kind: 'check',
        check: 'opposite-distances',
        facts: { left: left.point, right: right.point },
        statement: { lines: [line(a, toA, ma), line(b, toB, mb)] },
      },
      holds: agree(ma, mb, Math.abs(ma)),
      finding: `the shares at ${left.point} and ${right.point} are not as the opposite distances`,
    },
  ];
}

function nearerCheck(context: CaseContext, span: SimpleSpan): readonly CheckOutcome[] {
  const { downward, isBetween, left, right } = span;
  if (downward === undefined || !isBetween) return [];
  const middle = (left.x + right.x) / 2;
  const margin = 1e-6 * (right.x - left.x);
  if (Math.abs(downward.centroid - middle) <= margin) return [];
  const [near, far] = downward.centroid < middle ? [left, right] : [right, left];
  const [more, less] = [vertical(context, near), vertical(context, far)];
  return [
    {
      fact: {
        kind: 'check',
        check: 'nearer-takes-more',
        facts: { near: near.point, far: far.point },
        statement: {
          lines: [
            {
              left: more.symbol,
              chain: [
                { sign: '=', of: more.figure },
                { sign: '>', of: less.figure },
              ],
              recheck: 'none',
            },
          ],
        },
      },
      holds: more.si > less.si,
      finding: `the support at ${near.point} is nearer to the load and would take less`,
    },
  ];
}

function boundsCheck(
  context: CaseContext,
  { downward, isBetween, left, right }: SimpleSpan,
): readonly CheckOutcome[] {
  if (downward === undefined || !isBetween) return [];
  const total = value(context.printing, 'force', downward.total);
  const zero = exactly(0, displayUnit(context.printing.system, 'force'));
  const both = [vertical(context, left), vertical(context, right)];
  const slack = agreementTolerance * downward.total;
  return [
    {
      fact: {
        kind: 'check',
        check: 'between-bounds',
        facts: { left: left.point, right: right.point },
        statement: {
          lines: both.map(({ figure }) => ({
            left: zero,
            chain: [
              { sign: '≤', of: figure },
              { sign: '≤', of: total },
            ],
            recheck: 'none' as const,
          })),
        },
      },
      holds: both.every(({ si }) => si >= -slack && si <= downward.total + slack),
      finding: 'a reaction lies outside the bounds 0 and the whole load',
    },
  ];
}

/** All load at midspan would be the worst: no moment passes W L / 4. */
function momentBoundCheck(
  context: CaseContext,
  { downward, isBetween, left, right }: SimpleSpan,
): readonly CheckOutcome[] {
  if (downward === undefined || !isBetween) return [];
  const { printing, result } = context;
  const length = right.x - left.x;
  const bound = (downward.total * length) / 4;
  const { max, min } = result.extremes.moment;
  const worked = quotient(
    product(value(printing, 'force', downward.total), tidy(printing, 'length', length)),
    number(4),
  );
  const symbol = {
    ...momentSymbol,
    subscript: 'max',
    meaning: 'greatest bending moment',
  };
  return [
    {
      fact: {
        kind: 'check',
        check: 'moment-bound',
        facts: { total: valueText(printing, 'force', downward.total) },
        statement: {
          lines: [
            {
              left: name(symbol),
              chain: [
                { sign: '=', of: value(printing, 'moment', max.value) },
                { sign: '≤', of: worked },
              ],
              recheck: 'none',
            },
            {
              chain: [{ sign: '=', of: value(printing, 'moment', bound) }],
              recheck: 'none',
            },
          ],
        },
      },
      holds:
        max.value <= bound * (1 + agreementTolerance) &&
        min.value >= -agreementTolerance * bound,
      finding: `the greatest moment ${valueText(printing, 'moment', max.value)} passes the bound ${valueText(printing, 'moment', bound)}`,
    },
  ];
}
