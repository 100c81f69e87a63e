import type { CrossSection, Material } from './definitions.ts';
import { byForm } from './shape/choice.ts';
import { optional, required } from './shape/field.ts';
import { objectOf, type ObjectShape } from './shape/object.ts';
import { quantityOf } from './shape/quantity.ts';
import type { Named } from './shape/map-of.ts';
import { placed, turned, type Placed, type Shape } from './shape/shape.ts';
import { text } from './shape/text.ts';

/** A cross-section or a material as written: its values, or a name to look up. */
export type NamedOr<T> =
  | { readonly kind: 'name'; readonly name: string }
  | { readonly kind: 'values'; readonly values: T };

/** A cross-section as written. */
export type SectionEntry = NamedOr<CrossSection>;

/** A material as written. */
export type MaterialEntry = NamedOr<Material>;

/** A stretch of a stepped beam as written. */
export interface SectionStretch {
  readonly from: Placed<string>;
  readonly to: Placed<string>;
  readonly section: Placed<SectionEntry>;
}

/** The values that a cross-section may state. */
export const sectionValues: ObjectShape<Omit<CrossSection, 'name'>> = objectOf<
  Omit<CrossSection, 'name'>
>('a cross-section: a map of I, S, A, weight and depth', {
  I: optional(
    quantityOf('inertia', 'positive'),
    'second moment of area about the axis of bending',
  ),
  S: optional(quantityOf('volume', 'positive'), 'section modulus'),
  A: optional(quantityOf('area', 'positive'), 'area of the cross-section'),
  weight: optional(quantityOf('force-per-length', 'positive'), 'weight per length'),
  depth: optional(quantityOf('length', 'positive'), 'whole depth'),
  source: optional(text, 'where the values come from'),
});

/** The values that a material may state. */
export const materialValues: ObjectShape<Omit<Material, 'name'>> = objectOf<
  Omit<Material, 'name'>
>('a material: a map of E, density and expansion', {
  E: optional(quantityOf('pressure', 'positive'), 'modulus of elasticity'),
  density: optional(quantityOf('unit-weight', 'positive'), 'weight per volume'),
  expansion: optional(
    quantityOf('expansion', 'positive'),
    'strain per temperature change',
  ),
  source: optional(text, 'where the values come from'),
});

function namedOr<T>(values: Shape<T>): Shape<NamedOr<T>> {
  return byForm<NamedOr<T>>({
    text: turned(text, (name) => ({ kind: 'name', name }) as const),
    map: turned(values, (read) => ({ kind: 'values', values: read }) as const),
  });
}

/** `section`: values, or a designation. */
export const sectionEntry: Shape<SectionEntry> = namedOr<CrossSection>(sectionValues);

/** `material`: values, or a name. */
export const materialEntry: Shape<MaterialEntry> = namedOr<Material>(materialValues);

/** Cross-sections or materials of the project's own by name, each knowing its name; those that could not be read are left out. */
export function namedEntries<T extends object>(
  entries: readonly Named<T>[],
): readonly (readonly [string, T & { readonly name: string }])[] {
  return entries.flatMap(({ name, value }) =>
    value === undefined ? [] : [[name.value, { ...value, name: name.value }] as const],
  );
}

/** One entry of `sections` of a beam. */
export const sectionStretch: Shape<SectionStretch> = objectOf<SectionStretch>(
  'a stretch: from, to and section',
  {
    from: required(placed(text), 'where it begins'),
    to: required(placed(text), 'where it ends'),
    section: required(placed(sectionEntry), 'its cross-section, or a designation'),
  },
);
