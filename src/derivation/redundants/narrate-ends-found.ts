import {
  name,
  quotient,
  sum,
  type Statement,
  type StatementLine,
  type Term,
} from '../../equation/index.ts';
import type { SpanState } from '../../statics/index.ts';
import { displayUnit, type Unit } from '../../units/index.ts';
import { tidy, value } from '../printing.ts';
import type { Step } from '../steps.ts';
import type { SpanFact } from '../steps/slope-steps.ts';
import { formNumbers, spanName, type SlopeSetting } from './slope-setting.ts';
import { spanSymbols } from './span-symbols.ts';
import { forceInSymbols } from './narrate-ends.ts';

/** The unknowns put back: every end moment, and every end force. */
export function narrateEndsFound(setting: SlopeSetting): readonly Step[] {
  const spans = setting.work.spans.map((span): SpanFact => ({
    span: spanName(setting, span),
    statements: ([0, 1] as const).flatMap((end) => [
      ...(span.ends[end].kind === 'known' ? [] : [momentFound(setting, span, end)]),
      forceFound(setting, span, end),
    ]),
  }));
  return [{ kind: 'ends-found', spans }];
}

function momentFound(setting: SlopeSetting, span: SpanState, end: 0 | 1): Statement {
  const { printing } = setting.context;
  const unit: Unit = displayUnit(printing.system, 'moment');
  const left = name(spanSymbols(setting, span).moment(end));
  const found = value(printing, 'moment', span.moments[end]);
  const terms = formNumbers(setting, span.forms[end], unit);
  if (
    terms.length === 0 ||
    (terms.length === 1 && span.forms[end].factors.every((f) => f === 0))
  )
    return { lines: [{ left, chain: [{ sign: '=', of: found }], boxed: true }] };
  return {
    lines: [
      { left, chain: [{ sign: '=', of: sum(...terms) }] },
      { chain: [{ sign: '=', of: found }], boxed: true },
    ],
  };
}

/** The upward force on an end of a span from the moments on both. */
export function forceFound(
  setting: SlopeSetting,
  span: SpanState,
  end: 0 | 1,
): Statement {
  const { printing } = setting.context;
  const { stiffness, moments, shears } = span;
  const simple = end === 0 ? stiffness.simple.a : stiffness.simple.b;
  const found = value(printing, 'force', shears[end]);
  const figures = moments
    .filter((si) => si !== 0)
    .map((si): Term => ({
      sign: si < 0 ? -1 : 1,
      of: value(printing, 'moment', Math.abs(si)),
    }));
  const length = tidy(printing, 'length', stiffness.to - stiffness.from);
  const terms: Term[] = [
    ...(figures.length === 0
      ? []
      : [{ sign: end === 0 ? 1 : -1, of: quotient(sum(...figures), length) } as const]),
    ...(simple === 0
      ? []
      : [
          {
            sign: simple < 0 ? -1 : 1,
            of: value(printing, 'force', Math.abs(simple)),
          } as const,
        ]),
  ];
  const symbolic = forceInSymbols(setting, span, end);
  const boxed: StatementLine = { chain: [{ sign: '=', of: found }], boxed: true };
  if (figures.length === 0)
    return { lines: [{ left: name(spanSymbols(setting, span).force(end)), ...boxed }] };
  return { lines: [symbolic, { chain: [{ sign: '=', of: sum(...terms) }] }, boxed] };
}
