import {
  exactly,
  functionOf,
  integral,
  name,
  number,
  product,
  quotient,
  sum,
  withConversion,
  type Expression,
  type Statement,
  type Symbol,
  type Term,
} from '../../equation/index.ts';
import { displayUnit, pureUnit } from '../../units/index.ts';
import { bracket } from '../../equation/index.ts';
import type { CaseContext } from '../case-context.ts';
import { placeAtStation } from '../narrators/places.ts';
import { tidy, value } from '../printing.ts';
import type { DisplacementStep } from '../steps.ts';
import { momentSymbol, stationSymbol } from '../symbols.ts';
import { bendingFigure } from './bending-units.ts';
import { exactZeroOr, tidyIn } from './exact-figure.ts';
import type { GreatestDeflection } from './greatest-deflections.ts';
import { greatestSymbol } from './narrate-greatest.ts';
import { curvatureUnit } from './narrate-rigidity.ts';
import {
  armOf,
  unitArm,
  unitSums,
  type UnitLoad,
  type UnitReaction,
} from './unit-load.ts';
import { supportWorkStatement } from './support-work.ts';
import {
  ruleOf,
  virtualWork,
  type CurvatureWork,
  type VirtualWork,
  type WorkStretch,
} from './virtual-work.ts';
import { curvatureSymbol } from './curvature-terms.ts';
import { distanceFrom, reach } from './write-terms.ts';

const unitMomentSymbol: Symbol = { letter: 'm', meaning: 'moment of the unit load' };

/** The letter of a support's reaction to the unit load. */
export function unitReactionSymbol({
  support,
  restraint,
}: Pick<UnitReaction, 'support' | 'restraint'>): Symbol {
  return restraint.kind === 'moment'
    ? {
        letter: 'm',
        subscript: support.point,
        meaning: `moment that the support at ${support.point} gives to the unit load`,
      }
    : {
        letter: 'r',
        subscript: support.point,
        meaning: `reaction at ${support.point} to the unit load`,
      };
}

/** A greatest deflection found again by virtual work. */
export function narrateVirtualWork(
  context: CaseContext,
  extreme: GreatestDeflection,
): DisplacementStep {
  const work = virtualWork(context, extreme.x);
  const { unit, stretches, curvatures, supports } = work;
  const rules = new Set(
    stretches.map(({ places }) => (places.length === 3 ? 'simpson' : 'boole')),
  );
  return {
    kind: 'virtual-work',
    at: placeAtStation(context, extreme.x),
    released: unit.released.map(({ support, index }) =>
      context.symbols.unknown({ kind: 'reaction', point: support.point, index }),
    ),
    reactions: [reactionsOf(context, unit)],
    closes: closesOf(context, unit),
    moment: momentOf(context, unit),
    rules: [...rules],
    stretches: stretches.map((stretch) => ({
      from: placeAtStation(context, stretch.from),
      to: placeAtStation(context, stretch.to),
      statement: stretchStatement(context, stretch),
    })),
    curvatures: curvatures.map((one) => curvatureStatement(context, one)),
    supports: supports.map((one) => ({
      point: one.reaction.support.point,
      statement: supportWorkStatement(context, one),
    })),
    value: valueOf(context, work, extreme),
    integrated: value(context.printing, 'deflection', extreme.value),
    difference: shareText(work.deflection - extreme.value, work.size),
  };
}

function unitFigure(
  { printing }: CaseContext,
  { restraint }: UnitReaction,
  si: number,
): Expression {
  return restraint.kind === 'moment'
    ? tidy(printing, 'length', si)
    : tidyIn(printing, pureUnit, si);
}

function reactionsOf(context: CaseContext, { reactions }: UnitLoad): Statement {
  return {
    lines: reactions.map((one) => ({
      left: name(unitReactionSymbol(one)),
      chain: [{ sign: '=', of: unitFigure(context, one, one.value) }],
      recheck: 'none',
    })),
  };
}

/** Every sum of the unit load and its reactions, in figures, closing to 0. */
function closesOf(
  context: CaseContext,
  { x, reactions }: UnitLoad,
): readonly Statement[] {
  return unitSums(context.structure).flatMap((one) => {
    const isMoments = one.what === 'moments';
    const load = unitArm(one, x);
    const terms = reactions.flatMap((reaction): readonly Term[] => {
      const arm = armOf(one, reaction);
      if (arm === 0 || reaction.value === 0) return [];
      const isPlain = reaction.restraint.kind === 'moment' || Math.abs(arm) === 1;
      const of = unitFigure(context, reaction, Math.abs(reaction.value));
      const by = isMoments
        ? tidy(context.printing, 'length', Math.abs(arm))
        : tidyIn(context.printing, pureUnit, Math.abs(arm));
      const isMoment = reaction.restraint.kind === 'moment';
      return [
        {
          sign: reaction.value * arm < 0 ? -1 : 1,
          of: isMoment || (isPlain && !isMoments) ? of : product(of, by),
        },
      ];
    });
    const own: readonly Term[] =
      load === 0
        ? []
        : [
            {
              sign: load < 0 ? -1 : 1,
              of: isMoments
                ? product(number(1), tidy(context.printing, 'length', Math.abs(load)))
                : number(1),
            },
          ];
    const all = [...own, ...terms];
    if (all.length === 0) return [];
    return [
      {
        lines: [
          {
            left: sum(...all),
            chain: [{ sign: '=', of: exactly(0, pureUnit) }],
            recheck: 'closure',
          },
        ],
      },
    ];
  });
}

