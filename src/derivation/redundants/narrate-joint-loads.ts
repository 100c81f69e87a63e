import {
  exactly,
  name,
  quotient,
  sum,
  type Expression,
  type Statement,
  type Symbol,
  type Term,
} from '../../equation/index.ts';
import {
  termsOfCutSum,
  type CutPart,
  type Joint,
  type SpanState,
  type Sum,
  type SumTerm,
} from '../../statics/index.ts';
import { displayUnit } from '../../units/index.ts';
import { nameShares, type CaseContext } from '../case-context.ts';
import { conventionSign, entriesOfTerms, type Entry } from '../entries.ts';
import { narrateLoads } from '../narrators/narrate-loads.ts';
import { tidy, value } from '../printing.ts';
import type { Step } from '../steps.ts';
import type { SpanFact } from '../steps/slope-steps.ts';
import { endsOf, spanName, sumOr, type SlopeSetting } from './slope-setting.ts';
import { spanSymbols } from './span-symbols.ts';

/** The force and the couple that loads at a joint, and on its overhang, bring to it. */
export function jointLoadSymbol(point: string, what: 'force' | 'couple'): Symbol {
  return what === 'force'
    ? {
        letter: 'Q',
        subscript: point,
        meaning: `downward force of loads at ${point} and on its overhang`,
      }
    : {
        letter: 'C',
        subscript: point,
        meaning: `counterclockwise couple of loads at ${point} and on its overhang`,
      };
}

/** The setting with letters for every shape into which the loads are cut at joints, and these shapes worked out. */
export function prepareLoads(setting: SlopeSetting): {
  readonly setting: SlopeSetting;
  readonly steps: readonly Step[];
} {
  const { work, context } = setting;
  const terms = [
    ...work.joints.flatMap((joint) =>
      loadTerms(context, partOfJoint(joint), about(joint.x)),
    ),
    ...work.spans.flatMap((span) =>
      loadTerms(context, partOfSpan(span), about(span.stiffness.to)),
    ),
  ];
  const named = { ...context, shareOf: nameShares(context.structure, terms) };
  return { setting: { ...setting, context: named }, steps: narrateLoads(named, terms) };
}

function about(x: number): Sum {
  return { kind: 'moments', about: x };
}

/** What stands exactly at a joint, and its overhang. */
function partOfJoint({ x, overhang }: Joint): CutPart {
  const from =
    overhang !== undefined && overhang.from < x
      ? {}
      : { from: { x, side: 'left' } as const };
  const to =
    overhang !== undefined && overhang.to > x
      ? {}
      : { to: { x, side: 'right' } as const };
  return { ...from, ...to };
}

function partOfSpan({ stiffness: { from, to } }: SpanState): CutPart {
  return { from: { x: from, side: 'right' }, to: { x: to, side: 'left' } };
}

function loadTerms(context: CaseContext, part: CutPart, sum_: Sum): readonly SumTerm[] {
  return termsOfCutSum(context.structure, context.mark, part, sum_).flatMap((term) =>
    term.source.kind === 'load' ? [term as SumTerm] : [],
  );
}

/** Entries of a sum in the solver's signs, whatever the project counts positive; those that are 0 left out. */
function entriesOn(context: CaseContext, part: CutPart, of: Sum): readonly Entry[] {
  const turned = conventionSign(context, of);
  return entriesOfTerms(context, of, loadTerms(context, part, of), new Map())
    .filter(({ worth }) => worth !== 0)
    .map((entry) => ({
      ...entry,
      sign: (entry.sign * turned) as 1 | -1,
      worth: entry.worth * turned,
    }));
}

/** Loads that joints themselves carry, brought to them. */
export function narrateJointLoads({ context, work }: SlopeSetting): readonly Step[] {
  const joints = work.joints.flatMap((joint) => {
    const part = partOfJoint(joint);
    const forces = entriesOn(context, part, { kind: 'forces', along: 'y' });
    const moments = joint.isHinge ? [] : entriesOn(context, part, about(joint.x));
    const statements = [
      ...(forces.length === 0
        ? []
        : [
            totalled(context, {
              symbol: jointLoadSymbol(joint.point, 'force'),
              entries: forces,
              times: -1,
              what: 'force',
            }),
          ]),
      ...(moments.length === 0
        ? []
        : [
            totalled(context, {
              symbol: jointLoadSymbol(joint.point, 'couple'),
              entries: moments,
              times: 1,
              what: 'moment',
            }),
          ]),
    ];
    if (statements.length === 0) return [];
    const hasOverhang = joint.overhang !== undefined;
    return [{ point: joint.point, hasOverhang, statements }];
  });
  return joints.length === 0 ? [] : [{ kind: 'joint-loads', joints }];
}

