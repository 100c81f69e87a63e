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
  type Statement,
  type Term,
} from '../../equation/index.ts';
import { displayUnit, pureUnit } from '../../units/index.ts';
import type { CaseContext } from '../case-context.ts';
import { placeAtStation } from '../narrators/places.ts';
import { powerFigure, tidy, value } from '../printing.ts';
import type { DisplacementStep } from '../steps.ts';
import { momentSymbol, stationSymbol } from '../symbols.ts';
import { bendingFigure } from './bending-units.ts';
import { exactZeroOr } from './exact-figure.ts';
import type { GreatestDeflection } from './greatest-deflections.ts';
import { greatestSymbol } from './narrate-greatest.ts';
import { curvatureUnit } from './narrate-rigidity.ts';
import {
  unitCloses,
  unitMomentOfX,
  unitMomentSymbol,
  unitReactions,
} from './unit-load-statements.ts';
import { supportWorkStatement } from './support-work.ts';
import {
  ruleOf,
  virtualWork,
  type CurvatureWork,
  type VirtualWork,
  type WorkStretch,
} from './virtual-work.ts';
import { curvatureSymbol } from './curvature-terms.ts';
import { reach } from './write-terms.ts';

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
    reactions: [unitReactions(context, unit)],
    closes: unitCloses(context, unit),
    moment: unitMomentOfX(context, unit),
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
    difference: powerFigure(Math.abs(work.deflection - extreme.value) / work.size, 1),
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
