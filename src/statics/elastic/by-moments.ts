import { factorBandedLu, solveBandedLu } from '../linear/banded-lu.ts';
import {
  add,
  divide,
  exact,
  multiply,
  negative,
  rounded,
  subtract,
  times,
  zero,
  type DoubleDouble,
} from '../linear/double-double.ts';
import type { Acting } from './acting.ts';
import { isRigid, type ElasticModel, type Hold } from './elastic-model.ts';
import { prescribedLift, type JointState, type Way } from './elastic-state.ts';
import {
  knownPart,
  minus,
  plus,
  rowOfForm,
  sumOfForms,
  valueOfForm,
  type KnownOfState,
  type LinearForm,
} from './linear-form.ts';
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
  const springs = jointSprings(model);
  const equations = model.joints.flatMap((_, joint) =>
    equationsAt(model, { slots, forms, springs }, joint),
  );
  const units = unitsOf(model, slots, equations.length);
  const factors = factorBandedLu(equations.map(({ form }) => rowOfForm(form, units)));
  return (acting, slide) => {
    const known: KnownOfState = {
      spans: model.bars.map((bar, place) => simpleSpan(acting.bars[place] ?? [], bar)),
      lifts: model.joints.map(({ lifting }) => {
        const rigid = lifting.find(isRigid);
        return rigid === undefined ? zero : prescribedLift(rigid, acting, slide);
      }),
    };
    const rightHandSide = equations.map(({ form, pulls }) =>
      negative(add(knownPart(form, known), pullOf(pulls, acting, slide))),
    );
    const scaled = solveBandedLu(factors, rightHandSide);
    const x = scaled.map((value, index) => times(units[index] ?? 1, value));
    const valueOf = (form: LinearForm | undefined): DoubleDouble =>
      form === undefined ? zero : valueOfForm(form, known, x);
    const joints = model.joints.map((_, joint) =>
      jointState({ slots, forms, springs }, joint, valueOf),
    );
    return { slide, joints };
  };
}

/** Where the unknowns of a joint stand; −1 where a moment is nothing or a deflection is prescribed. */
interface Slots {
  readonly momentLeft: number;
  readonly momentRight: number;
  readonly v: number;
}

/** A joint has one moment where nothing holds its rotation, one on either side where something does. */
function slotsOf({ joints }: ElasticModel): readonly Slots[] {
  let count = 0;
  const last = joints.length - 1;
  return joints.map(({ hinged, turning, lifting }, place): Slots => {
    const isEnd = place === 0 || place === last;
    const takeIf = (isUnknown: boolean): number => (isUnknown ? count++ : -1);
    const isHeld = turning.length > 0;
    const momentLeft = takeIf(isHeld ? place > 0 : !isEnd && !hinged);
    const momentRight = isHeld ? takeIf(place < last && !hinged) : momentLeft;
    return { momentLeft, momentRight, v: takeIf(!lifting.some(isRigid)) };
  });
}

/** Slopes and shears at the ends of a bar. */
interface BarForms {
  readonly turnLeft: LinearForm;
  readonly turnRight: LinearForm;
  readonly shearLeft: LinearForm;
  readonly shearRight: LinearForm;
}

function liftForm({ v }: Slots, joint: number): LinearForm {
  const term = [{ index: v < 0 ? joint : v, factor: plus }];
  return { unknowns: v < 0 ? [] : term, lifts: v < 0 ? term : [], spans: [] };
}

function momentForm(index: number): LinearForm {
  const unknowns = index < 0 ? [] : [{ index, factor: plus }];
  return { unknowns, lifts: [], spans: [] };
}

function formsOf(model: ElasticModel, slots: readonly Slots[]): readonly BarForms[] {
  return model.bars.map(({ length, EI }, bar): BarForms => {
    const [here, there] = [slots[bar], slots[bar + 1]];
    if (here === undefined || there === undefined)
      throw new RangeError('a bar has two joints');
    const [one, other] = [momentForm(here.momentRight), momentForm(there.momentLeft)];
    const shorter = divide(exact(1), length);
    const chord = sumOfForms(
      [shorter, liftForm(there, bar + 1)],
      [negative(shorter), liftForm(here, bar)],
    );
    const swing = sumOfForms([shorter, other], [negative(shorter), one]);
    const soft = divide(length, exact(6 * EI));
    const loaded = (name: LinearForm['spans'][number]['name']): LinearForm => ({
      unknowns: [],
      lifts: [],
      spans: [{ index: bar, name, factor: plus }],
    });
    const twice = times(2, soft);
    return {
      turnLeft: sumOfForms(
        [plus, chord],
        [negative(twice), one],
        [negative(soft), other],
        [plus, loaded('turnLeft')],
      ),
      turnRight: sumOfForms(
        [plus, chord],
        [soft, one],
        [twice, other],
        [plus, loaded('turnRight')],
      ),
      shearLeft: sumOfForms([plus, loaded('left')], [plus, swing]),
      shearRight: sumOfForms([minus, loaded('right')], [plus, swing]),
    };
  });
}