/** m(x) in singularity functions. */
function momentOf(context: CaseContext, { x, reactions }: UnitLoad): Statement {
  const end = context.structure.points.at(-1)?.x ?? x;
  const forces = reactions.flatMap(
    (one): readonly (Term & { readonly at: number })[] => {
      const { restraint, support } = one;
      const isMoment = restraint.kind === 'moment';
      const size = isMoment ? -one.value : one.value * restraint.direction[1];
      // What stands at the member's end has nothing to its right to act on.
      if (size === 0 || support.x === end) return [];
      const figure = unitFigure(context, one, Math.abs(size));
      const of = product(
        figure,
        bracket(distanceFrom(context, support.x), isMoment ? 0 : 1),
      );
      return [{ at: support.x, sign: size < 0 ? -1 : 1, of }];
    },
  );
  const own = { at: x, sign: 1 as const, of: bracket(distanceFrom(context, x), 1) };
  const terms = [...forces, ...(x === end ? [] : [own])].sort((a, b) => a.at - b.at);
  return {
    lines: [
      {
        left: functionOf(unitMomentSymbol, name(stationSymbol)),
        chain: [{ sign: '=', of: sum(...terms.map(({ sign, of }) => ({ sign, of }))) }],
        recheck: 'none',
      },
    ],
  };
}

/** `∫ M m dx = (6 ft)/6 (4 (25 kip·ft)(2 ft) + …) = … kip·ft³`. */
function stretchStatement(context: CaseContext, stretch: WorkStretch): Statement {
  const { printing } = context;
  const { from, to, places, integral: found } = stretch;
  const { weights, over } = ruleOf(places.length);
  const terms = places.flatMap(({ M, m }, index): readonly Term[] => {
    if (M === 0 || m === 0) return [];
    const weight = weights[index] ?? 1;
    return [
      {
        sign: M * m < 0 ? -1 : 1,
        of: product(
          ...(weight === 1 ? [] : [number(weight)]),
          value(printing, 'moment', Math.abs(M)),
          tidy(printing, 'length', Math.abs(m)),
        ),
      },
    ];
  });
  const of = product(
    functionOf(momentSymbol, name(stationSymbol)),
    functionOf(unitMomentSymbol, name(stationSymbol)),
  );
  const ends = {
    variable: stationSymbol,
    from: tidy(printing, 'length', from),
    to: tidy(printing, 'length', to),
  };
  const length = reach(context, to, from);
  return {
    lines: [
      {
        left: integral(of, ends),
        chain: [
          { sign: '=', of: product(quotient(length, number(over)), sum(...terms)) },
        ],
        recheck: 'none',
      },
      { chain: [{ sign: '=', of: bendingFigure(printing, 2, found) }] },
    ],
  };
}

/** `∫ κ m dx = κ (3 m)(1 m + 2 m)/2`. */
function curvatureStatement(context: CaseContext, one: CurvatureWork): Statement {
  const { printing } = context;
  const { from, to, ends, curvature, work, number: index } = one;
  const mean = quotient(
    sum(...ends.map((m) => tidy(printing, 'length', m))),
    number(2),
  );
  const unit = displayUnit(printing.system, 'deflection');
  const worked = product(
    exactZeroOr(printing, curvatureUnit(context), curvature),
    reach(context, to, from),
    mean,
  );
  return {
    lines: [
      {
        left: integral(
          product(
            name(curvatureSymbol(index)),
            functionOf(unitMomentSymbol, name(stationSymbol)),
          ),
          {
            variable: stationSymbol,
            from: tidy(printing, 'length', from),
            to: tidy(printing, 'length', to),
          },
        ),
        chain: [{ sign: '=', of: withConversion(worked, unit) }],
        recheck: 'none',
      },
      { chain: [{ sign: '=', of: value(printing, 'deflection', work) }] },
    ],
  };
}

/** All parts together: integrals over E I, and what warmth and supports add. */
function valueOf(
  context: CaseContext,
  { stretches, curvatures, supports, deflection }: VirtualWork,
  { which }: GreatestDeflection,
): Statement {
  const { printing } = context;
  const unit = displayUnit(printing.system, 'deflection');
  const stiffnesses = [...new Set(stretches.map(({ part }) => part.EI))];
  const bent = stiffnesses.map((EI): Term => {
    const integrals = stretches.filter(({ part }) => part.EI === EI);
    const over = sum(
      ...integrals.map(({ integral: si }): Term => ({
        sign: si < 0 ? -1 : 1,
        of: bendingFigure(printing, 2, Math.abs(si)),
      })),
    );
    return {
      sign: 1,
      of: withConversion(quotient(over, bendingFigure(printing, 1, EI)), unit),
    };
  });
  const moved = [...curvatures, ...supports].map(({ work }): Term => ({
    sign: work < 0 ? -1 : 1,
    of: value(printing, 'deflection', Math.abs(work)),
  }));
  const terms = [...bent, ...moved];
  return {
    lines: [
      {
        left: product(number(1), name(greatestSymbol(which))),
        chain: [
          { sign: '=', of: terms.length === 0 ? exactly(0, pureUnit) : sum(...terms) },
        ],
      },
      { chain: [{ sign: '=', of: value(printing, 'deflection', deflection) }] },
    ],
  };
}

function shareText(off: number, size: number): string {
  return off === 0 ? '0' : (Math.abs(off) / size).toExponential(0);
}
