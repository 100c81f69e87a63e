import { tabulatedName } from '../tabulated-name.ts';
import type { TabulatedCrossSection } from './cross-section.ts';
import { metricShapes } from './metric-shapes.ts';
import { usShapes } from './us-shapes.ts';

/** Every built-in cross-section, US shapes first. */
export const crossSections: readonly TabulatedCrossSection[] = [
  ...usShapes,
  ...metricShapes,
];

const byName: ReadonlyMap<string, TabulatedCrossSection> = new Map(
  crossSections.map((entry) => [tabulatedName(entry.name), entry]),
);

/** The built-in cross-section of a designation, however it is spelt (`HE 200 A` is `HEA200`); absent where the tables have none. */
export function findCrossSection(name: string): TabulatedCrossSection | undefined {
  const plain = tabulatedName(name).replace(/^he(\d+)([ab])$/, 'he$2$1');
  return byName.get(plain);
}

/** Designations of the built-in cross-sections, for hints. */
export function crossSectionNames(): readonly string[] {
  return crossSections.map((entry) => entry.name);
}
