import { name, type Statement, type Symbol } from '../../equation/index.ts';
import type { Display } from '../../units/index.ts';
import type { MemberContext } from '../case-context.ts';
import { value } from '../printing.ts';
import type { ResultLine, ResultStep } from '../steps.ts';
import { momentSymbol, shearSymbol } from '../symbols.ts';
import {
  componentsOf,
  signedGreatest,
  type Entry,
  type JudgedGroup,
} from './narrate-combinations.ts';
import { placeAtStation } from './narrate-internal.ts';

/** Item 10: the governing results of the member, and where its reactions go. */
export function narrateResults(
  context: MemberContext,
  judged: readonly JudgedGroup[],
  handedOn: ResultStep['handedOn'],
): ResultStep {
  const groups = judged.map(({ for: scope, entries }) => ({
    for: scope,
    lines: [...internal(context, entries), ...reactions(context, entries)],
  }));
  return {
    kind: 'results',
    groups: groups.filter(({ lines }) => lines.length > 0),
    handedOn,
  };
}

function boxed(
  context: MemberContext,
  symbol: Symbol,
  what: Display,
  si: number,
): Statement {
  return {
    lines: [
      {
        left: name(symbol),
        chain: [{ sign: '=', of: value(context.printing, what, si) }],
        recheck: 'none',
      },
    ],
  };
}

function internal(
  context: MemberContext,
  entries: readonly Entry[],
): readonly ResultLine[] {
  const best = (size: (entry: Entry) => number): Entry | undefined =>
    entries.reduce<Entry | undefined>(
      (a, b) => (a === undefined || size(b) > size(a) ? b : a),
      undefined,
    );
  const lines: ResultLine[] = [];
  const add = (
    what: ResultLine['what'],
    symbol: Symbol,
    entry: Entry | undefined,
    extreme: { value: number; x: number } | undefined,
  ): void => {
    if (entry === undefined || extreme === undefined || extreme.value === 0) return;
    // A greatest moment that hogs, or a least one that sags, is no result of its own.
    if (
      (what === 'moment-max' && extreme.value < 0) ||
      (what === 'moment-min' && extreme.value > 0)
    )
      return;
    lines.push({
      what,
      statement: boxed(
        context,
        symbol,
        what === 'shear' ? 'force' : 'moment',
        extreme.value,
      ),
      at: placeAtStation(context, extreme.x),
      entry: entry.result.mark,
    });
  };
  const most = best(({ result }) => result.extremes.moment.max.value);
  const least = best(({ result }) => -result.extremes.moment.min.value);
  const shear = best(({ result }) =>
    Math.max(result.extremes.shear.max.value, -result.extremes.shear.min.value),
  );
  const greatest = {
    ...momentSymbol,
    subscript: 'max',
    meaning: 'greatest bending moment',
  };
  const smallest = {
    ...momentSymbol,
    subscript: 'min',
    meaning: 'least bending moment',
  };
  add('moment-max', greatest, most, most?.result.extremes.moment.max);
  add('moment-min', smallest, least, least?.result.extremes.moment.min);
  const extremes = shear?.result.extremes.shear;
  const greater =
    extremes === undefined
      ? undefined
      : signedGreatest(extremes.max.value, extremes.min.value) === extremes.max.value
        ? extremes.max
        : extremes.min;
  add(
    'shear',
    { ...shearSymbol, subscript: 'max', meaning: 'greatest shear force' },
    shear,
    greater,
  );
  return lines;
}

/** Each reaction component at its greatest and, where it changes sign, at its least. */
function reactions(
  context: MemberContext,
  entries: readonly Entry[],
): readonly ResultLine[] {
  return componentsOf(context).flatMap((component) => {
    const values = entries.map((entry) => ({
      entry: entry.result.mark,
      si:
        entry.result.reactions.find(({ point }) => point === component.point)?.[
          component.kind
        ] ?? 0,
    }));
    const [first, ...rest] = values;
    if (first === undefined) return [];
    const max = rest.reduce((a, b) => (b.si > a.si ? b : a), first);
    const min = rest.reduce((a, b) => (b.si < a.si ? b : a), first);
    const kept = [max, min].filter(
      ({ si }, index) => si !== 0 && (index === 0 ? si > 0 : si < 0),
    );
    const x =
      context.structure.supports.find(({ point }) => point === component.point)?.x ?? 0;
    return kept.map(({ entry, si }): ResultLine => ({
      what: 'reaction',
      statement: boxed(
        context,
        component.symbol,
        component.kind === 'moment' ? 'moment' : 'force',
        si,
      ),
      at: placeAtStation(context, x),
      entry,
    }));
  });
}
