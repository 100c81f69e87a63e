import type { ReasonStep } from './steps/check-steps.ts';
import type { DisplacementStep } from './steps/displacement-steps.ts';
import type { EquationStep } from './steps/equation-steps.ts';
import type { GivenStep } from './steps/given-steps.ts';
import type { InternalStep } from './steps/internal-steps.ts';
import type { RangeStep } from './steps/range-steps.ts';
import type { ForceStep, RigidityStep } from './steps/redundant-steps.ts';
import type { LimitStep } from './steps/limit-steps.ts';
import type { MovingStep } from './steps/moving-steps.ts';
import type { CombinationStep, ResultStep } from './steps/result-steps.ts';
import type { SlopeStep } from './steps/slope-steps.ts';
import type { ContinuousStep } from './steps/three-moment-steps.ts';
import type { CautionStep, FigureStep } from './steps/sheet-steps.ts';
import type { StaticsStep } from './steps/statics-steps.ts';
import type { SystemStep } from './steps/system-steps.ts';

/** One step of a sheet: facts for one template, named `step-` and the kind. */
export type Step =
  | GivenStep
  | StaticsStep
  | SystemStep
  | RigidityStep
  | ForceStep
  | SlopeStep
  | ContinuousStep
  | EquationStep
  | ReasonStep
  | InternalStep
  | DisplacementStep
  | LimitStep
  | RangeStep
  | MovingStep
  | CombinationStep
  | ResultStep
  | CautionStep
  | FigureStep;

export type * from './steps/shared.ts';
export type * from './steps/given-steps.ts';
export type * from './steps/statics-steps.ts';
export type * from './steps/equation-steps.ts';
export type * from './steps/check-steps.ts';
export type * from './steps/internal-steps.ts';
export type * from './steps/displacement-steps.ts';
export type * from './steps/range-steps.ts';
export type * from './steps/moving-steps.ts';
export type * from './steps/result-steps.ts';
export type * from './steps/limit-steps.ts';
export type * from './steps/sheet-steps.ts';
export type * from './steps/system-steps.ts';
export type * from './steps/redundant-steps.ts';
export type * from './steps/slope-steps.ts';
export type * from './steps/three-moment-steps.ts';
