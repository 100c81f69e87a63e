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
import { displayUnit } from '../../units/index.ts';
import { tidy, value } from '../printing.ts';
import type { Step } from '../steps.ts';
import type { SpanFact } from '../steps/slope-steps.ts';
import { jointLoadSymbol } from './narrate-joint-loads.ts';
import { isLoaded, knownMoment, turningEnds } from './span-ends.ts';
import { referenceRigidity } from './rigidity.ts';
import {
  endsOf,
  formTerms,
  movementSymbolOf,
  spanName,
  sumOr,
  type SlopeSetting,
} from './slope-setting.ts';
import { spanSymbols, type SpanSymbols } from './span-symbols.ts';

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
  if (own.kind === 'known') {
    const joint = endsOf(setting, span)[end];
    const found = {
      sign: '=' as const,
      of: value(context.printing, 'moment', own.moment),
    };
    const isOwn = own.moment !== 0 && !joint.isHinge;
    const brought = name(jointLoadSymbol(joint.point, 'couple'));
    return {
      lines: [
        {
          left,
          chain: isOwn ? [{ sign: '=', of: brought }, found] : [found],
          ...(isOwn ? { recheck: 'none' as const } : {}),
        },
      ],
    };
  }
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
export function forceInSymbols(
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

/** The names of the ends of spans whose moment is known beforehand. */
export function knownEnds(setting: SlopeSetting): readonly string[] {
  const points = setting.work.spans.flatMap((span) =>
    ([0, 1] as const).flatMap((end) =>
      span.ends[end].kind === 'known' ? [endsOf(setting, span)[end].point] : [],
    ),
  );
  return [...new Set(points)];
}
