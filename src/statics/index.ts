/**
 * Solves a structure; plain SI numbers, no words, no paper.
 *
 * ```
 * BeamStructure ──tidyStructure──▶ the same, rounding taken out of its geometry
 *      │ equilibriumSystem     one column a restraint, one row a movement
 *      ▼
 * EquilibriumSystem ──determinacy──▶ Determinacy     rank by singular values; the free movement named
 *      │ solverOf              factored once, a state for any loads
 *      ├─ statics alone, where it can
 *      └─ elastic: bending by joint movements and by moments as unknowns, which have to agree;
 *         forces along the beam apart (shareAxially)
 *      ▼
 * components of the reactions, joint movements
 *      │ beamResult            the same for whatever method found them
 *      │ elasticCurve          where E and I are known; compatibilityOf holds it to every support
 *      ▼
 * BeamResult                   reactions, hinge forces, N V M and displacement as exact piecewise
 *      │                       polynomials, residuals, agreement
 *      │ superpose, envelope   combinations are sums of results
 *      ▼
 * BeamResult, Envelope
 * ```
 *
 * `solveBeam` does all of this, for every case and for loads that may stand in several ways.
 *
 * Beside it stands what a hand calculation needs and the solver does not: the terms of any sum
 * about any point of any part (`termsOfSum`, and `termsOfCutSum` where it ends at cuts), distributed loads as resultants (`resultantsOf`), and an order in which the
 * unknowns come out one after another (`solvingOrder`). The residuals are worked from those
 * terms, so solver and hand calculation check each other.
 *
 * Loads that may stand in several ways (`choices`) are solved an option at a time: the greatest of a
 * case is what always stands and, choice by choice, the greatest of its options (`rangesOf`), and a
 * combination of such cases is the sum of their ends (`superposeRanges`). `arrangementAt` of a range
 * tells how the loads stand for any of its values.
 *
 * Loads that roll (`rollTrains`, plugged into `solveBeam`): unit loads at the ends and thirds of every bar tell
 * everything that depends on where a load stands as polynomials of its place (`influenceBasis`), an
 * influence line is put together from them (`influenceLine`), a train's worst place is sought among axles on
 * breaks of the line and turning points between (`criticalPlace`), and that, station by station, is the envelope.
 *
 * Signs: x right, y up, couples and rotations counterclockwise; V is the upward force left of a
 * cut, M sagging, N tension. What stands exactly at a hinge belongs to the piece on its left, a
 * couple to the side that it names.
 *
 * @module
 */
