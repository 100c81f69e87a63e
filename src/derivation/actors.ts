import {
  call,
  name,
  product,
  type Expression,
  type Figure,
} from '../equation/index.ts';
import type { SumTerm, Unknown, Sum } from '../statics/index.ts';
import {
  knownValue,
  loadOf,
  type CaseContext,
  type KnownValues,
} from './case-context.ts';
import { acuteAngle } from './direction.ts';
import { componentSymbol, forceFigure, isAlongAxis } from './load-figures.ts';
import { value } from './printing.ts';

/** What the terms of one sum have in common. */
export interface Setting {
  readonly context: CaseContext;
  readonly sum: Sum;
  readonly known: KnownValues;
  readonly turned: 1 | -1;
}

/** A force or couple as the sums see it: its letters, its size, the way it points. */
export interface Actor {
  readonly symbol: Expression;
  /** The size once it is known, positive along `direction` for loads, signed for unknowns. */
  readonly figure?: Figure;
  readonly size?: number;
  readonly unknown?: Unknown;
  readonly direction: readonly [number, number];
  /** Label of its place, for arms: a point's name or a load's number. */
  readonly place: string;
}

/** One component of an actor that lies along an axis, positive along the axis or the actor itself. */
export interface Component {
  readonly symbol: Expression;
  readonly numeric: Expression;
  /** Signed worth per sense of the printed term; for unknowns the size of the factor. */
  readonly size: number;
  readonly unknown?: Unknown;
  readonly coefficient?: Expression;
}

/** The parts of an actor along x and along y: one that lies along an axis is its own part there. */
export function componentsOf(
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

/** An actor as one part, unresolved. */
export function wholeOf(actor: Actor): Component {
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

/** Who acts in a term: a load, or an unknown with its value where it is known already. */
export function actorOf(setting: Setting, term: SumTerm): Actor {
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
