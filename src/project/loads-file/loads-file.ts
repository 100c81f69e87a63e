import type { CaseKind, Stated } from '../definitions.ts';
import type { GivenQuantity } from '../../units/index.ts';
import { caseMark } from '../names.ts';
import { listOf } from '../shape/list.ts';
import { mapOf, type Named } from '../shape/map-of.ts';
import { defaulted, optional } from '../shape/field.ts';
import { objectOf, type ObjectShape } from '../shape/object.ts';
import { quantityOf } from '../shape/quantity.ts';
import { placed, type Placed, type Shape } from '../shape/shape.ts';
import { oneOf, text, truth } from '../shape/text.ts';
import { combinationEntry, type CombinationEntry } from './combination-entry.ts';

/** A load case as written. */
export interface CaseEntry {
  readonly title?: string;
  readonly kind?: CaseKind;
  readonly source?: string;
  readonly pattern: Stated<boolean>;
  readonly category?: string;
}

/** An area load as written: pressures by case, and where they come from. */
export interface AreaEntry {
  readonly source?: string;
  readonly byCase: readonly Named<GivenQuantity>[];
}

/** loads.yaml as written. */
export interface LoadsFile {
  readonly cases?: readonly Named<CaseEntry>[];
  readonly areas?: readonly Named<AreaEntry>[];
  readonly combinations?: readonly Placed<CombinationEntry>[];
  readonly alternatives?: readonly (readonly Placed<string>[])[];
}

const caseEntry: Shape<CaseEntry> = objectOf<CaseEntry>(
  'a load case: a map of title, kind and so on',
  {
    title: optional(text, 'what the case is called'),
    kind: optional(
      oneOf(
        'dead',
        'live',
        'roof-live',
        'snow',
        'rain',
        'wind',
        'seismic',
        'earth',
        'fluid',
        'temperature',
        'settlement',
      ),
      'what the case is, which decides how combinations take it',
    ),
    source: optional(text, 'where its loads come from'),
    pattern: defaulted(
      truth,
      false,
      'whether it may stand on some spans and not on others',
    ),
    category: optional<string>(
      oneOf('A', 'B', 'C', 'D', 'E', 'F', 'G', 'H'),
      'the category of EN 1990 Table A1.1',
    ),
  },
);

const pressures = mapOf(
  caseMark,
  quantityOf('pressure'),
  'a map of cases and pressures',
);

// The one map where a known key stands among names of the user's own: `source` is no case.
const areaEntry: Shape<AreaEntry> = {
  expects: 'an area load: a map of pressures by case',
  schema: {
    ...pressures.schema,
    properties: {
      source: { ...text.schema, description: 'where the pressures come from' },
    },
  },
  read: (tree, reading) => {
    if (tree.kind !== 'map')
      return pressures.read(tree, reading) === undefined ? undefined : { byCase: [] };
    const source = tree.entries.find((entry) => entry.key.text === 'source');
    const rest = { ...tree, entries: tree.entries.filter((entry) => entry !== source) };
    const byCase = pressures.read(rest, reading);
    const said = source === undefined ? undefined : text.read(source.value, reading);
    return byCase === undefined
      ? undefined
      : { byCase, ...(said === undefined ? {} : { source: said }) };
  },
};

/** loads.yaml. */
export const loadsFile: ObjectShape<LoadsFile> = objectOf<LoadsFile>(
  'a map of cases, areas and combinations',
  {
    cases: optional(
      mapOf(caseMark, caseEntry, 'a map of marks and cases'),
      'the load cases, by mark',
    ),
    areas: optional(
      mapOf(text, areaEntry, 'a map of names and area loads'),
      'loads per area, by name',
    ),
    combinations: optional(
      listOf(placed(combinationEntry)),
      "named sets and sums of the project's own",
    ),
    alternatives: optional(
      listOf(listOf(placed(caseMark), { atLeast: 2 })),
      'groups of cases that never stand together',
    ),
  },
);
