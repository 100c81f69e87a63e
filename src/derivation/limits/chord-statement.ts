import {
  exactly,
  name,
  product,
  quotient,
  sum,
  type Expression,
  type Statement,
  type StatementLine,
  type Symbol,
  type Term,
} from '../../equation/index.ts';
import { pureUnit } from '../../units/index.ts';
import { valueAt, type BeamResult } from '../../statics/index.ts';
import { deflectionAt } from '../displacements/stiffness-symbols.ts';
import type { MemberContext } from '../case-context.ts';
import { tidy, value } from '../printing.ts';
import type { JudgedLimit } from './judge-limits.ts';

/** The state of a sum of cases; undefined where one of them has none. */
export type StateOfSum = (
  terms: JudgedLimit['terms'],
  mark: string,
) => BeamResult | undefined;

const chordSymbol: Symbol = {
  letter: 'v',
  subscript: 'c',
  meaning:
    'what a deflection is measured from: chord of the displaced supports, or the displaced support',
};

/** The chord at the station of a deflection, from the supports' movements; nothing where these stand still. */
export function chordOf(
  context: MemberContext,
  { span, greatest }: JudgedLimit,
  state: BeamResult,
): { readonly si: number; readonly statement: Statement } | undefined {
  const deflection = state.displacement?.deflection;
  if (deflection === undefined) return undefined;
  const size = Math.max(
    ...span.supports.map((x) => Math.abs(valueAt(deflection, x, 'left'))),
  );
  const whole = state.displacement?.extremes;
  const most = Math.max(
    Math.abs(whole?.max.value ?? 0),
    Math.abs(whole?.min.value ?? 0),
  );
  if (size <= 1e-12 * most || size === 0) return undefined;
  const [from = span.from, to] = span.supports;
  const first = valueAt(deflection, from, 'left');
  const last = to === undefined ? first : valueAt(deflection, to, 'left');
  const reach = to === undefined ? 0 : (greatest.x - from) / (to - from);
  const si = first + (last - first) * reach;
  const { printing } = context;
  const moved = (of: number): Expression => value(printing, 'deflection', of);
  const supports: readonly StatementLine[] = span.supports.map((x) => ({
    left: deflectionAt(context, x),
    chain: [{ sign: '=', of: moved(valueAt(deflection, x, 'left')) }],
    recheck: 'none',
  }));
  const along: readonly Term[] =
    to === undefined || last === first
      ? [{ sign: 1, of: moved(first) }]
      : [
          ...(first === 0 ? [] : [{ sign: 1, of: moved(first) } as const]),
          {
            sign: 1,
            of: quotient(
              product(
                first === 0
                  ? moved(last)
                  : sum({ sign: 1, of: moved(last) }, { sign: -1, of: moved(first) }),
                stationFrom(context, greatest.x, from),
              ),
              tidy(printing, 'length', to - from),
            ),
          },
        ];
  return {
    si,
    statement: {
      lines: [
        ...supports,
        {
          left: name(chordSymbol),
          chain: [
            { sign: '=', of: sum(...along) },
            { sign: '=', of: moved(si) },
          ],
        },
      ],
    },
  };
}

function stationFrom({ printing }: MemberContext, x: number, from: number): Expression {
  return tidy(printing, 'length', x - from);
}

const measuredSymbol: Symbol = {
  letter: 'δ',
  meaning: 'deflection measured from the displaced supports, up positive',
};

/** `δ = v − v_c`, with v as the sum of what the cases give at the station. */
export function demandStatement(
  context: MemberContext,
  { shares, greatest, terms }: JudgedLimit,
  chord: number | undefined,
): Statement {
  const { printing } = context;
  const moved = (of: number): Expression => value(printing, 'deflection', of);
  const isSum = terms.length > 1 || terms.some(({ factor }) => factor !== 1);
  const total = greatest.value + (chord ?? 0);
  const added = shares.flatMap(({ factor, si }): readonly Term[] => {
    const figure = moved(Math.abs(si));
    const of =
      Math.abs(factor) === 1
        ? figure
        : product(exactly(Math.abs(factor), pureUnit), figure);
    return si * factor === 0 ? [] : [{ sign: si * factor < 0 ? -1 : 1, of }];
  });
  const worked = added.length === 0 ? moved(0) : sum(...added);
  const left =
    chord === undefined ? name(measuredSymbol) : deflectionAt(context, greatest.x);
  const lines: StatementLine[] = isSum
    ? [
        { left, chain: [{ sign: '=', of: worked }] },
        { chain: [{ sign: '=', of: moved(total) }] },
      ]
    : [{ left, chain: [{ sign: '=', of: moved(total) }], recheck: 'none' }];
  if (chord !== undefined) {
    lines.push({
      left: name(measuredSymbol),
      chain: [
        {
          sign: '=',
          of: sum(
            { sign: 1, of: moved(total) },
            { sign: chord < 0 ? 1 : -1, of: moved(Math.abs(chord)) },
          ),
        },
        { sign: '=', of: moved(greatest.value) },
      ],
    });
  }
  return { lines };
}
