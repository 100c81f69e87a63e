import {
  bracket,
  exactly,
  functionOf,
  name,
  number,
  product,
  sum,
  type Expression,
  type Statement,
  type Symbol,
  type Term,
} from '../../equation/index.ts';
import { pureUnit } from '../../units/index.ts';
import type { CaseContext } from '../case-context.ts';
import { tidy } from '../printing.ts';
import { stationSymbol } from '../symbols.ts';
import { tidyIn } from './exact-figure.ts';
import {
  armOf,
  unitArm,
  unitSums,
  type UnitLoad,
  type UnitReaction,
} from './unit-load.ts';
import { distanceFrom } from './write-terms.ts';

/** Moment of the unit load. */
export const unitMomentSymbol: Symbol = {
  letter: 'm',
  meaning: 'moment of the unit load',
};

/** The letter of a support's reaction to the unit load. */
function unitReactionSymbol({
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

function unitFigure(
  { printing }: CaseContext,
  { restraint }: UnitReaction,
  si: number,
): Expression {
  return restraint.kind === 'moment'
    ? tidy(printing, 'length', si)
    : tidyIn(printing, pureUnit, si);
}

/** The reactions to the unit load, a line each. */
export function unitReactions(
  context: CaseContext,
  { reactions }: UnitLoad,
): Statement {
  return {
    lines: reactions.map((one) => ({
      left: name(unitReactionSymbol(one)),
      chain: [{ sign: '=', of: unitFigure(context, one, one.value) }],
      recheck: 'none',
    })),
  };
}

/** Every sum of the unit load and its reactions, in figures, closing to 0. */
export function unitCloses(
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
export function unitMomentOfX(
  context: CaseContext,
  { x, reactions }: UnitLoad,
): Statement {
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
