import {
  cancelUnits,
  minus,
  name,
  number,
  product,
  sum,
  type Expression,
  type Figure,
  type Statement,
  type Term,
} from '../../equation/index.ts';
import { loadTerm, mirrored, type SpanLoad } from '../../statics/index.ts';
import { pureUnit } from '../../units/index.ts';
import type { CaseContext } from '../case-context.ts';
import { componentSymbol, sizeFigure } from '../load-figures.ts';
import { figureIn } from '../narrators/segment-functions.ts';
import { tidy, value } from '../printing.ts';
import { distanceSymbol } from '../symbols.ts';
import type { TermSpan } from '../steps/three-moment-steps.ts';
import {
  coupleAtRight,
  spansOf,
  type ContinuousSetting,
  type End,
  type OneSpan,
} from './continuous-setting.ts';
import { flexibilities, simpleMoments, turnOfEnd } from './held-by-turns.ts';
import { loadTermForm, type SeenLoad } from './load-term-forms.ts';
import { jointLoadSymbol } from './narrate-joint-loads.ts';
import { referenceRigidity } from './rigidity.ts';
import { spanName } from './slope-setting.ts';

/** Load terms of every loaded span at the ends whose support has an equation; of a stepped span its factors too. */
export function narrateLoadTerms(
  setting: ContinuousSetting,
  hasEquation: (support: number) => boolean,
): readonly TermSpan[] {
  return spansOf(setting).flatMap((one, index): readonly TermSpan[] => {
    const ends = ([0, 1] as const).filter((end) => hasEquation(index + end));
    const isByTurns = one.terms.ratio === undefined;
    const statements = isByTurns
      ? steppedTerms(setting, one, { ends, index })
      : ends.flatMap((end) => termAt(setting, one, end));
    if (statements.length === 0) return [];
    return [
      {
        span: spanName(setting, one.state),
        isByTurns,
        stretches: isByTurns ? simpleMoments(setting, one.state) : [],
        statements,
      },
    ];
  });
}

/** A stepped span: factors from its flexibilities, load terms from the turns of its ends. */
function steppedTerms(
  setting: ContinuousSetting,
  { state, symbols, terms }: OneSpan,
  { ends, index }: { readonly ends: readonly End[]; readonly index: number },
): readonly Statement[] {
  const { printing } = setting.context;
  const six = (of: Expression): Expression => product(number(6), of);
  const length = (si: number): Figure => value(printing, 'length', si);
  const direct = ends.flatMap((end): readonly Statement[] => {
    const which = end === 0 ? 'aa' : 'bb';
    const si = end === 0 ? terms.left.direct : terms.right.direct;
    return [
      ...flexibilities(setting, state, [which]),
      worked(name(symbols.direct(end)), six(name(symbols.flexibility(which))), {
        numbers: six(length(si / 6)),
        found: length(si),
      }),
    ];
  });
  const cross = [
    ...flexibilities(setting, state, ['ab']),
    worked(name(symbols.cross), six(name(symbols.flexibility('ab'))), {
      numbers: six(length(terms.cross / 6)),
      found: length(terms.cross),
    }),
  ];
  const loads = ends.flatMap((end): readonly Statement[] => {
    const si = knownTurn(setting, terms, end);
    if (si === 0) return [];
    const { couple, point } = coupleAtRight(setting, index);
    const factor = end === 0 ? terms.cross : terms.right.direct;
    const turned = si - factor * couple;
    const EI = referenceRigidity(setting.context);
    const parts = [
      ...(turned === 0
        ? []
        : [
            {
              sign: end === 0 ? -1 : 1,
              symbols: six(product(EI, name(symbols.turn(end)))),
              numbers: six(value(printing, 'rigidity', Math.abs(turned) / 6)),
              si: turned,
            } as const,
          ]),
      ...(couple === 0
        ? []
        : [
            {
              sign: 1,
              symbols: product(
                name(end === 0 ? symbols.cross : symbols.direct(1)),
                name(jointLoadSymbol(point, 'couple')),
              ),
              numbers: product(
                length(factor),
                value(printing, 'moment', Math.abs(couple)),
              ),
              si: couple,
            } as const,
          ]),
    ];
    return [
      ...turnOfEnd(setting, state, end),
      worked(
        name(symbols.term(end)),
        sum(...parts.map(({ sign, symbols: of }) => ({ sign, of }) as const)),
        {
          numbers: sum(
            ...parts.map(({ si: own, numbers: of }): Term => ({
              sign: own < 0 ? -1 : 1,
              of,
            })),
          ),
          found: value(printing, 'rigidity', si),
        },
      ),
    ];
  });
  return [...direct, ...cross, ...loads];
}

