import {
  termsOfCutSum,
  valueOfUnknown,
  type CutPart,
  type CutTerm,
  type Sum,
} from '../../statics/index.ts';
import { cutForceAt } from '../cut-keys.ts';
import { shapesOf, type Shape, type Taking } from './takings.ts';
import { reactionKey } from '../reaction-key.ts';
import type { MarkingContext } from '../marking-context.ts';

/**
 * One thing that acts on the part of a sum: a reaction, an internal force at a cut, a load, or one
 * of the shapes into which a distributed load is taken. All SI, in the signs of the solver: right,
 * up, counterclockwise.
 */
export interface Atom {
  readonly id: string;
  readonly what:
    | { readonly kind: 'reaction'; readonly point: string; readonly index: number }
    | {
        readonly kind: 'cut';
        readonly force: 'axial' | 'shear' | 'moment';
        readonly x: number;
      }
    | {
        readonly kind: 'load';
        readonly id: string;
        readonly case: string;
        readonly resultant?: Shape;
      };
  readonly quantity: 'force' | 'couple';
  /** Key of an unknown; absent for loads. */
  readonly key?: string;
  /** Its true size along its own sense, N or N·m. */
  readonly size: number;
  /** What one unit of `size` adds to the sum: a signed arm, a direction cosine, ±1. */
  readonly factor: number;
  /** Where it stands. */
  readonly x: number;
  /** How far it stands from the point of a sum of moments, m; absent in sums of forces, and for couples. */
  readonly reach?: number;
}

/** What an atom truly adds to the sum. */
export function worthOf(atom: Atom): number {
  return atom.size * atom.factor + 0;
}

/** A force and its arm, both without sign. */
export interface Lever {
  readonly force: number;
  readonly arm: number;
}

/**
 * How a moment of a force is worked by hand: the whole force with the arm square to it, or its part
 * across the member with the distance along it. For a force square to the member both are one.
 */
export function leversOf({ size, factor, reach }: Atom): readonly Lever[] {
  const whole = { force: Math.abs(size), arm: Math.abs(factor) };
  const isAcross = reach === undefined || Math.abs(reach - whole.arm) <= 1e-9 * reach;
  if (isAcross || reach === 0) return [whole];
  return [{ force: (whole.force * whole.arm) / reach, arm: reach }, whole];
}

/** What a sum is over: which sum, of which part. */
export interface SumRequest {
  readonly sum: Sum;
  readonly part: CutPart;
}

/** The atoms of a sum, in the order reactions, forces at cuts, loads. */
export function atomsOf(
  context: MarkingContext,
  request: SumRequest,
  taking: Taking,
): readonly Atom[] {
  const { structure, loading } = context;
  const terms = termsOfCutSum(structure, loading, request.part, request.sum);
  const atoms: Atom[] = [];
  const spread = new Set<string>();
  for (const term of terms) {
    if (term.source.kind !== 'load' || term.resultant === undefined) {
      const atom = singleAtom(context, term);
      if (atom !== undefined) atoms.push({ ...atom, ...reachOf(request.sum, atom) });
      continue;
    }
    // All shapes of one load are taken together, at the place of its first.
    if (spread.has(term.source.id)) continue;
    spread.add(term.source.id);
    atoms.push(...spreadAtoms(context, request, term, taking));
  }
  return atoms;
}

function reachOf(sum: Sum, { quantity, x }: Atom): Pick<Atom, 'reach'> {
  return sum.kind === 'moments' && quantity === 'force'
    ? { reach: Math.abs(x - sum.about) }
    : {};
}

function singleAtom(context: MarkingContext, term: CutTerm): Atom | undefined {
  const { source, quantity, factor, x } = term;
  switch (source.kind) {
    case 'reaction': {
      const { point, index } = source;
      return {
        id: `reaction ${point} ${index}`,
        what: { kind: 'reaction', point, index },
        quantity,
        key: reactionKey(point, index),
        size: valueOfUnknown(context.result, source),
        factor,
        x,
      };
    }
    case 'cut': {
      const { force, cut } = source;
      const { key, truth } = cutForceAt(context, cut, force);
      const what = { kind: 'cut', force, x } as const;
      return { id: `cut ${x} ${force}`, what, quantity, key, size: truth, factor, x };
    }
    case 'load': {
      const what = { kind: 'load', id: source.id, case: source.case } as const;
      const size = term.magnitude ?? 0;
      return { id: `load ${source.id}`, what, quantity, size, factor, x };
    }
    case 'hinge':
      // Parts that end at cuts know their forces as forces at cuts.
      return undefined;
  }
}

function spreadAtoms(
  { structure }: MarkingContext,
  { part, sum }: SumRequest,
  term: CutTerm,
  taking: Taking,
): readonly Atom[] {
  if (term.source.kind !== 'load') return [];
  const { id, case: mark } = term.source;
  const load = structure.loads.find((one) => one.id === id);
  if (load?.kind !== 'distributed') return [];
  const from = Math.max(load.from, part.from?.x ?? load.from);
  const to = Math.min(load.to, part.to?.x ?? load.to);
  const shapes = shapesOf(load, { from, to }, taking);
  const caseFactor = term.caseFactor ?? 1;
  return shapes.map((resultant, index): Atom => {
    const { direction, magnitude, x } = resultant;
    const factor =
      sum.kind === 'moments'
        ? (x - sum.about) * direction[1]
        : direction[sum.along === 'x' ? 0 : 1];
    return {
      id: `load ${id} ${index}`,
      what: { kind: 'load', id, case: mark, resultant },
      quantity: 'force',
      size: magnitude * caseFactor,
      factor: factor + 0,
      x,
      ...(sum.kind === 'moments' ? { reach: Math.abs(x - sum.about) } : {}),
    };
  });
}
