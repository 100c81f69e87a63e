import type { DesignLoad } from '../definitions.ts';
import { limitsMap, type LimitEntry } from '../names.ts';
import { listOf } from '../shape/list.ts';
import type { Named } from '../shape/map-of.ts';
import { optional, required } from '../shape/field.ts';
import { objectOf } from '../shape/object.ts';
import type { Shape } from '../shape/shape.ts';
import { text } from '../shape/text.ts';

/** `criteria:` as written. */
export interface CriteriaEntry {
  readonly standards?: readonly string[];
  readonly deflection_limits?: readonly Named<LimitEntry>[];
  readonly design_loads?: readonly DesignLoad[];
}

/** `criteria:` of project.yaml. */
export const criteriaEntry: Shape<CriteriaEntry> = objectOf<CriteriaEntry>(
  'a map of standards, limits and loads',
  {
    standards: optional(
      listOf(text),
      'the standards that the calculations follow, with their editions',
    ),
    deflection_limits: optional(limitsMap, 'limits by case, combination or sum: L/360'),
    design_loads: optional(
      listOf(
        objectOf<DesignLoad>('a design load: a map that begins with its item', {
          item: required(text, 'what it is'),
          symbol: optional(text, 'its symbol'),
          value: required(text, 'its value, printed as given'),
          source: optional(text, 'where it comes from'),
          level: optional(text, 'strength or service, as the source has it'),
        }),
      ),
      'loads that are printed as given, whether they govern or not',
    ),
  },
);
