import { name, type Statement, type Symbol } from '../../equation/index.ts';
import type { Display } from '../../units/index.ts';
import type { MemberContext } from '../case-context.ts';
import { value } from '../printing.ts';
import type { ResultLine, ResultStep } from '../steps.ts';
import {
  extremeOf,
  extremeSymbol,
  governingEntry,
  judgedBy,
  sizeOf,
  type Entry,
  type JudgedGroup,
} from './governing.ts';
import { componentEnds, componentsOf } from './reaction-components.ts';
import { arrangementOf } from './narrate-governing.ts';
import { placeAtStation } from './places.ts';

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

const internals = ['moment-max', 'moment-min', 'shear'] as const;

/** The greatest moment and shear; a greatest moment that hogs, or a least one that sags, is no result of its own. */
function internal(
  context: MemberContext,
  entries: readonly Entry[],
): readonly ResultLine[] {
  return internals.flatMap((what): readonly ResultLine[] => {
    const entry = governingEntry(entries, what);
    if (entry === undefined || sizeOf(entry, what) <= 0) return [];
    const extreme = extremeOf(entry, what);
    const display = what === 'shear' ? 'force' : 'moment';
    return [
      {
        what,
        statement: boxed(context, extremeSymbol(what), display, extreme.value),
        at: placeAtStation(context, extreme.x),
        entry: entry.result.mark,
        ...arrangementOf(context, extreme),
      },
    ];
  });
}

/** Each reaction component at its greatest and, where it changes sign, at its least. */
function reactions(
  context: MemberContext,
  entries: readonly Entry[],
): readonly ResultLine[] {
  return componentsOf(context).flatMap((component) => {
    const ends = entries.map((entry) => ({
      entry: entry.result.mark,
      ...componentEnds(judgedBy(entry), component),
    }));
    const [first, ...rest] = ends;
    if (first === undefined) return [];
    const most = rest.reduce((a, b) => (b.max > a.max ? b : a), first);
    const least = rest.reduce((a, b) => (b.min < a.min ? b : a), first);
    const max = { entry: most.entry, si: most.max };
    const min = { entry: least.entry, si: least.min };
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
