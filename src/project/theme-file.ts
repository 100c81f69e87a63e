import { defaultTheme } from '../theme/index.ts';
import { listOf } from './shape/list.ts';
import { numberFrom } from './shape/number.ts';
import { optional, type Field, type FieldsOf } from './shape/field.ts';
import { objectOf, type ObjectShape } from './shape/object.ts';
import type { Shape } from './shape/shape.ts';

type Values = Readonly<Record<string, unknown>>;

/** Lengths and sizes in points; no page holds more. */
const points = numberFrom({ from: 0, to: 1000 });
/** Parts of red, green and blue. */
const colour = listOf(numberFrom({ from: 0, to: 1 }), { atLeast: 3, atMost: 3 });

/** theme.yaml: any part of the default theme, laid over it; made from the default theme, so that both know the same keys. */
export const themeFile: ObjectShape<Values> = overlay(
  'a map of paper, text, line and colour',
  defaultTheme,
);

function overlay(expects: string, part: object): ObjectShape<Values> {
  const fields = Object.entries(part).map(
    ([key, value]: [string, unknown]): [string, Field<unknown>] => [
      key,
      optional(shapeLike(key, value), `default: ${JSON.stringify(value)}`),
    ],
  );
  return objectOf<Values>(expects, Object.fromEntries(fields) as FieldsOf<Values>);
}

function shapeLike(key: string, value: unknown): Shape<unknown> {
  if (typeof value === 'number') return points;
  if (Array.isArray(value)) return colour;
  return typeof value === 'object' && value !== null
    ? overlay(`a map of sizes for ${key}`, value)
    : points;
}
