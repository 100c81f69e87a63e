import type { BeamDefinition, CarriedReaction } from '../project/index.ts';
import type { Combination } from '../standards/index.ts';
import type {
  BeamResult,
  BeamSolution,
  BeamStructure,
  RangeResult,
} from '../statics/index.ts';
import type { CautionStep, ResultStep } from './steps.ts';

/** A solved beam with everything that its sheets speak of. */
export interface BeamWork {
  readonly definition: BeamDefinition;
  /** With every load whole and in its place: what the sheets draw and narrate. */
  readonly structure: BeamStructure;
  /** The same as it was solved: loads that may stand in several ways are choices of it. */
  readonly arranged: BeamStructure;
  /** Carried reactions by the id of the load that each became. */
  readonly carried: ReadonlyMap<string, CarriedReaction>;
  readonly solution: BeamSolution;
  /** Combinations and their results, in one order. */
  readonly combinations: readonly Combination[];
  readonly combined: readonly BeamResult[];
  /**
   * Greatest and least of every case and every combination that has no single state, by its mark.
   * Its entry in `solution.results` or `combined` is then the state that is narrated, no bound.
   */
  readonly ranges: ReadonlyMap<string, RangeResult>;
  readonly handedOn: ResultStep['handedOn'];
  /** Cautions that only the project as a whole can know. */
  readonly cautions: readonly CautionStep[];
}
