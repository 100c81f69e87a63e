import { dimension, dimensions } from '../../../src/units/index.ts';
import type { Atom } from '../../../src/review/matching/atoms.ts';
import type {
  TermPart,
  WorkerTerm,
} from '../../../src/review/matching/worker-terms.ts';

const moment = dimension({ force: 1, length: 1 });
let places = 0;

/** A number of a line, N·m where nothing else is said. */
export function numberTerm(
  constant: number,
  more: Partial<WorkerTerm> = {},
): WorkerTerm {
  places += 10;
  return {
    start: places,
    end: places + 5,
    text: String(constant),
    constant,
    dimension: moment,
    side: 'left',
    spread: 0,
    parts: [{ size: Math.abs(constant), dimension: moment, power: 1, unit: 1 }],
    ...more,
  };
}

/** So much of an unknown in a line. */
export function unknownTerm(key: string, share: number): WorkerTerm {
  return { ...numberTerm(0, { text: key, parts: [] }), unknown: { key, share } };
}

/** A force times an arm in a line, each with its unit. */
export function leverTerm(force: number, arm: number): WorkerTerm {
  return numberTerm(force * arm, {
    text: `${force} N * ${arm} m`,
    parts: [
      { size: Math.abs(force), dimension: dimensions.force, power: 1, unit: 1 },
      lengthPart(arm),
    ],
  });
}

/** A length among the factors of a term. */
export function lengthPart(size: number, power: number = 1): TermPart {
  return { size, dimension: dimensions.length, power, unit: 1 };
}

/** A force of so much at a distance to the right of the point, down where it is negative. */
export function forceAtom(id: string, size: number, arm: number): Atom {
  return {
    id: `load ${id}`,
    what: { kind: 'load', id, case: 'L' },
    quantity: 'force',
    size: Math.abs(size),
    factor: Math.sign(size) * arm,
    x: arm,
    reach: Math.abs(arm),
  };
}

/** A reaction at a distance to the right of the point. */
export function reactionAtom(key: string, size: number, arm: number): Atom {
  return {
    id: `reaction ${key}`,
    what: { kind: 'reaction', point: key, index: 0 },
    quantity: 'force',
    key,
    size,
    factor: arm,
    x: arm,
    reach: Math.abs(arm),
  };
}
