import {
  exactly,
  name,
  product,
  quotient,
  sum,
  type Expression,
  type Statement,
  type StatementLine,
  type Term,
} from '../../equation/index.ts';
import type { LinearForm, SpanState } from '../../statics/index.ts';
import { displayUnit, type Unit } from '../../units/index.ts';
import { tidy, value } from '../printing.ts';
import type { Step } from '../steps.ts';
import type { SpanFact } from '../steps/slope-steps.ts';
import { isLoaded, knownMoment, turningEnds } from './narrate-held-spans.ts';
import { referenceRigidity } from './rigidity.ts';
import {
  endsOf,
  formNumbers,
  formTerms,
  movementSymbolOf,
  spanName,
  spanSymbols,
  sumOr,
  type SlopeSetting,
  type SpanSymbols,
} from './slope-setting.ts';

/** The turn of each chord that turns, and the end moments in terms of the unknowns. */
export function narrateEndMoments(setting: SlopeSetting): readonly Step[] {
  const spans = setting.work.spans.map((span): SpanFact => ({
    span: spanName(setting, span),
    statements: [
      ...(turningEnds(span) === 'none' ? [] : chordStatement(setting, span)),
      ...([0, 1] as const).map((end) => endMoment(setting, span, end)),
    ],
  }));
  return [{ kind: 'end-moments', spans }];
}

function isNothing({ constant, factors }: LinearForm): boolean {
  return constant === 0 && factors.every((factor) => factor === 0);
}

/** `E I ψ_AB = (E I v_B − E I v_A) / L`, then with what is known; nothing where the chord stays. */
function chordStatement(setting: SlopeSetting, span: SpanState): readonly Statement[] {
  if (isNothing(span.chord)) return [];
  const { context } = setting;
  const EI = referenceRigidity(context);
  const [a, b] = span.joints;
  const moved = (joint: number): Expression =>
    product(EI, name(movementSymbolOf(setting, { kind: 'deflection', joint })));
  const zero = (joint: number): boolean => {
    const form = setting.work.deflections[joint];
    return form === undefined || isNothing(form);
  };
  const terms: Term[] = [
    ...(zero(b) ? [] : [{ sign: 1, of: moved(b) } as const]),
    ...(zero(a) ? [] : [{ sign: -1, of: moved(a) } as const]),
  ];
  const unit = displayUnit(context.printing.system, 'rigidity');
  const length = tidy(
    context.printing,
    'length',
    span.stiffness.to - span.stiffness.from,
  );
  return [
    {
      lines: [
        {
          left: product(EI, name(spanSymbols(setting, span).chord)),
          chain: [{ sign: '=', of: quotient(sumOr(exactly(0, unit), terms), length) }],
          recheck: 'none',
        },
        {
          chain: [{ sign: '=', of: sum(...formTerms(setting, span.chord, unit)) }],
          recheck: 'none',
        },
      ],
    },
  ];
}

/** The moment on one end: in symbols, and gathered by the unknowns. */
function endMoment(setting: SlopeSetting, span: SpanState, end: 0 | 1): Statement {
  const { context } = setting;
  const unit = displayUnit(context.printing.system, 'moment');
  const symbols = spanSymbols(setting, span);
  const left = name(symbols.moment(end));
  const own = span.ends[end];
  if (own.kind === 'known')
    return {
      lines: [
        {
          left,
          chain: [{ sign: '=', of: value(context.printing, 'moment', own.moment) }],
        },
      ],
    };
  const form = span.forms[end];
  const gathered: StatementLine = {
    chain: [{ sign: '=', of: sumOr(exactly(0, unit), formTerms(setting, form, unit)) }],
    recheck: 'none',
  };
  const symbolic = symbolicMoment(setting, span, { end, symbols });
  return symbolic.length === 0
    ? { lines: [{ ...gathered, left }] }
    : {
        lines: [
          { left, chain: [{ sign: '=', of: sum(...symbolic) }], recheck: 'none' },
          gathered,
        ],
      };
}

