import { divide, exact, negative, times } from '../linear/double-double.ts';
import { isRigid, type ElasticModel } from './elastic-model.ts';
import { minus, plus, sumOfForms, type LinearForm } from './linear-form.ts';

/** Where the unknowns of a joint stand; −1 where a moment is nothing or a deflection is prescribed. */
export interface Slots {
  readonly momentLeft: number;
  readonly momentRight: number;
  readonly v: number;
}

/** A joint has one moment where nothing holds its rotation, one on either side where something does. */
export function slotsOf({ joints }: ElasticModel): readonly Slots[] {
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
export interface BarForms {
  readonly turnLeft: LinearForm;
  readonly turnRight: LinearForm;
  readonly shearLeft: LinearForm;
  readonly shearRight: LinearForm;
}

/** The deflection of a joint, unknown or prescribed. */
export function liftForm({ v }: Slots, joint: number): LinearForm {
  const term = [{ index: v < 0 ? joint : v, factor: plus }];
  return { unknowns: v < 0 ? [] : term, lifts: v < 0 ? term : [], spans: [] };
}

/** The moment in a slot; nothing where the slot is −1. */
export function momentForm(index: number): LinearForm {
  const unknowns = index < 0 ? [] : [{ index, factor: plus }];
  return { unknowns, lifts: [], spans: [] };
}

/** Slopes and shears of every bar: what its chord, its end moments and its loads make of them. */
export function formsOf(
  model: ElasticModel,
  slots: readonly Slots[],
): readonly BarForms[] {
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
    const soft = divide(length, times(6, exact(EI)));
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
