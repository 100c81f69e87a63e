import {
  call,
  number,
  product,
  quotient,
  sum,
  type Expression,
  type Term,
} from '../equation/index.ts';
import {
  partsOf,
  resultantsOf,
  type Load,
  type Resultant,
  type Side,
} from '../statics/index.ts';
import { loadsOfCase, type CaseContext } from './case-context.ts';
import { acuteAngle } from './direction.ts';
import { isAlongAxis, sizeFigure } from './load-figures.ts';
import { tidy, value } from './printing.ts';

/** A place where the beam is cut: a station and the side of it. What stands at the station lies to the right of a cut on its left. */
export interface Cut {
  readonly x: number;
  readonly side: Side;
}

/**
 * The bending moment at a cut from everything to its right, sagging positive: forces times their
 * distances, and couples. Reactions come from the result that is checked, loads from the
 * structure, so that it shares nothing with the integration from the left.
 */
export function momentFromRight(
  context: CaseContext,
  x: number,
  side: Side,
): { readonly expression: Expression; readonly total: number; readonly scale: number } {
  const parts = [
    ...reactionsRight(context, { x, side }),
    ...loadsOfCase(context.structure, context.mark).flatMap((load) =>
      loadRight(context, load, { x, side }),
    ),
  ];
  const terms = parts.map(({ si, of }): Term => ({ sign: si < 0 ? -1 : 1, of }));
  return {
    expression:
      terms.length === 0 ? value(context.printing, 'moment', 0) : sum(...terms),
    ...totalOf(parts.map(({ si }) => si)),
  };
}

/** The axial force (tension positive) or the shear at a cut from the forces to its right. */
export function forceFromRight(
  { structure, result, mark }: CaseContext,
  cut: Cut & { readonly along: 'x' | 'y' },
): { readonly total: number; readonly scale: number } {
  const { along } = cut;
  // Shear is positive where the left part pushes the right one up, which answers a downward force on the right.
  const sign = along === 'x' ? 1 : -1;
  const reactions = result.reactions.flatMap((reaction) => {
    const at = structure.supports.find(({ point }) => point === reaction.point)?.x ?? 0;
    return isRightOf(at, cut) ? [sign * (reaction[along] ?? 0)] : [];
  });
  const loads = loadsOfCase(structure, mark).flatMap((load): readonly number[] => {
    if (load.kind === 'couple') return [];
    if (load.kind === 'point')
      return isRightOf(load.x, cut) ? [sign * (along === 'x' ? load.fx : load.fy)] : [];
    if (load.to <= cut.x) return [];
    return resultantsOf(load, Math.max(load.from, cut.x), load.to).map(
      ({ magnitude, direction }) => sign * magnitude * direction[along === 'x' ? 0 : 1],
    );
  });
  return totalOf([...reactions, ...loads]);
}

function totalOf(parts: readonly number[]): {
  readonly total: number;
  readonly scale: number;
} {
  return {
    total: parts.reduce((all, si) => all + si, 0),
    scale: parts.reduce((all, si) => all + Math.abs(si), 0),
  };
}

function isRightOf(at: number, { x, side }: Cut): boolean {
  return at > x || (at === x && side === 'left');
}

interface Part {
  /** Signed worth, N·m. */
  readonly si: number;
  /** Its size as printed. */
  readonly of: Expression;
}

/** Every restraint to the right: a slanted one with the sine of its angle, as the sums have it. */
function reactionsRight(
  { structure, result, printing }: CaseContext,
  cut: Cut,
): readonly Part[] {
  return structure.supports.flatMap(({ point, x: at, restraints }) => {
    const reaction = result.reactions.find((one) => one.point === point);
    if (reaction === undefined || !isRightOf(at, cut)) return [];
    return restraints.flatMap((restraint, index): readonly Part[] => {
      const component = reaction.components[index] ?? 0;
      if (component === 0) return [];
      if (restraint.kind === 'moment')
        return [{ si: component, of: value(printing, 'moment', Math.abs(component)) }];
      const dy = restraint.direction[1];
      if (dy === 0 || at === cut.x) return [];
      const force = value(printing, 'force', Math.abs(component));
      const slant = isAlongAxis(restraint.direction)
        ? []
        : [call('sin', acuteAngle(printing, restraint.direction))];
      const arm = tidy(printing, 'length', at - cut.x);
      return [{ si: component * dy * (at - cut.x), of: product(force, ...slant, arm) }];
    });
  });
}

function loadRight(context: CaseContext, load: Load, cut: Cut): readonly Part[] {
  const { printing } = context;
  switch (load.kind) {
    case 'point': {
      if (load.x <= cut.x || load.fy === 0) return [];
      const force =
        load.fx === 0
          ? sizeFigure(context, load.id, 'force', Math.abs(load.fy))
          : value(printing, 'force', Math.abs(load.fy));
      return [
        {
          si: load.fy * (load.x - cut.x),
          of: product(force, tidy(printing, 'length', load.x - cut.x)),
        },
      ];
    }
    case 'couple':
      return isRightOf(load.x, cut)
        ? [{ si: load.m, of: sizeFigure(context, load.id, 'moment', Math.abs(load.m)) }]
        : [];
    case 'distributed':
      return stretchesRight(context, load, cut).flatMap(({ from, to, isCut }) =>
        resultantsOf(load, from, to).flatMap((resultant) =>
          resultantRight(context, load.id, { resultant, x: cut.x, isCut }),
        ),
      );
  }
}

/** What a distributed load covers to the right, piece by piece as the sums have taken it; `isCut` where the cut shortens a stretch. */
function stretchesRight(
  { structure }: CaseContext,
  load: Extract<Load, { kind: 'distributed' }>,
  { x }: Cut,
): readonly { readonly from: number; readonly to: number; readonly isCut: boolean }[] {
  return partsOf(structure).flatMap((piece) => {
    const start = Math.max(load.from, piece.from);
    const [from, to] = [Math.max(start, x), Math.min(load.to, piece.to)];
    return to > from ? [{ from, to, isCut: from > start }] : [];
  });
}

/** A resultant times its distance; one of a stretch that the cut makes is written as its area. */
function resultantRight(
  context: CaseContext,
  id: string,
  of: { readonly resultant: Resultant; readonly x: number; readonly isCut: boolean },
): readonly Part[] {
  const { printing } = context;
  const { resultant, x, isCut } = of;
  const fy = resultant.magnitude * resultant.direction[1];
  if (fy === 0) return [];
  const arm = tidy(printing, 'length', resultant.x - x);
  const force =
    isCut && isAlongAxis(resultant.direction)
      ? areaOf(context, id, resultant)
      : [value(printing, 'force', Math.abs(fy))];
  return [{ si: fy * (resultant.x - x), of: product(...force, arm) }];
}

function areaOf(
  context: CaseContext,
  id: string,
  { shape, from, to, start, end }: Resultant,
): readonly Expression[] {
  const height = sizeFigure(context, id, 'force-per-length', Math.max(start, end));
  const base = tidy(context.printing, 'length', to - from);
  return shape === 'triangle'
    ? [quotient(number(1), number(2)), height, base]
    : [height, base];
}