function symbolicMoment(
  setting: SlopeSetting,
  span: SpanState,
  { end, symbols }: { readonly end: 0 | 1; readonly symbols: SpanSymbols },
): readonly Term[] {
  const EI = referenceRigidity(setting.context);
  const other = end === 0 ? 1 : 0;
  const turn = (at: 0 | 1): Expression =>
    product(
      EI,
      name(movementSymbolOf(setting, { kind: 'rotation', joint: span.joints[at] })),
    );
  const turns = (at: 0 | 1): boolean => {
    const one = span.ends[at];
    return one.kind === 'turns' && !isNothing(one.rotation);
  };
  const k = name(symbols.stiffness(end));
  const isBoth = turningEnds(span) === 'both';
  const chord = product(EI, name(symbols.chord));
  const known = knownMoment(span, other);
  return [
    ...(turns(end) ? [{ sign: 1, of: product(k, turn(end)) } as const] : []),
    ...(isBoth && turns(other)
      ? [{ sign: 1, of: product(name(symbols.across), turn(other)) } as const]
      : []),
    ...(isNothing(span.chord)
      ? []
      : [
          {
            sign: -1,
            of: product(
              isBoth
                ? {
                    kind: 'sum',
                    terms: [
                      { sign: 1, of: k },
                      { sign: 1, of: name(symbols.across) },
                    ],
                  }
                : k,
              chord,
            ),
          } as const,
        ]),
    ...(isLoaded(span) ? [{ sign: 1, of: name(symbols.held(end)) } as const] : []),
    ...(isBoth || known === 0
      ? []
      : [
          {
            sign: 1,
            of: product(name(symbols.carried(end)), name(symbols.moment(other))),
          } as const,
        ]),
  ];
}

/** The upward forces on the ends of the spans that meet at joints which move, in terms of the end moments. */
export function narrateEndForces(
  setting: SlopeSetting,
  isAsked: (joint: number) => boolean,
): readonly Step[] {
  const spans = setting.work.spans.flatMap((span): readonly SpanFact[] => {
    const statements = ([0, 1] as const).flatMap((end) =>
      isAsked(span.joints[end])
        ? [{ lines: [forceInSymbols(setting, span, end)] }]
        : [],
    );
    return statements.length === 0
      ? []
      : [{ span: spanName(setting, span), statements }];
  });
  return spans.length === 0 ? [] : [{ kind: 'end-forces', spans }];
}

/** `S_AB = (M_AB + M_BA) / L + S_AB,0`; at the right end the moments count the other way. */
function forceInSymbols(
  setting: SlopeSetting,
  span: SpanState,
  end: 0 | 1,
): StatementLine {
  const symbols = spanSymbols(setting, span);
  const length = tidy(
    setting.context.printing,
    'length',
    span.stiffness.to - span.stiffness.from,
  );
  const pair = quotient(sum(name(symbols.moment(0)), name(symbols.moment(1))), length);
  const { simple } = span.stiffness;
  const hasSimple = simple.a !== 0 || simple.b !== 0;
  return {
    left: name(symbols.force(end)),
    chain: [
      {
        sign: '=',
        of: sum(
          { sign: end === 0 ? 1 : -1, of: pair },
          ...(hasSimple ? [name(symbols.simpleForce(end))] : []),
        ),
      },
    ],
    recheck: 'none',
  };
}

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

function forceFound(setting: SlopeSetting, span: SpanState, end: 0 | 1): Statement {
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

/** The names of the ends of spans whose moment is known beforehand. */
export function knownEnds(setting: SlopeSetting): readonly string[] {
  const points = setting.work.spans.flatMap((span) =>
    ([0, 1] as const).flatMap((end) =>
      span.ends[end].kind === 'known' ? [endsOf(setting, span)[end].point] : [],
    ),
  );
  return [...new Set(points)];
}