export type {
  BeamStructure,
  FreeCurvature,
  Load,
  LoadChoice,
  Restraint,
  StiffnessStretch,
  Support,
  Train,
} from './structure.ts';
export { tidyStructure } from './tidy-structure.ts';
export { partsOf, wholeOf } from './parts.ts';
export type { Part } from './parts.ts';
export { keyOfUnknown, unknownsOf, valueOfUnknown } from './unknowns.ts';
export type { Unknown } from './unknowns.ts';
export { actsAlongBeam, determinacy } from './determinacy.ts';
export { bendingRedundants, isFlexible, isIdle } from './bending-redundants.ts';
export { closingSums } from './check-sums.ts';
export type { Determinacy, Instability } from './solution.ts';
export { solveBeam } from './solve-beam.ts';
export { solveStates } from './solve-states.ts';
export { solverOf } from './solver-of.ts';
export type { BeamSolver, BeamState, SolverOutcome } from './solver-of.ts';
export type {
  Agreement,
  Arrangement,
  BeamOutcome,
  BeamResult,
  BeamSolution,
  Displacement,
  HingeForce,
  Range,
  RangeCurves,
  RangeExtremes,
  RangePart,
  RangeQuery,
  RangeResult,
  Reaction,
  Residual,
  RolledCase,
  TrainPlace,
  Unsolved,
} from './solution.ts';
export { isClosed } from './residuals.ts';
export { compatibilityOf } from './elastic/compatibility.ts';
export { superpose } from './superpose.ts';
export { optionResults } from './choices/option-results.ts';
export type {
  ChoiceResults,
  OptionOutcome,
  OptionResults,
} from './choices/option-results.ts';
export { rangeOfOptions } from './choices/range-of-options.ts';
export { sumOfRanges } from './choices/sum-of-ranges.ts';
export type { RangeTerm } from './choices/sum-of-ranges.ts';
export { influenceBasis } from './moving/influence-basis.ts';
export type { InfluenceBasis, ReactionComponent } from './moving/influence-basis.ts';
export { neighbouringPlaces, sideTaken } from './moving/neighbouring-places.ts';
export type { NeighbouringPlace } from './moving/neighbouring-places.ts';
export { worstOf } from './moving/train-range.ts';
export { criticalPlace, rollingTrain } from './moving/critical-place.ts';
export type { CriticalPlace, RollingTrain } from './moving/critical-place.ts';
export { influenceLine } from './moving/influence-line.ts';
export type { Effect } from './moving/influence-line.ts';
export { superposeRanges } from './choices/superpose-ranges.ts';
export type { CaseFactor } from './loading.ts';
export { curvesFound, envelope, envelopeCurves } from './envelope.ts';
export type {
  Envelope,
  EntryResult,
  EnvelopeExtremes,
  GoverningExtreme,
  InternalForceName,
} from './envelope.ts';
export { keyStations } from './key-stations.ts';
export type { BothSides, KeyStation } from './key-stations.ts';
export { segmentsOf } from './segments.ts';
export type { Segment, SegmentFunction } from './segments.ts';
export { termsOfSum } from './equilibrium.ts';
export type { Sum, SumTerm } from './equilibrium.ts';
export { termsOfCutSum, valueOfCutForce } from './cut-terms.ts';
export type { Cut, CutForce, CutPart, CutTerm } from './cut-terms.ts';
export { intensityAt, resultantsOf } from './resultants.ts';
export type { DistributedLoad, Resultant } from './resultants.ts';
export { solvingOrder, sumsOfStep } from './solving-order.ts';
export type { SolvingOrder, SolvingStep } from './solving-order.ts';
export type { WorkedSum } from './worked-sum.ts';
export { breakpointsOf, jumpsOf, sizeOf, valueAt } from './piecewise.ts';
export type { Extreme, Jump, Piece, Piecewise, Side } from './piecewise.ts';
export { combine } from './piecewise/combine.ts';
export type { PiecewiseTerm } from './piecewise/combine.ts';
export { areaUnder, differentiate, integrate } from './piecewise/calculus.ts';
export { zerosOf } from './piecewise/zeros.ts';
export type { Zero } from './piecewise/zeros.ts';
export { extremesOf } from './piecewise/extremes.ts';
export type { Extremes } from './piecewise/extremes.ts';
export { greatestOf, leastOf } from './piecewise/greatest.ts';
export { evaluatePolynomial } from './piecewise/polynomial.ts';
export type { Polynomial } from './piecewise/polynomial.ts';
export { forceMethod, unitMark, unitStructure } from './methods/force-method.ts';
export type {
  ForceMethod,
  Movement,
  StretchShare,
  SupportShare,
} from './methods/force-method.ts';
export type { Release, ReleaseChoice } from './methods/choose-releases.ts';
export { slopeDeflection } from './methods/slope-deflection.ts';
export type { JointUnknown, SlopeDeflection } from './methods/slope-deflection.ts';
export type { SpanEnd, SpanState } from './methods/end-moments.ts';
export type { SpanStiffness } from './methods/span-stiffness.ts';
export type { Joint } from './methods/joints.ts';
export type { LinearForm } from './methods/linear-form.ts';
export type { Stretch } from './methods/stretches.ts';
export { threeMoment } from './methods/three-moment.ts';
export type { ThreeMoment, ThreeMomentEquation } from './methods/three-moment.ts';
export { momentDistribution, carriedShare } from './methods/moment-distribution.ts';
export type {
  DistributionJoint,
  DistributionRow,
  EndMoments,
  MomentDistribution,
} from './methods/moment-distribution.ts';
export { continuousBeam } from './methods/continuous-spans.ts';
export type {
  BeamEnd,
  ContinuousBeam,
  ContinuousSpan,
  SpanStretch,
  SpanSupport,
} from './methods/continuous-spans.ts';
export {
  fixedEndMoment,
  loadTerm,
  mirrored,
  simpleReaction,
} from './methods/span-loads.ts';
export type { SpanLoad, SpreadLoad } from './methods/span-loads.ts';
export type { EndTerms, SpanTerms } from './methods/span-terms.ts';
export type { FixedSpan } from './methods/fixed-ends.ts';
