import {
  name,
  number,
  product,
  sum,
  type Statement,
  type Term,
} from '../../equation/index.ts';
import {
  curvesFound,
  valueAt,
  type Arrangement,
  type Extreme,
  type Side,
} from '../../statics/index.ts';
import { arrangementText } from '../arrangements/choice-names.ts';
import type { MemberContext } from '../case-context.ts';
import { numberText, value } from '../printing.ts';
import type { CombinationStep } from '../steps.ts';
import {
  comesToTheSame,
  extremeOf,
  extremeSymbol,
  governingEntry,
  judgedBy,
  sizeOf,
  type Entry,
  type Governed,
  type JudgedGroup,
} from './governing.ts';
import { placeAtStation } from './places.ts';

/** Which entry governs one quantity, worked from its cases at the governing station, and the next after it. */
export function narrateGoverning(
  context: MemberContext,
  cases: readonly Entry[],
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
  const extreme = extremeOf(first, what);
  const base = what === 'shear' ? 'force' : 'moment';
  return [
    {
      kind: 'governing',
      for: group.for,
      what,
      entry: first.result.mark,
      clauses: first.combination?.clauses ?? [],
      at: placeAtStation(context, extreme.x),
      ...arrangementOf(context, extreme),
      statement: superposed(context, cases, first, { what, extreme }),
      equals: group.entries
        .filter((entry) => entry !== first && isEqual(entry))
        .map(({ result }) => result.mark),
      ...(second === undefined
        ? {}
        : {
            next: {
              entry: second.result.mark,
              value: value(context.printing, base, extremeOf(second, what).value),
              share: numberText((100 * sizeOf(second, what)) / sizeOf(first, what), 3),
            },
          }),
    },
  ];
}

/** How the loads stand at an extreme of an entry without a single state, in words. */
export function arrangementOf(
  { choiceNames }: Pick<MemberContext, 'choiceNames'>,
  extreme: Extreme & { readonly arrangement?: Arrangement },
): { readonly arrangement?: string } {
  const { arrangement } = extreme;
  const text =
    arrangement === undefined ? '' : arrangementText(choiceNames, arrangement);
  return text === '' ? {} : { arrangement: text };
}

/**
 * `M_max = 1.2 (18.0 kip·ft) + 1.6 (24.0 kip·ft) = 60.0 kip·ft`, the cases' values at one station and side; of
 * a case without a single state its greatest or least there, whichever is sought.
 */
function superposed(
  context: MemberContext,
  cases: readonly Entry[],
  entry: Entry,
  { what, extreme }: { readonly what: Governed; readonly extreme: Extreme },
): Statement {
  const { printing } = context;
  const base = what === 'shear' ? 'force' : 'moment';
  const symbol = extremeSymbol(what);
  const total = value(printing, base, extreme.value);
  if (entry.combination === undefined) {
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
  const curve = what === 'shear' ? 'shear' : 'moment';
  const isLeast =
    what === 'moment-min' || (what === 'shear' && isLeastShear(entry, extreme));
  const at = (one: Entry, sense: 'max' | 'min', side: Side): number =>
    valueAt(curvesFound(judgedBy(one), curve)[sense], extreme.x, side);
  const sought = isLeast ? 'min' : 'max';
  const isLeft =
    Math.abs(at(entry, sought, 'left') - extreme.value) <=
    1e-9 * Math.abs(extreme.value);
  const terms = entry.combination.factors.flatMap(
    ({ case: mark, factor }): readonly Term[] => {
      const from = cases.find(({ result }) => result.mark === mark);
      const sense = factor < 0 === isLeast ? 'max' : 'min';
      const si = from === undefined ? 0 : at(from, sense, isLeft ? 'left' : 'right');
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

/** True where the shear of greatest size is the least and not the greatest of its entry. */
function isLeastShear(entry: Entry, extreme: Extreme): boolean {
  return judgedBy(entry).extremes.shear.min.value === extreme.value;
}
