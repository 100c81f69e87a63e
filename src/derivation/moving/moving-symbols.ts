import type { Symbol } from '../../equation/index.ts';

/** An axle of a train, from 0: `P` with its number. */
export function axleSymbol(index: number): Symbol {
  return {
    letter: 'Q',
    subscript: `${index + 1}`,
    meaning: `load of axle ${index + 1}, factor included`,
  };
}

/** The ordinate of an influence line under an axle, from 0. */
export function ordinateSymbol(index: number): Symbol {
  return {
    letter: 'η',
    subscript: `${index + 1}`,
    meaning: `ordinate of the influence line under axle ${index + 1}`,
  };
}

/** A share of the way along a stretch of an influence line. */
export function shareSymbol(index: number): Symbol {
  return {
    letter: 't',
    subscript: `${index + 1}`,
    meaning: `share of a stretch of the influence line that axle ${index + 1} has passed`,
  };
}

/** The area of an influence line under a lane load. */
export const areaSymbol: Symbol = {
  letter: 'A',
  subscript: 'η',
  meaning: 'area of the influence line under the lane load',
};

/** The lane load of a train. */
export const laneSymbol: Symbol = {
  letter: 'q',
  meaning: 'lane load of a train, factor included',
};
