import { dimension, dimensions, type Dimension } from '../../units/index.ts';
import { cutForceAt } from '../cut-keys.ts';
import { reactionKey } from '../reaction-key.ts';
import type { MarkingContext } from '../marking-context.ts';
import { nameMeaning, type NameMeaning } from '../names/name-meanings.ts';
import type { WorkedDefinition } from '../../project/index.ts';

/** What is known of the worker when a step is reached: symbols, signs, and what was concluded so far. */
export interface Worker {
  /** Declared symbols with their meanings; a faulty one carries its problem. */
  readonly names: ReadonlyMap<string, NameMeaning | string>;
  /** Positive senses in the solver's signs: 1 where the worker counts as the solver does. */
  readonly signs: { readonly moments: 1 | -1; readonly x: 1 | -1; readonly y: 1 | -1 };
  /** What the worker concluded of unknowns, by key, in the unknown's own positive sense. */
  readonly concluded: Map<string, Conclusion>;
  /** What symbols that are no unknowns of the member (`W = 5.25 kip`) came to, by name. */
  readonly values: Map<string, OwnValue>;
  /** Symbols that a conclusion declared: the `M` of `M = 36 kip ft` in a step that works a moment. */
  readonly said: Map<string, NameMeaning>;
}

/** A symbol's value as the worker has it, beside what it truly comes to, SI. */
export interface OwnValue {
  readonly own: number;
  readonly truth: number;
  readonly dimension: Dimension;
}

/** What an earlier step concluded of an unknown. */
export interface Conclusion {
  readonly step: number;
  /** Newtons or newton metres, in the unknown's own sense. */
  readonly value: number;
  readonly truth: number;
  readonly dimension: Dimension;
  readonly isRight: boolean;
}

/** The worker of a file at its first step. */
export function openWorker(context: MarkingContext, file: WorkedDefinition): Worker {
  const { conventions } = context;
  const moments = file.signs.moments ?? conventions.moments.value;
  const vertical = file.signs.vertical ?? conventions.vertical.value;
  const horizontal = file.signs.horizontal ?? conventions.horizontal.value;
  const names = new Map(
    file.names.map(({ name, means }) => {
      const read = nameMeaning(context, means);
      return [name, read.meaning ?? read.problem] as const;
    }),
  );
  return {
    names,
    signs: {
      moments: moments === 'counterclockwise' ? 1 : -1,
      x: horizontal === 'right' ? 1 : -1,
      y: vertical === 'up' ? 1 : -1,
    },
    concluded: new Map(),
    values: new Map(),
    said: new Map(),
  };
}

/** A worker who goes on from here without the other's knowing: for trying a reading of a step. */
export function copyOfWorker(worker: Worker): Worker {
  return {
    ...worker,
    concluded: new Map(worker.concluded),
    values: new Map(worker.values),
    said: new Map(worker.said),
  };
}

/** Makes what a copy found since the worker's own. */
export function adopt(worker: Worker, copy: Worker): void {
  for (const [key, one] of copy.concluded) worker.concluded.set(key, one);
  for (const [name, one] of copy.values) worker.values.set(name, one);
  for (const [name, one] of copy.said) worker.said.set(name, one);
}

const couple = dimension({ force: 1, length: 1 });

/**
 * What a symbol means that nobody declared and everybody would understand: `RA`, `R_A`, `Ay` are
 * the vertical reaction at A, `HA`, `Ax` the horizontal one, `MA` the moment of a support, where
 * the member has just that. Undefined for any other.
 */
export function impliedMeaning(
  { structure, result }: MarkingContext,
  name: string,
): NameMeaning | undefined {
  for (const [at, { point, restraints }] of structure.supports.entries()) {
    const component = componentNamed(name, point);
    if (component === undefined) continue;
    for (const [index, restraint] of restraints.entries()) {
      const isMoment = restraint.kind === 'moment';
      const share = isMoment ? 1 : restraint.direction[component === 'x' ? 0 : 1];
      if (isMoment !== (component === 'moment') || share === 0) continue;
      const value = result.reactions[at]?.components[index] ?? 0;
      return {
        kind: 'unknown',
        key: reactionKey(point, index),
        dimension: isMoment ? couple : dimensions.force,
        share,
        truth: share * value,
      };
    }
  }
  return undefined;
}

function componentNamed(name: string, point: string): 'x' | 'y' | 'moment' | undefined {
  if (
    [`R${point}`, `R_${point}`, `${point}y`, `${point}_y`, `V_${point}`].includes(name)
  )
    return 'y';
  if ([`H${point}`, `H_${point}`, `${point}x`, `${point}_x`].includes(name)) return 'x';
  return [`M${point}`, `M_${point}`].includes(name) ? 'moment' : undefined;
}

/** The unknown internal force that a value step asks for, as a symbol's meaning. */
export function cutMeaning(
  context: MarkingContext,
  force: 'axial' | 'shear' | 'moment',
  at: { readonly x: number; readonly side: 'left' | 'right' },
): NameMeaning {
  const { key, truth } = cutForceAt(context, at, force);
  return {
    kind: 'unknown',
    key,
    dimension: force === 'moment' ? couple : dimensions.force,
    share: 1,
    truth,
  };
}
