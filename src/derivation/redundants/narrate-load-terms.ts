import {
  cancelUnits,
  minus,
  name,
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
import { figureIn } from '../narrators/segment-functions.ts';
import { tidy, value } from '../printing.ts';
import { distanceSymbol } from '../symbols.ts';
import type { TermSpan } from '../steps/three-moment-steps.ts';
import {
  spansOf,
  type ContinuousSetting,
  type End,
  type OneSpan,
} from './continuous-setting.ts';
import { simpleMoments } from './held-by-turns.ts';
import { sizeOfLoad } from './load-sizes.ts';
import { loadTermForm, type SeenLoad } from './load-term-forms.ts';
import { spanName } from './slope-setting.ts';
import { steppedTerms } from './stepped-terms.ts';
import { workedLines } from './worked-lines.ts';

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
    return workedLines(left, symbolic, {
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
  const sizes = sizeOfLoad(context, load);
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
