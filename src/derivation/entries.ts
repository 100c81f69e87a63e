import {
  call,
  exactly,
  name,
  product,
  type Expression,
  type Figure,
} from '../equation/index.ts';
import { displayUnit } from '../units/index.ts';
import {
  termsOfSum,
  type Part,
  type Sum,
  type SumTerm,
  type Unknown,
} from '../statics/index.ts';
import {
  knownValue,
  loadOf,
  pointAt,
  type CaseContext,
  type KnownValues,
} from './case-context.ts';
import { componentSymbol, forceFigure, isAlongAxis } from './load-figures.ts';
import { acuteAngle } from './direction.ts';
import { tidy, value } from './printing.ts';
import { distanceSymbol } from './symbols.ts';

/**
 * One printed term of an equilibrium sum: how it reads in symbols and in numbers, and what it is
 * worth. A slanted force gives two terms, its parts along y and along x.
 */
export interface Entry {
  readonly sign: 1 | -1;
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

interface Setting {
  readonly context: CaseContext;
  readonly sum: Sum;
  readonly known: KnownValues;
  readonly turned: 1 | -1;
}

/** A force or couple as the sums see it: its letters, its size, the way it points. */
interface Actor {
  readonly symbol: Expression;
  /** The size once it is known, positive along `direction` for loads, signed for unknowns. */
  readonly figure?: Figure;
  readonly size?: number;
  readonly unknown?: Unknown;
  readonly direction: readonly [number, number];
  /** Label of its place, for arms: a point's name or a load's number. */
  readonly place: string;
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

/** One component of an actor that lies along an axis, positive along the axis or the actor itself. */
interface Component {
  readonly symbol: Expression;
  readonly numeric: Expression;
  /** Signed worth per sense of the printed term; for unknowns the size of the factor. */
  readonly size: number;
  readonly unknown?: Unknown;
  readonly coefficient?: Expression;
}

function componentsOf(
  context: CaseContext,
  term: SumTerm,
  actor: Actor,
): { readonly x?: Component; readonly y?: Component } {
  const [dx, dy] = actor.direction;
  if (isAlongAxis(actor.direction)) {
    const whole = wholeOf(actor);
    return dx === 0 ? { y: whole } : { x: whole };
  }
  return {
    x: slanted({ context, term, actor, axis: 'x', cosine: dx }),
    y: slanted({ context, term, actor, axis: 'y', cosine: dy }),
  };
}

function wholeOf(actor: Actor): Component {
  return {
    symbol: actor.symbol,
    numeric: actor.figure ?? actor.symbol,
    size: actor.size ?? 1,
    ...(actor.size === undefined && actor.unknown !== undefined
      ? { unknown: actor.unknown }
      : {}),
  };
}

/**
 * The part of a slanted force along an axis. Loads have been taken into components before; an
 * unknown stands with the cosine or sine of its acute angle to the member's axis, so that both are
 * sizes and the sense of each shows in the sign of its term.
 */
function slanted(of: {
  readonly context: CaseContext;
  readonly term: SumTerm;
  readonly actor: Actor;
  readonly axis: 'x' | 'y';
  readonly cosine: number;
}): Component {
  const { context, term, actor, axis, cosine } = of;
  const { printing } = context;
  if (term.source.kind === 'load') {
    const size = Math.abs((actor.size ?? 0) * cosine);
    const share =
      term.resultant === undefined
        ? ''
        : context.shareOf(term.source.id, term.resultant);
    const symbol = name(
      componentSymbol(context.symbols.load(term.source.id, share), axis),
    );
    return { symbol, numeric: value(printing, 'force', size), size };
  }
  const factor = call(
    axis === 'x' ? 'cos' : 'sin',
    acuteAngle(printing, actor.direction),
  );
  const symbol = product(actor.symbol, factor);
  if (actor.size !== undefined && actor.figure !== undefined) {
    return {
      symbol,
      numeric: product(actor.figure, factor),
      size: actor.size * Math.abs(cosine),
    };
  }
  return {
    symbol,
    numeric: symbol,
    size: Math.abs(cosine),
    coefficient: factor,
    ...(actor.unknown === undefined ? {} : { unknown: actor.unknown }),
  };
}

function entryOf(
  component: Component | Actor,
  sense: number,
  arm: Arm | undefined,
): Entry {
  const of: Component = 'numeric' in component ? component : wholeOf(component);
  const sign = sense < 0 ? -1 : 1;
  const reach = arm === undefined ? 1 : arm.si;
  const times = (force: Expression, by: Expression): Expression => product(force, by);
  const coefficients = [of.coefficient, arm?.figure].filter((c) => c !== undefined);
  return {
    sign,
    symbolic: arm === undefined ? of.symbol : times(of.symbol, arm.symbol),
    numeric: arm === undefined ? of.numeric : times(of.numeric, arm.figure),
    worth: sign * of.size * reach + 0,
    ...(of.unknown === undefined ? {} : { unknown: of.unknown }),
    ...(coefficients.length === 0 ? {} : { coefficient: product(...coefficients) }),
  };
}

function actorOf(setting: Setting, term: SumTerm): Actor {
  const { context, known } = setting;
  const { source } = term;
  if (source.kind === 'load') {
    const load = loadOf(context.structure, source.id);
    const share =
      term.resultant === undefined ? '' : context.shareOf(source.id, term.resultant);
    const direction = directionOfLoad(context, term);
    return {
      symbol: name(context.symbols.load(source.id, share)),
      figure: forceFigure(context, load, term),
      size: term.magnitude ?? 0,
      direction,
      place: `${context.symbols.numberOf(source.id)}${share}`,
    };
  }
  const unknown: Unknown =
    source.kind === 'reaction'
      ? source
      : { kind: 'hinge', point: source.point, component: source.component };
  const found = knownValue(known, unknown);
  const direction = directionOfUnknown(context, term);
  const isCouple = term.quantity === 'couple';
  return {
    symbol: name(context.symbols.unknown(unknown)),
    ...(found === undefined
      ? { unknown }
      : {
          figure: value(context.printing, isCouple ? 'moment' : 'force', found),
          size: found,
        }),
    direction,
    place: source.point,
  };
}

function directionOfUnknown(
  { structure }: CaseContext,
  { source }: SumTerm,
): readonly [number, number] {
  if (source.kind === 'hinge') {
    // The unknown is what the left piece does to the right one; on the left piece it turns round.
    const sense = source.side === 'left' ? -1 : 1;
    return source.component === 'x' ? [sense, 0] : [0, sense];
  }
  if (source.kind !== 'reaction') throw new RangeError('not an unknown');
  const restraint = structure.supports.find(({ point }) => point === source.point)
    ?.restraints[source.index];
  return restraint?.kind === 'force' ? restraint.direction : [0, 0];
}

function directionOfLoad(
  { structure }: CaseContext,
  term: SumTerm,
): readonly [number, number] {
  if (term.resultant !== undefined) return term.resultant.direction;
  if (term.source.kind !== 'load') throw new RangeError('not a load');
  const load = loadOf(structure, term.source.id);
  if (load.kind !== 'point') return [0, 0];
  const size = Math.hypot(load.fx, load.fy);
  return size === 0 ? [0, -1] : [load.fx / size, load.fy / size];
}