/** The load term of a stepped span, free curvature in it. */
export function knownTurn(
  { beam }: ContinuousSetting,
  terms: OneSpan['terms'],
  end: End,
): number {
  const { load, turn } = end === 0 ? terms.left : terms.right;
  return load + 6 * beam.EI * turn;
}

function worked(
  left: Expression,
  symbols: Expression,
  { numbers, found }: { readonly numbers: Expression; readonly found: Figure },
): Statement {
  return {
    lines: [
      { left, chain: [{ sign: '=', of: symbols }], recheck: 'none' },
      { chain: [{ sign: '=', of: numbers }] },
      { chain: [{ sign: '=', of: found }] },
    ],
  };
}

/** The term of a span of one stiffness at an end: each load by its formula, their sum times EI₀ over EI. */
function termAt(
  setting: ContinuousSetting,
  one: OneSpan,
  end: End,
): readonly Statement[] {
  const { context } = setting;
  const { span, symbols, terms } = one;
  const ratio = terms.ratio ?? 1;
  const loads = span.loads.map((load) =>
    end === 1 ? load : mirrored(load, span.length),
  );
  const parts = loads.map((load) => partOf(context, one, { load, end }));
  if (parts.length === 0) return [];
  const rigidity = (si: number): Figure => value(context.printing, 'rigidity', si);
  const isAlone = parts.length === 1 && ratio === 1;
  const each = parts.map(({ load, symbolic, numeric }): Statement => {
    const left = name(symbols.term(end, isAlone ? undefined : numberOf(context, load)));
    return worked(left, symbolic, {
      numbers: cancelUnits(numeric),
      found: rigidity(loadTerm(load, span.length)),
    });
  });
  if (isAlone) return each;
  const terms_ = (read: (load: SpanLoad) => Term): readonly Term[] => loads.map(read);
  const total = end === 0 ? terms.left.load : terms.right.load;
  const times = (of: Expression): Expression =>
    ratio === 1 ? of : product(figureIn(context.printing.figures, pureUnit, ratio), of);
  const numbers = sum(
    ...terms_((load) => {
      const si = loadTerm(load, span.length);
      return { sign: si < 0 ? -1 : 1, of: rigidity(Math.abs(si)) };
    }),
  );
  return [
    ...each,
    {
      lines: [
        { left: name(symbols.term(end)), chain: [{ sign: '=', of: times(numbers) }] },
        { chain: [{ sign: '=', of: rigidity(total) }] },
      ],
    },
  ];
}

/** A load's number with the letter of its share. */
function numberOf({ symbols, shareOf }: CaseContext, load: SpanLoad): string {
  const share = 'at' in load ? '' : shareOf(load.id, load.resultant);
  return `${symbols.numberOf(load.id)}${share}`;
}

