import type { CaseKind } from './definitions.ts';
import type { GivenQuantity } from '../units/index.ts';
import { caseMark } from './names.ts';
import { byForm, byKey } from './shape/choice.ts';
import { listOf } from './shape/list.ts';
import { mapOf, type Named } from './shape/map-of.ts';
import { factor, numberFrom } from './shape/number.ts';
import {
  defaulted,
  objectOf,
  optional,
  required,
  type ObjectShape,
} from './shape/object.ts';
import { quantityOf } from './shape/quantity.ts';
import { placed, turned, type Placed, type Shape } from './shape/shape.ts';
import { nameOf, oneOf, text, truth } from './shape/text.ts';
import type { Stated } from './definitions.ts';

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

/** The names of the combination sets that standards give. */
export type SetName =
  'asce7-strength' | 'asce7-allowable' | 'en1990-uls' | 'en1990-sls';

/** One entry of `combinations` as written. */
export type CombinationEntry =
  | {
      readonly kind: 'set';
      readonly set: SetName;
      readonly expression?: '6.10' | '6.10ab';
      readonly national?: readonly Named<number>[];
    }
  | {
      readonly kind: 'custom';
      readonly mark: string;
      readonly factors: readonly Named<number>[];
      readonly for: Stated<'strength' | 'service'>;
    };

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

const pressures = mapOf(caseMark, quantityOf('pressure'));

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

const setName = oneOf('asce7-strength', 'asce7-allowable', 'en1990-uls', 'en1990-sls');
const mark: Shape<string> = nameOf(
  "a combination's mark",
  /^\S(.{0,58}\S)?$/u,
  'marks of combinations are one line of at most 60 characters',
);

interface SetEntry {
  readonly set: SetName;
  readonly expression?: '6.10' | '6.10ab';
  readonly national?: readonly Named<number>[];
}
interface CustomEntry {
  readonly mark: string;
  readonly factors: readonly Named<number>[];
  readonly for: Stated<'strength' | 'service'>;
}

const combination: Shape<CombinationEntry> = byForm<CombinationEntry>({
  text: turned(setName, (set) => ({ kind: 'set', set }) as const),
  map: byKey<CombinationEntry>(
    'a combination: a map with `set`, or with `mark` and `factors`',
    {
      set: turned(
        objectOf<SetEntry>('a named set', {
          set: required(setName, 'the name of the set'),
          expression: optional(
            oneOf('6.10', '6.10ab'),
            'the expression of EN 1990. Default: 6.10',
          ),
          national: optional(
            mapOf(text, numberFrom({ from: 0, to: 10 })),
            'values that a national annex sets, by name',
          ),
        }),
        (entry) => ({ ...entry, kind: 'set' }) as const,
      ),
      mark: turned(
        objectOf<CustomEntry>("a sum of the project's own", {
          mark: required(mark, 'the mark under which its results stand'),
          factors: required(mapOf(caseMark, factor), 'the factor of each case'),
          for: defaulted(oneOf('strength', 'service'), 'strength', 'what it is for'),
        }),
        (entry) => ({ ...entry, kind: 'custom' }) as const,
      ),
    },
  ),
});

/** loads.yaml. */
export const loadsFile: ObjectShape<LoadsFile> = objectOf<LoadsFile>(
  'a map of cases, areas and combinations',
  {
    cases: optional(mapOf(caseMark, caseEntry), 'the load cases, by mark'),
    areas: optional(mapOf(text, areaEntry), 'loads per area, by name'),
    combinations: optional(
      listOf(placed(combination)),
      "named sets and sums of the project's own",
    ),
    alternatives: optional(
      listOf(listOf(placed(caseMark), { atLeast: 2 })),
      'groups of cases that never stand together',
    ),
  },
);
