import {
  add,
  exact,
  multiply,
  times,
  zero,
  type DoubleDouble,
} from '../linear/double-double.ts';
import type { Acting } from './acting.ts';
import { isRigid, type ElasticModel, type Hold } from './elastic-model.ts';
import { drawnBy } from './elastic-state.ts';
import { minus, plus, sumOfForms, type LinearForm } from './linear-form.ts';
import { liftForm, momentForm, type BarForms, type Slots } from './moment-forms.ts';

/** An equation `form + pulls = 0`. */
export interface Equation {
  readonly form: LinearForm;
  /** Restraints whose feet's movements stand in the equation. */
  readonly pulls: readonly Pull[];
}

/** A restraint as its part in an equation. */
interface Pull {
  readonly hold: Hold;
  /** What a movement of its foot adds, by length or angle. */
  readonly foot: DoubleDouble;
  /** What a movement of the joint adds. */
  readonly joint: DoubleDouble;
}

/** The equations of every joint, as many as it has unknowns and in their order. */
export function momentEquations(
  model: ElasticModel,
  slots: readonly Slots[],
  forms: readonly BarForms[],
): readonly Equation[] {
  return model.joints.flatMap(({ turning, lifting }, joint) => {
    const here = slots[joint];
    if (here === undefined) return [];
    const [before, after] = [forms[joint - 1], forms[joint]];
    const ends: Ends = {
      left: here.momentLeft < 0 ? undefined : before?.turnRight,
      right: here.momentRight < 0 ? undefined : after?.turnLeft,
    };
    const turn = turning.some(isRigid)
      ? heldSlopes(turning, ends)
      : slopesThatMeet(turning, ends, here);
    if (here.v < 0) return turn;
    const balance = balanceOf(before, after);
    return [...turn, sprung(balance, lifting, liftForm(here, joint))];
  });
}

/** Slopes beside a joint, of those bars whose moment there is unknown. */
interface Ends {
  readonly left: LinearForm | undefined;
  readonly right: LinearForm | undefined;
}

/** At a rigid restraint the slope on either side is that of its foot. */
function heldSlopes(turning: readonly Hold[], { left, right }: Ends): Equation[] {
  const rigid = turning.filter(isRigid);
  const pulls = rigid.map((hold) => ({ hold, foot: plus, joint: plus }));
  return [left, right].flatMap((form) => (form === undefined ? [] : [{ form, pulls }]));
}

/** Elsewhere the slope goes on, and the moment leaps by what springs give. */
function slopesThatMeet(
  turning: readonly Hold[],
  { left, right }: Ends,
  { momentLeft, momentRight }: Slots,
): Equation[] {
  const turn = left ?? right;
  const meeting =
    left === undefined || right === undefined
      ? []
      : [{ form: sumOfForms([plus, left], [minus, right]), pulls: [] }];
  if (turning.length === 0 || turn === undefined) return meeting;
  const leap = sumOfForms(
    [plus, momentForm(momentLeft)],
    [minus, momentForm(momentRight)],
  );
  return [...meeting, sprung(leap, turning, turn)];
}

/** What the forces at a joint lack of balance without its springs. */
function balanceOf(
  before: BarForms | undefined,
  after: BarForms | undefined,
): LinearForm {
  const nothing = momentForm(-1);
  return sumOfForms(
    [plus, after?.shearLeft ?? nothing],
    [minus, before?.shearRight ?? nothing],
  );
}

/** `form` and what springs add to it, which resist the movement of their joint. */
function sprung(
  form: LinearForm,
  holds: readonly Hold[],
  movement: LinearForm,
): Equation {
  const pulls = holds.map((hold): Pull => {
    const part = exact(hold.dy === 0 ? 1 : hold.dy);
    const foot = times(hold.stiffness ?? 0, part);
    return { hold, foot, joint: multiply(foot, part) };
  });
  const hardness = pulls.reduce((sum, { joint }) => add(sum, joint), zero);
  return { form: sumOfForms([plus, form], [hardness, movement]), pulls };
}

/** What the feet's movements of a state add to an equation. */
export function pullsOf(
  { pulls }: Equation,
  acting: Acting,
  slide: DoubleDouble,
): DoubleDouble {
  return pulls.reduce(
    (sum, { hold, foot }) => add(sum, multiply(foot, drawnBy(hold, acting, slide))),
    zero,
  );
}
