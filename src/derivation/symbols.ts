import type { Symbol } from '../equation/index.ts';
import type { BeamStructure, Load, Restraint, Unknown } from '../statics/index.ts';
import type { Sense } from './steps.ts';

/** Symbols of one member: every unknown and every load has one, and keeps it on all its sheets. */
export interface MemberSymbols {
  readonly unknown: (unknown: Unknown) => Symbol;
  /** The force or couple, or the resultant of a distributed load; `share` tells apart several shapes of one load (`a`, `b`). */
  readonly load: (id: string, share?: string) => Symbol;
  /** The intensity of a distributed load. */
  readonly intensity: (id: string, share?: string) => Symbol;
  /** Number of the load in the given list, from 1. */
  readonly numberOf: (id: string) => number;
}

/** The symbol of a reaction component: R along y, H along x, N along a slanted normal, M for a moment. */
export function reactionSymbol(point: string, restraint: Restraint): Symbol {
  if (restraint.kind === 'moment') {
    return {
      letter: 'M',
      subscript: point,
      meaning: `moment that the support at ${point} gives`,
    };
  }
  const [dx, dy] = restraint.direction;
  if (dx === 0) {
    return { letter: 'R', subscript: point, meaning: `vertical reaction at ${point}` };
  }
  if (dy === 0) {
    return {
      letter: 'H',
      subscript: point,
      meaning: `horizontal reaction at ${point}`,
    };
  }
  return {
    letter: 'N',
    subscript: point,
    meaning: `reaction at ${point}, along its normal`,
  };
}

/** The positive sense of a reaction component in words. */
export function senseOf(restraint: Restraint): Sense {
  if (restraint.kind === 'moment') return 'counterclockwise';
  const [dx, dy] = restraint.direction;
  if (dx === 0) return dy > 0 ? 'up' : 'down';
  if (dy === 0) return dx > 0 ? 'right' : 'left';
  return 'along the normal';
}

const opposites: Readonly<Record<Sense, Sense>> = {
  up: 'down',
  down: 'up',
  right: 'left',
  left: 'right',
  counterclockwise: 'clockwise',
  clockwise: 'counterclockwise',
  'along the normal': 'against the normal',
  'against the normal': 'along the normal',
};

/** The opposite sense. */
export function oppositeSense(sense: Sense): Sense {
  return opposites[sense];
}

const loadLetters: Readonly<Record<Load['kind'], { letter: string; meaning: string }>> =
  {
    point: { letter: 'P', meaning: 'point load' },
    distributed: { letter: 'W', meaning: 'resultant of distributed load' },
    couple: { letter: 'C', meaning: 'couple' },
  };

/** Gives every unknown and load of a beam its symbol; loads are numbered in the order of the structure. */
export function symbolsOf(structure: BeamStructure): MemberSymbols {
  const numbers = new Map(structure.loads.map(({ id }, index) => [id, index + 1]));
  const numberOf = (id: string): number => {
    const found = numbers.get(id);
    if (found === undefined) throw new RangeError(`no load ${id}`);
    return found;
  };
  const kindOf = (id: string): Load['kind'] =>
    structure.loads.find((load) => load.id === id)?.kind ?? 'point';
  return {
    numberOf,
    unknown: (unknown) => unknownSymbol(structure, unknown),
    load: (id, share = '') => {
      const { letter, meaning } = loadLetters[kindOf(id)];
      const number = `${numberOf(id)}${share}`;
      return { letter, subscript: number, meaning: `${meaning} ${number}` };
    },
    intensity: (id, share = '') => {
      const number = `${numberOf(id)}${share}`;
      return {
        letter: 'w',
        subscript: number,
        meaning: `intensity of distributed load ${number}`,
      };
    },
  };
}

function unknownSymbol(structure: BeamStructure, unknown: Unknown): Symbol {
  if (unknown.kind === 'hinge') {
    const isX = unknown.component === 'x';
    return {
      letter: isX ? 'X' : 'Y',
      subscript: unknown.point,
      meaning: `${isX ? 'horizontal' : 'vertical'} force through the hinge at ${unknown.point}, drawn ${isX ? 'right' : 'up'} on the part to its right`,
    };
  }
  const support = structure.supports.find(({ point }) => point === unknown.point);
  const restraint = support?.restraints[unknown.index];
  if (restraint === undefined)
    throw new RangeError(`no reaction ${unknown.index} at ${unknown.point}`);
  return reactionSymbol(unknown.point, restraint);
}

/** Distance along the member from one place to another, `d` with `C/A`. */
export function distanceSymbol(to: string, from: string): Symbol {
  return {
    letter: 'd',
    subscript: `${to}/${from}`,
    meaning: 'distance along the member of the first from the second',
  };
}

/** The station of a resultant's line of action. */
export function centroidSymbol(number: string): Symbol {
  return {
    letter: 'x',
    subscript: number,
    bar: true,
    meaning: 'station of a resultant',
  };
}

/** The station where a varying load passes through 0. */
export const crossingSymbol: Symbol = {
  letter: 'x',
  subscript: '0',
  meaning: 'station where a varying load passes through 0',
};

/** The station along the member, measured on the axis of the given points. */
export const stationSymbol: Symbol = {
  letter: 'x',
  meaning: 'station along the member',
};

/** Shear force. */
export const shearSymbol: Symbol = { letter: 'V', meaning: 'shear force' };

/** Bending moment. */
export const momentSymbol: Symbol = { letter: 'M', meaning: 'bending moment' };

/** Axial force. */
export const axialSymbol: Symbol = { letter: 'N', meaning: 'axial force' };
