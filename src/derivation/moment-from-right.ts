import { product, type Expression, type Term } from '../equation/index.ts';
import { resultantsOf, type Load, type Side } from '../statics/index.ts';
import { loadsOfCase, type CaseContext } from './case-context.ts';
import { sizeFigure } from './load-figures.ts';
import { tidy, value } from './printing.ts';

/**
 * The bending moment at a station from everything to its right, sagging positive: the forces right
 * of the cut (a couple at the very station counts when the cut is just left of it) times their distances, and the couples. Reactions come from the result that is
 * checked, loads from the structure, so that it shares nothing with the integration from the left.
 */
export function momentFromRight(
  context: CaseContext,
  x: number,
  side: Side,
): { readonly expression: Expression; readonly total: number; readonly scale: number } {
  const parts = [
    ...reactionsRight(context, x, side),
    ...loadsOfCase(context.structure, context.mark).flatMap((load) => loadRight(context, load, { x, side })),
  ];
  const total = parts.reduce((all, part) => all + part.si, 0);
  const scale = parts.reduce((all, part) => all + Math.abs(part.si), 0);
  const terms = parts.map(({ si, of }): Term => ({ sign: si < 0 ? -1 : 1, of }));
  const [only] = terms;
  const expression: Expression =
    terms.length === 0
      ? value(context.printing, 'moment', 0)
      : terms.length === 1 && only?.sign === 1
        ? only.of
        : { kind: 'sum', terms };
  return { expression, total, scale };
}

interface Part {
  /** Signed worth, N·m. */
  readonly si: number;
  /** Its size as printed. */
  readonly of: Expression;
}

function reactionsRight({ structure, result, printing }: CaseContext, x: number, side: Side): readonly Part[] {
  return result.reactions.flatMap((reaction) => {
    const at = structure.supports.find(({ point }) => point === reaction.point)?.x ?? 0;
    if (at < x || (at === x && side === 'right')) return [];
    const y = reaction.y ?? 0;
    const moment = reaction.moment ?? 0;
    const arm = tidy(printing, 'length', at - x);
    return [
      ...(y === 0 || at === x ? [] : [{ si: y * (at - x), of: product(value(printing, 'force', Math.abs(y)), arm) }]),
      ...(moment === 0 ? [] : [{ si: moment, of: value(printing, 'moment', Math.abs(moment)) }]),
    ];
  });
}

function loadRight(
  context: CaseContext,
  load: Load,
  { x, side }: { readonly x: number; readonly side: Side },
): readonly Part[] {
  const { printing } = context;
  switch (load.kind) {
    case 'point': {
      if (load.x <= x || load.fy === 0) return [];
      const isVertical = load.fx === 0;
      const force = isVertical
        ? sizeFigure(context, load.id, 'force', Math.abs(load.fy))
        : value(printing, 'force', Math.abs(load.fy));
      return [{ si: load.fy * (load.x - x), of: product(force, tidy(printing, 'length', load.x - x)) }];
    }
    case 'couple':
      return load.x < x || (load.x === x && side === 'right')
        ? []
        : [{ si: load.m, of: sizeFigure(context, load.id, 'moment', Math.abs(load.m)) }];
    case 'distributed': {
      if (load.to <= x) return [];
      return resultantsOf(load, Math.max(load.from, x), load.to).flatMap((resultant) => {
        const fy = resultant.magnitude * resultant.direction[1];
        const arm = resultant.x - x;
        if (fy === 0) return [];
        return [
          {
            si: fy * arm,
            of: product(value(printing, 'force', Math.abs(fy)), value(printing, 'length', arm)),
          },
        ];
      });
    }
  }
}
