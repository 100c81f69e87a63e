import { optional, required, type FieldsOf } from '../../shape/field.ts';
import { firstLine } from '../../shape/misfit.ts';
import { objectOf, type ObjectShape } from '../../shape/object.ts';
import { quantityOf } from '../../shape/quantity.ts';
import { placed, type Shape } from '../../shape/shape.ts';
import { common, ownCase, stretch } from './load-fields.ts';
import type { TemperatureLine } from './load-line.ts';

// Beams do not shorten here, so a mean rise would be taken and come to nothing.
const rise: Shape<never> = {
  expects: 'nothing: a beam takes no mean rise',
  schema: { not: {} },
  read: (tree, reading) => {
    reading.report({
      code: 'rise-on-a-beam',
      message:
        'a mean rise lengthens a member, and the length of a beam is taken as fixed',
      span: firstLine(tree.span, reading.text),
      hints: ['take `rise` out; where the lengthening is held back, write a frame'],
    });
    return undefined;
  },
};

const fields: FieldsOf<TemperatureLine['temperature']['value']> = {
  difference: required(
    quantityOf('temperature'),
    'top minus bottom over the whole depth, positive where the top is warmer',
  ),
  depth: optional(
    quantityOf('length', 'positive'),
    "the depth over which it stands. Default: the cross-section's",
  ),
  expansion: optional(
    quantityOf('expansion', 'positive'),
    "strain per temperature change. Default: the material's",
  ),
  rise: optional(rise, 'not for beams, whose length is taken as fixed'),
};

/** A line of `loads` that warms the top and the bottom unlike. */
export const temperatureLine: ObjectShape<TemperatureLine> = objectOf<TemperatureLine>(
  'a temperature difference',
  {
    ...common,
    ...stretch,
    case: ownCase,
    temperature: required(
      placed(objectOf('a map of difference, depth and expansion', fields)),
      'how much warmer the top is than the bottom',
    ),
  },
);
