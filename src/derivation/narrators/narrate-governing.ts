import {
  name,
  number,
  product,
  sum,
  type Statement,
  type Term,
} from '../../equation/index.ts';
import { valueAt, type BeamResult } from '../../statics/index.ts';
import type { MemberContext } from '../case-context.ts';
import { numberText, value } from '../printing.ts';
import type { CombinationStep } from '../steps.ts';
import {
  comesToTheSame,
  extremeOf,
  extremeSymbol,
  governingEntry,
  sizeOf,
  type Entry,
  type Governed,
  type JudgedGroup,
} from './governing.ts';
import { placeAtStation } from './places.ts';

/** Which entry governs one quantity, worked from its cases at the governing station, and the next after it. */
export function narrateGoverning(
  context: MemberContext,
  cases: readonly BeamResult[],
  group: JudgedGroup,
  what: Governed,
): readonly CombinationStep[] {
  const first = governingEntry(group.entries, what);
  if (first === undefined || sizeOf(first, what) <= 0) return [];
  const isEqual = (entry: Entry): boolean => comesToTheSame(entry, first, what);
  const second = governingEntry(
    group.entries.filter((entry) => !isEqual(entry)),
    what,
  );
  const extreme = extremeOf(first.result, what);
  const base = what === 'shear' ? 'force' : 'moment';
  return [
    {
      kind: 'governing',
      for: group.for,
      what,
      entry: first.result.mark,
      clauses: first.combination?.clauses ?? [],
      at: placeAtStation(context, extreme.x),
      statement: superposed(context, cases, first, { what, extreme }),
      equals: group.entries
        .filter((entry) => entry !== first && isEqual(entry))
        .map(({ result }) => result.mark),
      ...(second === undefined
        ? {}
        : {
            next: {
              entry: second.result.mark,
              value: value(
                context.printing,
                base,
                extremeOf(second.result, what).value,
              ),
              share: numberText((100 * sizeOf(second, what)) / sizeOf(first, what), 3),
            },
          }),
    },
  ];
}

/** `M_max = 1.2 (18.0 kip·ft) + 1.6 (24.0 kip·ft) = 60.0 kip·ft`, the cases' values at one station and side. */
function superposed(
  context: MemberContext,
  cases: readonly BeamResult[],
  { result, combination }: Entry,
  of: {
    readonly what: Governed;
    readonly extreme: { readonly value: number; readonly x: number };
  },
): Statement {
  const { printing } = context;
  const { what, extreme } = of;
  const base = what === 'shear' ? 'force' : 'moment';
  const curve = what === 'shear' ? 'shear' : 'moment';
  const symbol = extremeSymbol(what);
  const total = value(printing, base, extreme.value);
  if (combination === undefined) {
    return {
      lines: [
        {
          left: name(symbol),
          chain: [{ sign: '=', of: total }],
          boxed: true,
          recheck: 'none',
        },
      ],
    };
  }
  const side =
    Math.abs(valueAt(result[curve], extreme.x, 'left') - extreme.value) <=
    1e-9 * Math.abs(extreme.value)
      ? 'left'
      : 'right';
  const terms = combination.factors.flatMap(
    ({ case: mark, factor }): readonly Term[] => {
      const from = cases.find((candidate) => candidate.mark === mark);
      const si = from === undefined ? 0 : valueAt(from[curve], extreme.x, side);
      const figure = value(printing, base, Math.abs(si));
      const of_ =
        Math.abs(factor) === 1 ? figure : product(number(Math.abs(factor)), figure);
      return [{ sign: si * factor < 0 ? -1 : 1, of: of_ }];
    },
  );
  return {
    lines: [
      { left: name(symbol), chain: [{ sign: '=', of: sum(...terms) }] },
      { chain: [{ sign: '=', of: total }], boxed: true },
    ],
  };
}
