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
import { valueAt, type BeamResult, type Displacement } from '../../statics/index.ts';
import { deflectionAt } from '../displacements/stiffness-symbols.ts';
import type { MemberContext } from '../case-context.ts';
import { tidy, value } from '../printing.ts';
import type { JudgedLimit } from './judge-limits.ts';
import type { LimitSpan } from './limit-spans.ts';

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
  { displacement }: BeamResult,
): { readonly si: number; readonly statement: Statement } | undefined {
  if (displacement === undefined || standsStill(displacement, span)) return undefined;
  const { printing } = context;
  const moved = (si: number): Expression => value(printing, 'deflection', si);
  const movements = span.supports.map((x) => ({
    x,
    si: valueAt(displacement.deflection, x, 'left'),
  }));
  const chord = chordAt(context, movements, greatest.x);
  return {
    si: chord.si,
    statement: {
      lines: [
        ...movements.map(({ x, si }): StatementLine => ({
          left: deflectionAt(context, x),
          chain: [{ sign: '=', of: moved(si) }],
          recheck: 'none',
        })),
        {
          left: name(chordSymbol),
          chain: [
            { sign: '=', of: chord.worked },
            { sign: '=', of: moved(chord.si) },
          ],
        },
      ],
    },
  };
}

/** True where no support that the deflection is measured from moves. */
function standsStill({ deflection, extremes }: Displacement, span: LimitSpan): boolean {
  const most = Math.max(Math.abs(extremes.max.value), Math.abs(extremes.min.value));
  return span.supports.every(
    (x) => Math.abs(valueAt(deflection, x, 'left')) <= 1e-12 * most,
  );
}

/** The chord between displaced supports at a station: the movement of the one, and its share of the difference. */
function chordAt(
  context: MemberContext,
  movements: readonly { readonly x: number; readonly si: number }[],
  x: number,
): { readonly si: number; readonly worked: Expression } {
  const moved = (si: number): Expression => value(context.printing, 'deflection', si);
  const [first, last] = movements;
  if (first === undefined) return { si: 0, worked: moved(0) };
  if (last === undefined || last.si === first.si)
    return { si: first.si, worked: moved(first.si) };
  const length = last.x - first.x;
  const rise: Expression =
    first.si === 0
      ? moved(last.si)
      : sum(
          { sign: 1, of: moved(last.si) },
          { sign: first.si < 0 ? 1 : -1, of: moved(Math.abs(first.si)) },
        );
  const share = quotient(
    product(rise, stationFrom(context, x, first.x)),
    tidy(context.printing, 'length', length),
  );
  return {
    si: first.si + ((last.si - first.si) * (x - first.x)) / length,
    worked: first.si === 0 ? share : sum(moved(first.si), share),
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
