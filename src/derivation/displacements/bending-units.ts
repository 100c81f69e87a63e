import type { Figure } from '../../equation/index.ts';
import {
  displayUnit,
  multiplyUnits,
  powerOfUnit,
  type Unit,
} from '../../units/index.ts';
import { unitOfDegree } from '../narrators/segment-functions.ts';
import { exactZeroOr } from './exact-figure.ts';
import type { Printing } from '../printing.ts';

/** How often EI v″ has been integrated: the moment itself, EI times the slope, EI times the deflection. */
export type Times = 0 | 1 | 2;

/** The unit of EI v″ (kip·ft), EI θ (kip·ft²) or EI v (kip·ft³). */
export function unitOfTimes({ system }: Printing, times: Times): Unit {
  if (times === 0) return displayUnit(system, 'moment');
  const rigidity = displayUnit(system, 'rigidity');
  if (times === 1) return rigidity;
  return multiplyUnits(rigidity, powerOfUnit(displayUnit(system, 'length'), 1));
}

/** A value of EI v″, EI θ or EI v to the project's figures. */
export function bendingFigure(printing: Printing, times: Times, si: number): Figure {
  return exactZeroOr(printing, unitOfTimes(printing, times), si);
}

/** The coefficient of a term of so high a power of x in the moment: kip·ft, kip, kip/ft, kip/ft². */
export function coefficientUnit({ system }: Printing, order: number): Unit {
  return unitOfDegree(system, 'moment', order);
}
