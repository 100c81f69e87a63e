import {
  forceMethod,
  momentDistribution,
  slopeDeflection,
  threeMoment,
  type BeamStructure,
} from '../../statics/index.ts';
import type { CaseContext } from '../case-context.ts';
import type { HandMethod } from './choose-method.ts';

/** What a hand method finds, worked from the definition and not from the result reported. */
export interface HandWork {
  /** Values of every restraint, support by support. */
  readonly components: readonly (readonly number[])[];
  /** The share of scale at which the method itself stops; absent where it is exact. */
  readonly stopsAt?: number;
}

const works: Readonly<
  Record<HandMethod, (structure: BeamStructure, mark: string) => HandWork>
> = {
  force: forceMethod,
  'slope-deflection': slopeDeflection,
  'three-moment': threeMoment,
  'moment-distribution': momentDistribution,
};

/** The reactions of a case by the member's hand method; undefined where statics alone finds them. */
export function handComponents({
  structure,
  mark,
  method,
}: Pick<CaseContext, 'structure' | 'mark' | 'method'>): HandWork | undefined {
  return method === undefined ? undefined : works[method.method](structure, mark);
}
