import type { BeamDefinition, CarriedReaction } from '../project/index.ts';
import type { Combination } from '../standards/index.ts';
import type { BeamResult, BeamSolution, BeamStructure } from '../statics/index.ts';
import type { CautionStep, ResultStep } from './steps.ts';

/** A solved beam with everything that its sheets speak of. */
export interface BeamWork {
  readonly definition: BeamDefinition;
  readonly structure: BeamStructure;
  /** Carried reactions by the id of the load that each became. */
  readonly carried: ReadonlyMap<string, CarriedReaction>;
  readonly solution: BeamSolution;
  /** Combinations and their results, in one order. */
  readonly combinations: readonly Combination[];
  readonly combined: readonly BeamResult[];
  readonly handedOn: ResultStep['handedOn'];
  /** Cautions that only the project as a whole can know. */
  readonly cautions: readonly CautionStep[];
}
