import {
  minus,
  name,
  number,
  plus,
  product,
  quotient,
  sum,
  type Expression,
  type Figure,
  type Statement,
  type Symbol,
  type Term,
} from '../../equation/index.ts';
import type { ThreeMoment, ThreeMomentEquation } from '../../statics/index.ts';
import { pureUnit } from '../../units/index.ts';
import { figureIn } from '../narrators/segment-functions.ts';
import { tidy, value } from '../printing.ts';
import type { ContinuousStep } from '../steps/three-moment-steps.ts';
import {
  sinkSymbol,
  spansOf,
  supportMoment,
  type ContinuousSetting,
  type End,
  type OneSpan,
} from './continuous-setting.ts';
import { knownSide } from './known-side.ts';
import { knownTurn } from './stepped-terms.ts';
import { referenceRigidity, rigidityFigure } from './rigidity.ts';

/** A span beside a support, and which of its ends is there. */
interface Beside {
  readonly one: OneSpan;
  readonly end: End;
  /** The support at its other end. */
  readonly other: number;
}

/** The known side of a support's equation. */
export function knownSymbol(point: string): Symbol {
  return {
    letter: 'K',
    subscript: point,
    meaning: `known side of the equation of the support at ${point}`,
  };
}

/** Every equation: in symbols, and its known side worked out. */
export function narrateSupportEquations(
  setting: ContinuousSetting,
  work: ThreeMoment,
): Extract<ContinuousStep, { kind: 'support-equations' }> {
  return {
    kind: 'support-equations',
    supports: work.equations.map((equation) => {
      const { support } = equation;
      const point = setting.beam.supports[support]?.point ?? '';
      const isFixed = support === 0 || support === setting.beam.supports.length - 1;
      return {
        point,
        isFixed,
        statements: [
          inSymbols(setting, equation),
          knownStatement(setting, work, equation),
        ],
      };
    }),
  };
}

function besides(setting: ContinuousSetting, support: number): readonly Beside[] {
  const spans = spansOf(setting);
  const [before, after] = [spans[support - 1], spans[support]];
  return [
    ...(before === undefined
      ? []
      : [{ one: before, end: 1, other: support - 1 } as const]),
    ...(after === undefined
      ? []
      : [{ one: after, end: 0, other: support + 1 } as const]),
  ];
}

/** `λ M_A + 2 M_B (λ + λ) + λ M_C = K_B`, all moments on the left that are not known by statics. */
function inSymbols(
  setting: ContinuousSetting,
  { support }: ThreeMomentEquation,
): Statement {
  const beside = besides(setting, support);
  const moment = (of: number): Expression => name(supportMoment(setting, of));
  const here = moment(support);
  const direct = beside.map(({ one, end }) =>
    one.terms.ratio === undefined
      ? name(one.symbols.direct(end))
      : product(number(2), name(one.symbols.counted)),
  );
  const own = beside.every(({ one }) => one.terms.ratio !== undefined)
    ? product(
        number(2),
        here,
        sum(...beside.map(({ one }) => name(one.symbols.counted))),
      )
    : product(here, sum(...direct));
  const cross = (at: number): readonly Term[] =>
    beside
      .filter(({ other }) => other === at)
      .map(({ one, other }) =>
        plus(
          product(
            moment(other),
            name(
              one.terms.ratio === undefined ? one.symbols.cross : one.symbols.counted,
            ),
          ),
        ),
      );
  const right = besideTerms(setting, beside, 'symbols');
  const zero = number(0);
  return {
    lines: [
      {
        left: sum(...cross(support - 1), own, ...cross(support + 1)),
        chain: [{ sign: '=', of: right.length === 0 ? zero : sum(...right) }],
        recheck: 'none',
      },
    ],
  };
}

/** −T − T + 6 E I₀ (…) − 6 E I₀ (…). */
function besideTerms(
  setting: ContinuousSetting,
  beside: readonly Beside[],
  which: 'symbols' | 'numbers',
): readonly Term[] {
  return [
    ...beside.flatMap((one) => loadTermOf(setting, one, which)),
    ...settling(setting, beside, which),
    ...warming(setting, beside, which),
  ];
}

function loadTermOf(
  setting: ContinuousSetting,
  { one: { terms, symbols }, end }: Beside,
  which: 'symbols' | 'numbers',
): readonly Term[] {
  const side = end === 0 ? terms.left : terms.right;
  const si = terms.ratio === undefined ? knownTurn(setting, terms, end) : side.load;
  if (si === 0) return [];
  if (which === 'symbols') return [minus(name(symbols.term(end)))];
  const { printing } = setting.context;
  return [{ sign: si < 0 ? 1 : -1, of: value(printing, 'rigidity', Math.abs(si)) }];
}

