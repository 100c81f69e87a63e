import {
  name,
  number,
  product,
  sum,
  type Statement,
  type Symbol,
  type Term,
} from '../../equation/index.ts';
import type { Combination } from '../../standards/index.ts';
import { valueAt, type BeamResult, type Restraint } from '../../statics/index.ts';
import type { MemberContext } from '../case-context.ts';
import { cell, decimalsOf, numberText, unitName, value } from '../printing.ts';
import type { CombinationStep, EntryRow } from '../steps.ts';
import { momentSymbol, reactionSymbol, shearSymbol } from '../symbols.ts';
import { placeAtStation } from './narrate-internal.ts';

/** A result and the combination that it is for; cases have none. */
export interface Entry {
  readonly result: BeamResult;
  readonly combination?: Combination;
}

type Scope = 'cases' | 'strength' | 'service';
type Governed = 'moment-max' | 'moment-min' | 'shear';

/** Entries that are judged together. */
export interface JudgedGroup {
  readonly for: Scope;
  readonly entries: readonly Entry[];
}

/** Item 8 for one group: every entry's values in a table, which governs, and that the others do not. */
export function narrateCombinations(
  context: MemberContext,
  cases: readonly BeamResult[],
  group: JudgedGroup,
): readonly CombinationStep[] {
  if (group.entries.length === 0) return [];
  const governing = (['moment-max', 'moment-min', 'shear'] as const).flatMap((what) =>
    governs(context, cases, group, what),
  );
  return [tableOf(context, group, governing), ...governing];
}

interface Component {
  readonly point: string;
  readonly kind: 'x' | 'y' | 'moment';
  readonly symbol: Symbol;
}

/** The reaction components that some entry feels, as columns; slanted supports by their parts. */
export function componentsOf({
  structure,
}: Pick<MemberContext, 'structure'>): readonly Component[] {
  return structure.supports.flatMap(({ point, restraints }) => {
    const has = (test: (r: Restraint) => boolean): boolean => restraints.some(test);
    const force = (axis: 0 | 1): boolean =>
      has((r) => r.kind === 'force' && Math.abs(r.direction[axis]) > 1e-12);
    return [
      ...(force(0)
        ? [
            {
              point,
              kind: 'x' as const,
              symbol: reactionSymbol(point, { kind: 'force', direction: [1, 0] }),
            },
          ]
        : []),
      ...(force(1)
        ? [
            {
              point,
              kind: 'y' as const,
              symbol: reactionSymbol(point, { kind: 'force', direction: [0, 1] }),
            },
          ]
        : []),
      ...(has((r) => r.kind === 'moment')
        ? [
            {
              point,
              kind: 'moment' as const,
              symbol: reactionSymbol(point, { kind: 'moment' }),
            },
          ]
        : []),
    ];
  });
}

function componentValue(result: BeamResult, { point, kind }: Component): number {
  return result.reactions.find((reaction) => reaction.point === point)?.[kind] ?? 0;
}