/** The formula of one load at an end, in symbols and in numbers. */
function partOf(
  context: CaseContext,
  { span, symbols, points }: OneSpan,
  { load, end }: { readonly load: SpanLoad; readonly end: End },
): {
  readonly load: SpanLoad;
  readonly symbolic: Expression;
  readonly numeric: Expression;
} {
  const { printing } = context;
  const from = points[end === 0 ? 1 : 0];
  const number_ = numberOf(context, load);
  const L = span.length;
  const length = (si: number): Expression => tidy(printing, 'length', si);
  const [c, d] = 'at' in load ? [load.at, load.at] : [load.from, load.to];
  const isFromStart = Math.abs(c) <= 1e-12 * L;
  const isToEnd = Math.abs(d - L) <= 1e-12 * L;
  const base = { load, isFromStart, isWhole: isFromStart && isToEnd };
  const distance = (which: 'nearer' | 'farther'): Expression =>
    'at' in load
      ? name(distanceSymbol(number_, from))
      : name({
          letter: which === 'nearer' ? 'c' : 'e',
          subscript: `${number_}/${from}`,
          meaning: `distance of the ${which} end of a distributed load from a support`,
        });
  const sizes = sizesOf(context, load);
  const seen = (which: 'symbolic' | 'numeric'): SeenLoad => ({
    ...base,
    size: sizes.size[which],
    ...(sizes.intensity === undefined ? {} : { intensity: sizes.intensity[which] }),
    near: which === 'symbolic' ? distance('nearer') : length(c),
    far:
      which === 'numeric'
        ? length(d)
        : isToEnd && !('at' in load)
          ? name(symbols.length)
          : distance('farther'),
    length: which === 'symbolic' ? name(symbols.length) : length(L),
  });
  const signed = (of: Expression): Expression => (sizes.sign < 0 ? sum(minus(of)) : of);
  return {
    load,
    symbolic: signed(loadTermForm(seen('symbolic'))),
    numeric: signed(loadTermForm(seen('numeric'))),
  };
}

interface Read {
  readonly symbolic: Expression;
  readonly numeric: Expression;
}

/** The size of a load as its formula speaks of it, and the sign that its sense gives it. */
function sizesOf(
  context: CaseContext,
  load: SpanLoad,
): { readonly sign: 1 | -1; readonly size: Read; readonly intensity?: Read } {
  const { symbols, shareOf, printing, structure } = context;
  const share = 'at' in load ? '' : shareOf(load.id, load.resultant);
  const symbol = symbols.load(load.id, share);
  if (load.kind === 'couple') {
    const size = sizeFigure(context, load.id, 'moment', Math.abs(load.couple));
    return {
      sign: load.couple < 0 ? -1 : 1,
      size: { symbolic: name(symbol), numeric: size },
    };
  }
  if (load.kind === 'force') {
    const own = structure.loads.find(({ id }) => id === load.id);
    const isSlanted = own?.kind === 'point' && own.fx !== 0;
    const size = Math.abs(load.force);
    return {
      sign: load.force < 0 ? -1 : 1,
      size: {
        symbolic: name(isSlanted ? componentSymbol(symbol, 'y') : symbol),
        numeric: isSlanted
          ? value(printing, 'force', size)
          : sizeFigure(context, load.id, 'force', size),
      },
    };
  }
  const { resultant } = load;
  const isSlanted = resultant.direction[0] !== 0;
  const size: Read = {
    symbolic: name(isSlanted ? componentSymbol(symbol, 'y') : symbol),
    numeric: value(
      printing,
      'force',
      resultant.magnitude * Math.abs(resultant.direction[1]),
    ),
  };
  const sign = load.intensity < 0 ? -1 : 1;
  if (isSlanted) return { sign, size };
  const intensity: Read = {
    symbolic: name(symbols.intensity(load.id, load.kind === 'uniform' ? '' : share)),
    numeric: sizeFigure(context, load.id, 'force-per-length', Math.abs(load.intensity)),
  };
  const isOneUniform = load.kind === 'triangle' || isUniform(context, load.id);
  return isOneUniform ? { sign, size, intensity } : { sign, size };
}

/** True of a load that is uniform throughout, not a rectangle under a slope. */
function isUniform({ structure }: CaseContext, id: string): boolean {
  const load = structure.loads.find((one) => one.id === id);
  return load?.kind === 'distributed' && load.y1 === load.y2 && load.x1 === load.x2;
}
