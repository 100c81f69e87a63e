import { factorBandedLu, solveBandedLu } from '../linear/banded-lu.ts';
import {
  add,
  negative,
  times,
  zero,
  type DoubleDouble,
} from '../linear/double-double.ts';
import { isRigid, type ElasticModel } from './elastic-model.ts';
import { prescribedLift, type JointState, type Way } from './elastic-state.ts';
import {
  knownPart,
  rowOfForm,
  valueOfForm,
  type KnownOfState,
  type LinearForm,
} from './linear-form.ts';
import { momentEquations, pullsOf } from './moment-equations.ts';
import {
  formsOf,
  liftForm,
  momentForm,
  slotsOf,
  type BarForms,
  type Slots,
} from './moment-forms.ts';
import { simpleSpan } from './simple-span.ts';

/**
 * The second way, with forces as unknowns: bending moments at the joints, and deflections of the
 * joints that nothing rigid holds. Every bar is a simple span between its joints. The equations say that the
 * slope goes on at every joint without a hinge (the equation of three moments, in general form),
 * and that forces balance at every joint that can rise or sink.
 *
 *      M₁ ⌒      M₂ ⌒     M₃ ⌒
 *      ───┬─────────┬─────────┬───      slope left of 2 = slope right of 2
 *         △         △         ↕ v₃      V right of 3 − V left of 3 = force there
 *
 * — Clapeyron's equation with settlements, Timoshenko, Strength of Materials I, chapter 6 (from memory).
 */
export function byMoments(model: ElasticModel): Way {
  const slots = slotsOf(model);
  const forms = formsOf(model, slots);
  const spans = model.bars.map(simpleSpan);
  const equations = momentEquations(model, slots, forms);
  const units = unitsOf(model, slots, equations.length);
  const factors = factorBandedLu(equations.map(({ form }) => rowOfForm(form, units)));
  return (acting, slide) => {
    const known: KnownOfState = {
      spans: spans.map((span, place) => span(acting.bars[place] ?? [])),
      lifts: model.joints.map(({ lifting }) => {
        const rigid = lifting.find(isRigid);
        return rigid === undefined ? zero : prescribedLift(rigid, acting, slide);
      }),
    };
    const rightHandSide = equations.map((equation) =>
      negative(add(knownPart(equation.form, known), pullsOf(equation, acting, slide))),
    );
    const scaled = solveBandedLu(factors, rightHandSide);
    const x = scaled.map((value, index) => times(units[index] ?? 1, value));
    const valueOf = (form: LinearForm | undefined): DoubleDouble =>
      form === undefined ? zero : valueOfForm(form, known, x);
    const joints = slots.map((here, joint) =>
      jointState([forms[joint - 1], forms[joint]], valueOf, {
        v: liftForm(here, joint),
        left: momentForm(here.momentLeft),
        right: momentForm(here.momentRight),
      }),
    );
    return { slide, joints };
  };
}

/** Deflections are measured in a power of two near l² / EI, so that figures of all unknowns are comparable. */
function unitsOf(
  model: ElasticModel,
  slots: readonly Slots[],
  count: number,
): readonly number[] {
  const stiffest = model.bars.reduce((most, { EI }) => Math.max(most, EI), 0);
  const unit = 2 ** Math.round(Math.log2((model.reach * model.reach) / stiffest));
  const units = new Array<number>(count).fill(1);
  for (const { v } of slots) if (v >= 0) units[v] = unit;
  return units;
}

/** Movements and internal forces on both sides of a joint. */
function jointState(
  [before, after]: readonly [BarForms | undefined, BarForms | undefined],
  valueOf: (form: LinearForm | undefined) => DoubleDouble,
  own: Readonly<Record<'v' | 'left' | 'right', LinearForm>>,
): JointState<DoubleDouble> {
  return {
    v: valueOf(own.v),
    turnLeft: valueOf(before?.turnRight ?? after?.turnLeft),
    turnRight: valueOf(after?.turnLeft ?? before?.turnRight),
    shearLeft: valueOf(before?.shearRight),
    shearRight: valueOf(after?.shearLeft),
    momentLeft: valueOf(own.left),
    momentRight: valueOf(own.right),
  };
}
