import { caseMark } from '../../names.ts';
import { byForm } from '../../shape/choice.ts';
import { optional, required, type Field, type FieldsOf } from '../../shape/field.ts';
import { oneOrMore } from '../../shape/list.ts';
import { mapOf } from '../../shape/map-of.ts';
import { factor } from '../../shape/number.ts';
import { placed, turned, type Placed, type Shape } from '../../shape/shape.ts';
import { oneOf, text } from '../../shape/text.ts';
import { direction } from './direction.ts';
import type { Common, PerCase, PointLine, Stretch, UniformLine } from './load-line.ts';
import { place } from './place.ts';

/** A value that stands alone, written as a text or as a list, or one a case. */
export function perCase<T>(shape: Shape<T>, form: 'text' | 'list'): Shape<PerCase<T>> {
  return byForm<PerCase<T>>({
    [form]: turned(
      placed(shape),
      ({ value, span }) => ({ kind: 'single', value, span }) as const,
    ),
    map: turned(
      placed(mapOf(caseMark, shape, 'a map of cases and sizes')),
      ({ value, span }) => ({ kind: 'cases', cases: value, span }) as const,
    ),
  });
}

/** What every load line may say. */
export const common: FieldsOf<Common> = {
  note: optional(text, 'what the load is, for the sheet'),
  uses: optional(
    oneOrMore(placed(text)),
    'ids of assumptions and references that the load leans on',
  ),
  times: optional(
    perCase(factor, 'text'),
    'a factor on the load, or one a case; `because` says why',
  ),
  because: optional(placed(text), 'the reason for `times`'),
};
/** The case of a line of one case. */
export const ownCase: Field<Placed<string>> = optional(
  placed(caseMark),
  'the load case; may be left out where there is only one, or where the sizes are given by case',
);
/** One place or several. */
export const at: Field<readonly Placed<string>[]> = required(
  oneOrMore(place),
  'where it acts',
);
/** A stretch of the member. */
export const stretch: FieldsOf<Stretch> = {
  from: optional(place, 'where it begins. Default: the first point'),
  to: optional(place, 'where it ends. Default: the last point'),
  span: optional(
    placed(text),
    'two points with a dash between, in place of from and to',
  ),
};
/** Where a force points. */
export const pointing: Field<NonNullable<PointLine['direction']>> = optional(
  direction,
  'where it points: down, up, left, right or an angle from +x, counterclockwise. Default: down',
);
/** Which length a force per length counts. */
export const per: Field<NonNullable<UniformLine['per']>> = optional(
  oneOf('projection'),
  'counts length square to the direction of the load',
);
/** Which piece takes what stands at a hinge. */
export const side: Field<Placed<'left' | 'right'>> = optional(
  placed(oneOf('left', 'right')),
  'which piece takes it, where it stands exactly at a hinge',
);