function tableOf(
  context: MemberContext,
  group: JudgedGroup,
  governing: readonly CombinationStep[],
): CombinationStep {
  const { printing } = context;
  // A column that no entry feels, all of it 0, is left out; the steps above have said that it is 0.
  const columns = componentsOf(context).filter(
    (component) =>
      component.kind === 'y' ||
      group.entries.some(({ result }) => componentValue(result, component) !== 0),
  );
  const columnValues = columns.map((column) =>
    group.entries.map(({ result }) => componentValue(result, column)),
  );
  const decimals = columnValues.map((values, i) =>
    decimalsOf(printing, columns[i]?.kind === 'moment' ? 'moment' : 'force', values),
  );
  const greatest = (result: BeamResult): number =>
    signedGreatest(result.extremes.shear.max.value, result.extremes.shear.min.value);
  const of = (read: (result: BeamResult) => number, what: 'force' | 'moment'): number =>
    decimalsOf(
      printing,
      what,
      group.entries.map(({ result }) => read(result)),
    );
  const shearDecimals = of(greatest, 'force');
  const maxDecimals = of((result) => result.extremes.moment.max.value, 'moment');
  const minDecimals = of((result) => result.extremes.moment.min.value, 'moment');
  const rows = group.entries.map(({ result, combination }): EntryRow => ({
    mark: result.mark,
    clauses: combination?.clauses ?? [],
    reactions: columns.map((column, i) =>
      cell(
        printing,
        column.kind === 'moment' ? 'moment' : 'force',
        componentValue(result, column),
        decimals[i] ?? 0,
      ),
    ),
    shear: cell(printing, 'force', greatest(result), shearDecimals),
    momentMax: cell(printing, 'moment', result.extremes.moment.max.value, maxDecimals),
    momentMin: cell(printing, 'moment', result.extremes.moment.min.value, minDecimals),
    governs: governing.flatMap((step) =>
      step.kind === 'governing' && step.entry === result.mark ? [step.what] : [],
    ),
  }));
  return {
    kind: 'entries',
    for: group.for,
    columns: columns.map(({ symbol }) => symbol),
    units: { force: unitName(printing, 'force'), moment: unitName(printing, 'moment') },
    rows,
  };
}

/** The value of the greater size, with its sign; of two of one size the first. */
export function signedGreatest(a: number, b: number): number {
  return Math.abs(b) > Math.abs(a) * (1 + 1e-9) ? b : a;
}

/** An extreme of one entry, signed, with its station. */
function extremeOf(
  result: BeamResult,
  what: Governed,
): { readonly value: number; readonly x: number } {
  const { shear, moment } = result.extremes;
  if (what === 'moment-max') return moment.max;
  if (what === 'moment-min') return moment.min;
  return signedGreatest(shear.max.value, shear.min.value) === shear.max.value
    ? shear.max
    : shear.min;
}

/** Which entry governs one quantity, worked from its cases at the governing station, and the next after it. */
function governs(
  context: MemberContext,
  cases: readonly BeamResult[],
  group: JudgedGroup,
  what: Governed,
): readonly CombinationStep[] {
  const size = (entry: Entry): number => {
    const { value: si } = extremeOf(entry.result, what);
    return what === 'moment-max' ? si : what === 'moment-min' ? -si : Math.abs(si);
  };
  const ranked = group.entries
    .map((entry, index) => ({ entry, index }))
    .sort((a, b) => size(b.entry) - size(a.entry) || a.index - b.index);
  const [first, ...others] = ranked;
  if (first === undefined || size(first.entry) <= 0) return [];
  const isEqual = ({ entry }: (typeof ranked)[number]): boolean =>
    size(entry) >= size(first.entry) * (1 - 1e-9);
  const second = others.find((other) => !isEqual(other));
  const extreme = extremeOf(first.entry.result, what);
  const base = what === 'shear' ? 'force' : 'moment';
  const other =
    second === undefined ? undefined : extremeOf(second.entry.result, what).value;
  return [
    {
      kind: 'governing',
      for: group.for,
      what,
      entry: first.entry.result.mark,
      clauses: first.entry.combination?.clauses ?? [],
      at: placeAtStation(context, extreme.x),
      statement: superposed(context, cases, first.entry, { what, extreme }),
      equals: others.filter(isEqual).map(({ entry }) => entry.result.mark),
      ...(second === undefined || other === undefined
        ? {}
        : {
            next: {
              entry: second.entry.result.mark,
              value: value(context.printing, base, other),
              share: numberText((100 * size(second.entry)) / size(first.entry), 3),
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
  const word = what === 'moment-min' ? 'min' : 'max';
  const letter = what === 'shear' ? shearSymbol : momentSymbol;
  const symbol: Symbol = {
    ...letter,
    subscript: word,
    meaning: `${word === 'max' ? 'greatest' : 'least'} ${letter.meaning}`,
  };
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
