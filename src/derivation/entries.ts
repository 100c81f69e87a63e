import {
  exactly,
  name,
  product,
  type Expression,
  type Figure,
} from '../equation/index.ts';
import {
  termsOfSum,
  type Part,
  type Sum,
  type SumTerm,
  type Unknown,
} from '../statics/index.ts';
import { displayUnit } from '../units/index.ts';
import {
  actorOf,
  componentsOf,
  wholeOf,
  type Actor,
  type Component,
  type Setting,
} from './actors.ts';
import { pointAt, type CaseContext, type KnownValues } from './case-context.ts';
import { tidy } from './printing.ts';
import { distanceSymbol } from './symbols.ts';

/**
 * One printed term of an equilibrium sum: how it reads in symbols and in numbers, and what it is
 * worth. A slanted force gives two terms, its parts along y and along x.
 */
export interface Entry {
  readonly sign: 1 | -1;
  /** True where the force is known to be 0. */
  readonly isNothing: boolean;
  readonly symbolic: Expression;
  readonly numeric: Expression;
  /** The unknown that the term holds, if it is still unknown. */
  readonly unknown?: Unknown;
  /** Signed worth in SI: of a known term itself, of an unknown's factor. */
  readonly worth: number;
  /** What multiplies the unknown, without its sign; absent for a plain 1. */
  readonly coefficient?: Expression;
}

/** The terms of a sum on a part as they are printed, in the project's sign convention. */
export function entriesOf(
  context: CaseContext,
  part: Part,
  sum: Sum,
  known: KnownValues,
): readonly Entry[] {
  const terms = termsOfSum(context.structure, context.mark, part, sum);
  return entriesOfTerms(context, sum, terms, known);
}

/** The same for terms that the caller has gathered, such as those of several pieces. */
export function entriesOfTerms(
  context: CaseContext,
  sum: Sum,
  terms: readonly SumTerm[],
  known: KnownValues,
): readonly Entry[] {
  const turned = conventionSign(context, sum);
  return terms.flatMap((term) => entriesOfTerm({ context, sum, known, turned }, term));
}

/** −1 where the project counts the other sense positive. */
export function conventionSign({ conventions }: CaseContext, sum: Sum): 1 | -1 {
  if (sum.kind === 'moments')
    return conventions.moments.value === 'counterclockwise' ? 1 : -1;
  if (sum.along === 'x') return conventions.horizontal.value === 'right' ? 1 : -1;
  return conventions.vertical.value === 'up' ? 1 : -1;
}

function entriesOfTerm(setting: Setting, term: SumTerm): readonly Entry[] {
  const { context, sum, turned } = setting;
  const actor = actorOf(setting, term);
  if (term.quantity === 'couple') {
    if (sum.kind === 'forces') return [];
    return [entryOf(actor, turned * term.factor, undefined)];
  }
  const [dx, dy] = actor.direction;
  const components = componentsOf(context, term, actor);
  if (sum.kind === 'forces') {
    const part = sum.along === 'x' ? components.x : components.y;
    const along = sum.along === 'x' ? dx : dy;
    return part === undefined
      ? []
      : [entryOf(part, turned * Math.sign(along), undefined)];
  }
  const arm = armOf(setting, term.x, actor.place, sum.about);
  const list: Entry[] = [];
  if (components.y !== undefined) {
    list.push(
      entryOf(
        components.y,
        turned * Math.sign(term.x - sum.about) * Math.sign(dy),
        arm,
      ),
    );
  }
  if (components.x !== undefined) {
    list.push(
      entryOf(
        components.x,
        turned * Math.sign(dx),
        armOf(setting, sum.about, '', sum.about),
      ),
    );
  }
  return list;
}

interface Arm {
  readonly symbol: Expression;
  readonly figure: Figure;
  readonly si: number;
}

function armOf({ context }: Setting, x: number, place: string, about: number): Arm {
  const si = Math.abs(x - about);
  const unit = displayUnit(context.printing.system, 'length');
  if (si === 0)
    return {
      symbol: exactly(0, displayUnit(context.printing.system, 'pure')),
      figure: exactly(0, unit),
      si,
    };
  const from = pointAt(context.structure, about) ?? '0';
  return {
    symbol: name(distanceSymbol(place, from)),
    figure: tidy(context.printing, 'length', si),
    si,
  };
}

function entryOf(
  component: Component | Actor,
  sense: number,
  arm: Arm | undefined,
): Entry {
  const of: Component = 'numeric' in component ? component : wholeOf(component);
  const isNothing = of.unknown === undefined && of.size === 0;
  const sign = sense < 0 ? -1 : 1;
  const reach = arm === undefined ? 1 : arm.si;
  const times = (force: Expression, by: Expression): Expression => product(force, by);
  const coefficients = [of.coefficient, arm?.figure].filter((c) => c !== undefined);
  return {
    sign,
    isNothing,
    symbolic: arm === undefined ? of.symbol : times(of.symbol, arm.symbol),
    numeric: arm === undefined ? of.numeric : times(of.numeric, arm.figure),
    worth: sign * of.size * reach + 0,
    ...(of.unknown === undefined ? {} : { unknown: of.unknown }),
    ...(coefficients.length === 0 ? {} : { coefficient: product(...coefficients) }),
  };
}
