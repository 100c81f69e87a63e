import type { Stated } from '../definitions.ts';
import { caseMark } from '../names.ts';
import { byForm, byKey } from '../shape/choice.ts';
import { mapOf, type Named } from '../shape/map-of.ts';
import { factor, numberFrom } from '../shape/number.ts';
import { defaulted, optional, required } from '../shape/field.ts';
import { objectOf } from '../shape/object.ts';
import { turned, type Shape } from '../shape/shape.ts';
import { nameOf, oneOf, text } from '../shape/text.ts';

/** The names of the combination sets that standards give. */
type SetName = 'asce7-strength' | 'asce7-allowable' | 'en1990-uls' | 'en1990-sls';

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

/** One entry of `combinations:` of loads.yaml. */
export const combinationEntry: Shape<CombinationEntry> = byForm<CombinationEntry>({
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
            mapOf(text, numberFrom({ from: 0, to: 10 }), 'a map of names and numbers'),
            'values that a national annex sets, by name',
          ),
        }),
        (entry) => ({ ...entry, kind: 'set' }) as const,
      ),
      mark: turned(
        objectOf<CustomEntry>("a sum of the project's own", {
          mark: required(mark, 'the mark under which its results stand'),
          factors: required(
            mapOf(caseMark, factor, 'a map of cases and factors'),
            'the factor of each case',
          ),
          for: defaulted(oneOf('strength', 'service'), 'strength', 'what it is for'),
        }),
        (entry, tree, reading) => {
          if (entry.factors.length > 0) return { ...entry, kind: 'custom' } as const;
          reading.report({
            code: 'empty-value',
            message: `the combination ${entry.mark} adds up nothing`,
            span: tree.span,
            hints: ['give the factor of each case: factors: { D: 1, L: 0.5 }'],
          });
          return undefined;
        },
      ),
    },
  ),
});
