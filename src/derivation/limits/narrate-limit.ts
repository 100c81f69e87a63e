import {
  given,
  name,
  number,
  product,
  quotient,
  withConversion,
  type Expression,
  type Statement,
  type Symbol,
} from '../../equation/index.ts';
import {
  displayUnit,
  formatRatio,
  pureUnit,
  quantity,
  sameUnit,
} from '../../units/index.ts';
import { valueAt } from '../../statics/index.ts';
import type { MemberContext } from '../case-context.ts';
import { placeAtStation } from '../narrators/places.ts';
import { tidy, value } from '../printing.ts';
import type { LimitStep } from '../steps.ts';
import { chordOf, demandStatement, type StateOfSum } from './chord-statement.ts';
import type { JudgedLimit } from './judge-limits.ts';
import type { LimitSize } from './limit-size.ts';
import { spanName, type LimitSpan } from './limit-spans.ts';

/** Source of the doubled length of overhangs. */
export const doubledClause: string = 'IBC Table 1604.3, note';

/** One limit worked on one span: the deflection, the limit, and the one over the other. */
export function narrateLimit(
  context: MemberContext,
  limit: JudgedLimit,
  stateOf: StateOfSum,
): LimitStep {
  const { entry, text, span, greatest, size, ratio, passes, terms } = limit;
  const state = stateOf(terms, entry);
  const chord = state === undefined ? undefined : chordOf(context, limit, state);
  const withChord =
    chord === undefined || state === undefined
      ? limit
      : { ...limit, shares: fromState(limit, stateOf) };
  return {
    kind: 'limit',
    entry,
    text,
    span: spanName(span),
    isOverhang: span.kind === 'overhang',
    at: placeAtStation(context, greatest.x),
    ...(size.kind === 'share' && size.times === 2 ? { clause: doubledClause } : {}),
    isBound: state === undefined,
    ...(chord === undefined ? {} : { chord: chord.statement }),
    demand: demandStatement(context, withChord, chord?.si),
    capacity: capacityStatement(context, span, size),
    ratio: ratioStatement(context, limit),
    ratioText: formatRatio(ratio),
    passes,
  };
}

/** What each case gives at the station, not yet measured from the chord. */
function fromState(limit: JudgedLimit, stateOf: StateOfSum): JudgedLimit['shares'] {
  return limit.shares.map((share) => {
    const one = stateOf([{ case: share.case, factor: 1 }], share.case);
    const deflection = one?.displacement?.deflection;
    return deflection === undefined
      ? share
      : { ...share, si: valueAt(deflection, limit.greatest.x, 'left') };
  });
}

const lengthSymbol: Symbol = {
  letter: 'ℓ',
  meaning: 'length that a limit of deflection counts',
};
const allowedSymbol: Symbol = {
  letter: 'δ',
  subscript: 'all',
  meaning: 'limit of a deflection',
};

/** `δ_all = 2 (6 ft) (12 in/ft) / 360 = 0.4 in`. */
function capacityStatement(
  { printing }: MemberContext,
  span: LimitSpan,
  size: LimitSize,
): Statement {
  const unit = displayUnit(printing.system, 'deflection');
  const left = name(allowedSymbol);
  const found = tidy(printing, 'deflection', size.si);
  if (size.kind === 'length') {
    const isSame = sameUnit(size.given.unit, unit) && !size.given.compound;
    const same = isSame ? given(size.given) : found;
    return { lines: [{ left, chain: [{ sign: '=', of: same }], recheck: 'none' }] };
  }
  const length = tidy(printing, 'length', span.to - span.from);
  const counted: Expression = size.times === 2 ? product(number(2), length) : length;
  const symbolic = quotient(
    size.times === 2 ? product(number(2), name(lengthSymbol)) : name(lengthSymbol),
    number(size.divisor),
  );
  return {
    lines: [
      { left, chain: [{ sign: '=', of: symbolic }], recheck: 'none' },
      {
        chain: [
          {
            sign: '=',
            of: quotient(withConversion(counted, unit), number(size.divisor)),
          },
          { sign: '=', of: found },
        ],
      },
    ],
  };
}

/** The ratio with as many decimals as tell whether it fails. */
function ratioStatement(
  { printing }: MemberContext,
  { greatest, size, ratio }: JudgedLimit,
): Statement {
  const [, decimals = ''] = /\.(\d+)$/.exec(formatRatio(ratio)) ?? [];
  const isClose = formatRatio(ratio).startsWith('>');
  return {
    lines: [
      {
        left: quotient(
          value(printing, 'deflection', Math.abs(greatest.value)),
          tidy(printing, 'deflection', size.si),
        ),
        chain: [
          {
            sign: '=',
            of: {
              kind: 'figure',
              quantity: quantity(ratio, pureUnit),
              unit: pureUnit,
              print: { kind: 'decimals', count: isClose ? 12 : decimals.length },
            },
          },
        ],
        boxed: true,
      },
    ],
  };
}