/** `Q_B = P₂ + W₃ = … = 12 kN`. */
function totalled(
  { printing }: CaseContext,
  of: {
    readonly symbol: Symbol;
    readonly entries: readonly Entry[];
    readonly times: 1 | -1;
    readonly what: 'force' | 'moment';
  },
): Statement {
  const { symbol, entries, times, what } = of;
  const total = times * entries.reduce((all, { worth }) => all + worth, 0);
  return workedStatement(
    name(symbol),
    [
      sumOf(entries, times, ({ symbolic }) => symbolic),
      sumOf(entries, times, ({ numeric }) => numeric),
    ],
    value(printing, what, total + 0),
  );
}

function sumOf(
  entries: readonly Entry[],
  times: 1 | -1,
  read: (entry: Entry) => Expression,
): Expression {
  return sum(
    ...entries.map((entry): Term => ({
      sign: (entry.sign * times) as 1 | -1,
      of: read(entry),
    })),
  );
}

/** `left = in symbols`, then with numbers, then the value; a value that its numbers already are is not said twice. */
export function workedStatement(
  left: Expression,
  [symbols, numbers]: readonly [Expression, Expression],
  found: Expression,
): Statement {
  const plain = numbers.kind === 'figure';
  return {
    lines: [
      { left, chain: [{ sign: '=', of: symbols }], recheck: 'none' },
      ...(plain ? [] : [{ chain: [{ sign: '=' as const, of: numbers }] }]),
      { chain: [{ sign: '=', of: plain ? numbers : found }] },
    ],
  };
}

/** The forces at the ends of every loaded span as a beam on simple supports. */
export function narrateSimpleSpans(setting: SlopeSetting): readonly Step[] {
  const spans = setting.work.spans.flatMap((span) => simpleSpanFact(setting, span));
  return spans.length === 0 ? [] : [{ kind: 'simple-spans', spans }];
}

function simpleSpanFact(setting: SlopeSetting, span: SpanState): readonly SpanFact[] {
  const { context } = setting;
  const { printing } = context;
  const part = partOfSpan(span);
  const [, right] = endsOf(setting, span);
  const moments = entriesOn(context, part, about(right.x));
  const forces = entriesOn(context, part, { kind: 'forces', along: 'y' });
  if (moments.length === 0 && forces.length === 0) return [];
  const symbols = spanSymbols(setting, span);
  const { simple, from, to } = span.stiffness;
  const over = (read: (entry: Entry) => Expression, length: Expression): Expression =>
    moments.length === 0
      ? exactly(0, displayUnit(printing.system, 'force'))
      : quotient(sumOf(moments, 1, read), length);
  const first = workedStatement(
    name(symbols.simpleForce(0)),
    [
      over(({ symbolic }) => symbolic, name(symbols.length)),
      over(({ numeric }) => numeric, tidy(printing, 'length', to - from)),
    ],
    value(printing, 'force', simple.a),
  );
  const taken = (read: (entry: Entry) => Expression): readonly Term[] =>
    forces.map((entry) => ({ sign: -entry.sign as 1 | -1, of: read(entry) }));
  const second = workedStatement(
    name(symbols.simpleForce(1)),
    [
      sum(...taken(({ symbolic }) => symbolic), {
        sign: -1,
        of: name(symbols.simpleForce(0)),
      }),
      sumOr(exactly(0, displayUnit(printing.system, 'force')), [
        ...taken(({ numeric }) => numeric),
        ...(simple.a === 0 ? [] : [minusFigure(context, simple.a)]),
      ]),
    ],
    value(printing, 'force', simple.b),
  );
  return [{ span: spanName(setting, span), statements: [first, second] }];
}

/** A force taken away: a negative one is added. */
function minusFigure({ printing }: CaseContext, si: number): Term {
  return { sign: si < 0 ? 1 : -1, of: value(printing, 'force', Math.abs(si)) };
}