/** 6 E I₀ ((δ_B − δ_A)/L + (δ_B − δ_C)/L), of spans whose chord turns. */
function settling(
  setting: ContinuousSetting,
  beside: readonly Beside[],
  which: 'symbols' | 'numbers',
): readonly Term[] {
  const { context, beam } = setting;
  const turning = beside.filter(({ one }) => one.terms.left.chord !== 0);
  if (turning.length === 0) return [];
  const chords = turning.map(({ one: { span, symbols }, end }) => {
    const [near, far] = end === 0 ? [span.left, span.right] : [span.right, span.left];
    if (which === 'symbols')
      return quotient(
        sum(name(sinkSymbol(near.point)), minus(name(sinkSymbol(far.point)))),
        name(symbols.length),
      );
    const length = (si: number): Figure => tidy(context.printing, 'length', si);
    return quotient(
      sum(length(near.sinks), {
        sign: far.sinks < 0 ? 1 : -1,
        of: length(Math.abs(far.sinks)),
      }),
      length(span.length),
    );
  });
  const EI =
    which === 'symbols' ? referenceRigidity(context) : rigidityFigure(context, beam.EI);
  return [plus(product(number(6), EI, sum(...chords)))];
}

/** −6 E I₀ (ψ_BA + ψ_BC), of spans of one stiffness; a stepped one has it in its load term. */
function warming(
  setting: ContinuousSetting,
  beside: readonly Beside[],
  which: 'symbols' | 'numbers',
): readonly Term[] {
  const { context, beam } = setting;
  const warm = beside.flatMap(({ one: { terms, symbols }, end }): readonly Term[] => {
    const { turn } = end === 0 ? terms.left : terms.right;
    if (turn === 0 || terms.ratio === undefined) return [];
    if (which === 'symbols') return [plus(name(symbols.warmTurn(end)))];
    const figure = figureIn(context.printing.figures, pureUnit, Math.abs(turn));
    return [{ sign: turn < 0 ? -1 : 1, of: figure }];
  });
  if (warm.length === 0) return [];
  const EI =
    which === 'symbols' ? referenceRigidity(context) : rigidityFigure(context, beam.EI);
  return [minus(product(number(6), EI, sum(...warm)))];
}

/** `K_B = …` in symbols, with numbers, and its value; moments known by statics taken to this side. */
function knownStatement(
  setting: ContinuousSetting,
  work: ThreeMoment,
  equation: ThreeMomentEquation,
): Statement {
  const { context, beam } = setting;
  const { support } = equation;
  const beside = besides(setting, support);
  const isUnknown = (of: number): boolean =>
    work.equations.some((one) => one.support === of);
  const moved = beside.filter(
    ({ other }) => !isUnknown(other) && (work.moments[other] ?? 0) !== 0,
  );
  const terms = (which: 'symbols' | 'numbers'): readonly Term[] => [
    ...besideTerms(setting, beside, which),
    ...moved.map(({ one, other }): Term => {
      const si = work.moments[other] ?? 0;
      if (which === 'symbols')
        return minus(
          product(
            name(supportMoment(setting, other)),
            name(
              one.terms.ratio === undefined ? one.symbols.cross : one.symbols.counted,
            ),
          ),
        );
      return {
        sign: si < 0 ? 1 : -1,
        of: product(
          value(context.printing, 'moment', Math.abs(si)),
          tidy(context.printing, 'length', one.terms.cross),
        ),
      };
    }),
  ];
  const left = name(knownSymbol(beam.supports[support]?.point ?? ''));
  const found = value(context.printing, 'rigidity', knownSide(work, equation));
  const symbols = terms('symbols');
  if (symbols.length === 0)
    return { lines: [{ left, chain: [{ sign: '=', of: found }] }] };
  const numbers = sum(...terms('numbers'));
  // A single load term is the value already; it is not said twice.
  const isPlain = isSingleFigure(numbers);
  return {
    lines: [
      { left, chain: [{ sign: '=', of: sum(...symbols) }], recheck: 'none' },
      ...(isPlain ? [] : [{ chain: [{ sign: '=' as const, of: numbers }] }]),
      { chain: [{ sign: '=', of: found }] },
    ],
  };
}

/** A figure, with a minus before it or not: nothing is left to work out. */
function isSingleFigure(of: Expression): boolean {
  if (of.kind !== 'sum') return of.kind === 'figure';
  return of.terms.length === 1 && of.terms[0]?.of.kind === 'figure';
}
