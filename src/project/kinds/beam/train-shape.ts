import { byForm } from '../../shape/choice.ts';
import { defaulted, optional, required, type FieldsOf } from '../../shape/field.ts';
import { oneOrMore } from '../../shape/list.ts';
import { numberFrom } from '../../shape/number.ts';
import { objectOf, type ObjectShape } from '../../shape/object.ts';
import { quantityOf } from '../../shape/quantity.ts';
import { placed, turned, type Placed, type Shape } from '../../shape/shape.ts';
import { oneOf, text } from '../../shape/text.ts';
import { ownCase } from './load-fields.ts';
import type { AxlesLine } from './load-line.ts';
import { spacing } from './spacing.ts';

/** Factors of a train: both are given where one number stands for both. */
export type TrainFactors = NonNullable<AxlesLine['times']>['value'];

// A factor of 0 or less would leave no train; what is not there is left out of the file.
const factor = numberFrom({ from: 0.001, to: 1000 });

const factorFields: FieldsOf<TrainFactors> = {
  axles: optional(factor, 'the factor on the axles'),
  lane: optional(factor, 'the factor on the lane load'),
};

const factors: Shape<Placed<TrainFactors>> = placed(
  byForm<TrainFactors>({
    text: turned(factor, (both) => ({ axles: both, lane: both })),
    map: objectOf<TrainFactors>('a map of `axles` and `lane`', factorFields),
  }),
);

/** A line of `loads` whose axles roll along the beam. */
export const axlesLine: ObjectShape<AxlesLine> = objectOf<AxlesLine>('a moving load', {
  case: ownCase,
  axles: required(
    placed(oneOrMore(quantityOf('force', 'positive'))),
    'the axle loads, front first',
  ),
  spacing: optional(
    placed(oneOrMore(spacing)),
    'from each axle to the next, one fewer than axles: 14 ft, or 14 ft to 30 ft',
  ),
  travel: defaulted(
    oneOf('right', 'left', 'both'),
    'both',
    'which way the front axle leads',
  ),
  lane: optional(
    quantityOf('force-per-length', 'positive'),
    'a force per length beside the axles, placed only where it makes things worse',
  ),
  times: optional(
    factors,
    'a factor on both, or `axles` and `lane`; `because` says why',
  ),
  because: optional(placed(text), 'the reason for `times`'),
  relieving: defaulted(
    oneOf('kept', 'left out'),
    'kept',
    'whether axles that reduce the effect sought still count',
  ),
  note: optional(text, 'what the train is, for the sheet'),
  uses: optional(
    oneOrMore(placed(text)),
    'ids of assumptions and references that it leans on',
  ),
});