/** What an equation `form + pulls = 0` holds together. */
interface Equation {
  readonly form: LinearForm;
  /** Springs whose feet's movements stand in the equation. */
  readonly pulls: readonly Spring[];
}

/** A spring as its part in an equation: force per movement of its foot. */
interface Spring {
  readonly hold: Hold;
  readonly pull: DoubleDouble;
  /** Force per movement of the joint. */
  readonly hardness: DoubleDouble;
}

interface JointSprings {
  readonly lifting: readonly Spring[];
  readonly turning: readonly Spring[];
}

function jointSprings(model: ElasticModel): readonly JointSprings[] {
  const springs = (holds: readonly Hold[]): readonly Spring[] =>
    holds
      .filter((hold) => !isRigid(hold))
      .map((hold) => {
        const part = exact(hold.dy === 0 ? 1 : hold.dy);
        const pull = times(hold.stiffness ?? 0, part);
        return { hold, pull, hardness: multiply(pull, part) };
      });
  return model.joints.map(({ lifting, turning }) => ({
    lifting: springs(lifting),
    turning: springs(turning),
  }));
}

function pullOf(
  springs: readonly Spring[],
  acting: Acting,
  slide: number,
): DoubleDouble {
  return springs.reduce((sum, { hold, pull }) => {
    const drawn = add(multiply(exact(hold.dx), exact(slide)), exact(acting.foot(hold)));
    return add(sum, multiply(pull, drawn));
  }, zero);
}

/** Everything about joints that does not change with the state. */
interface Layout {
  readonly slots: readonly Slots[];
  readonly forms: readonly BarForms[];
  readonly springs: readonly JointSprings[];
}

function equationsAt(
  model: ElasticModel,
  layout: Layout,
  joint: number,
): readonly Equation[] {
  const { turning } = model.joints[joint] ?? { turning: [] };
  const slots = layout.slots[joint] ?? { momentLeft: -1, momentRight: -1, v: -1 };
  const [before, after] = [layout.forms[joint - 1], layout.forms[joint]];
  const springs = layout.springs[joint] ?? { lifting: [], turning: [] };
  const equations: Equation[] = [];
  const left = slots.momentLeft < 0 ? undefined : before?.turnRight;
  const right = slots.momentRight < 0 ? undefined : after?.turnLeft;
  const rigid = turning.find(isRigid);
  if (rigid !== undefined) {
    const pulls = [{ hold: rigid, pull: plus, hardness: plus }];
    for (const form of [left, right])
      if (form !== undefined) equations.push({ form, pulls });
  } else {
    if (left !== undefined && right !== undefined)
      equations.push({ form: sumOfForms([plus, left], [minus, right]), pulls: [] });
    const turn = left ?? right;
    if (turning.length > 0 && turn !== undefined)
      equations.push({
        form: sumOfForms(
          [plus, momentForm(slots.momentLeft)],
          [minus, momentForm(slots.momentRight)],
          [hardnessOf(springs.turning), turn],
        ),
        pulls: springs.turning,
      });
  }
  if (slots.v >= 0) {
    const nothing = momentForm(-1);
    const form = sumOfForms(
      [plus, after?.shearLeft ?? nothing],
      [minus, before?.shearRight ?? nothing],
      [hardnessOf(springs.lifting), liftForm(slots, joint)],
    );
    equations.push({ form, pulls: springs.lifting });
  }
  return equations;
}

function hardnessOf(springs: readonly Spring[]): DoubleDouble {
  return springs.reduce((sum, { hardness }) => add(sum, hardness), zero);
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

function jointState(
  { slots, forms }: Layout,
  joint: number,
  valueOf: (form: LinearForm | undefined) => DoubleDouble,
): JointState {
  const here = slots[joint] ?? { momentLeft: -1, momentRight: -1, v: -1 };
  const [before, after] = [forms[joint - 1], forms[joint]];
  const shearLeft = valueOf(before?.shearRight);
  const shearRight = valueOf(after?.shearLeft);
  const momentLeft = valueOf(momentForm(here.momentLeft));
  const momentRight = valueOf(momentForm(here.momentRight));
  return {
    v: rounded(valueOf(liftForm(here, joint))),
    turnLeft: rounded(valueOf(before?.turnRight ?? after?.turnLeft)),
    turnRight: rounded(valueOf(after?.turnLeft ?? before?.turnRight)),
    shearLeft: rounded(shearLeft),
    shearRight: rounded(shearRight),
    momentLeft: rounded(momentLeft),
    momentRight: rounded(momentRight),
    force: rounded(subtract(shearRight, shearLeft)),
    couple: rounded(subtract(momentLeft, momentRight)),
  };
}
