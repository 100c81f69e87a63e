import { agreementTolerance, type Difference } from '../verification.ts';
import { bareKind, type ScaleOf } from './figure-scales.ts';
import { isObject, keyOf, textOf, type Json, type JsonObject } from './json.ts';
import { figureWords, nameBelow, tellApart, wordsOf } from './name-figure.ts';
import { pairItems } from './pair-items.ts';

/** Told what is found on the way. */
export interface Tally {
  readonly tell: (difference: Difference) => void;
  /** Of what only the computed state has because its format has grown. */
  readonly remark: (sentence: string) => void;
  /** Of each number compared, by which share it differs. */
  readonly count: (share: number) => void;
}

/** Where a value stands. */
export interface Place {
  readonly member: string;
  /** What it is called: `result L, moment max`. */
  readonly what: string;
  /** The key that it stands under. */
  readonly key: string;
  /** True for an object whose keys are marks of the project's, not words of the format. */
  readonly isByMark?: boolean;
  readonly scaleOf: ScaleOf;
  readonly tally: Tally;
}

/** Sheet numbers are where a figure is printed, not figures; an error is compared by its code, its words may be improved. */
const leftOut: ReadonlySet<string> = new Set(['sheet', 'error']);

/** What stands under these keys has names that say all: `result L`, `check deflection L`. */
const namedContent: ReadonlySet<string> = new Set([
  'results',
  'reactions',
  'checks',
  'closure',
  'stations',
  'spans',
  'trains',
  'axles',
  'lane',
]);

/** Compares two values and all that stands in them. */
export function compareValues(
  place: Place,
  archived: Json | undefined,
  computed: Json | undefined,
): void {
  if (isObject(archived) && isObject(computed)) {
    if (isFigure(archived) && isFigure(computed))
      compareNumbers(place, archived, computed);
    compareKeys(place, archived, computed);
  } else if (Array.isArray(archived) && Array.isArray(computed)) {
    compareLists(place, archived as readonly Json[], computed as readonly Json[]);
  } else if (typeof archived === 'number' && typeof computed === 'number') {
    const unit = '';
    compareNumbers(place, { value: archived, unit }, { value: computed, unit });
  } else if (archived !== computed) {
    tellEnds(place, archived, computed);
  }
}

interface FigureParts {
  readonly value: number;
  readonly unit: string;
}

function isFigure(value: Json | undefined): value is JsonObject & FigureParts {
  return (
    typeof keyOf(value, 'value') === 'number' && textOf(value, 'unit') !== undefined
  );
}

function compareNumbers(
  place: Place,
  archived: FigureParts,
  computed: FigureParts,
): void {
  const { member, what, key, scaleOf, tally } = place;
  if (archived.unit !== computed.unit) {
    tellEnds(place, { ...archived }, { ...computed });
    return;
  }
  const scale = scaleOf(archived.unit === '' ? bareKind(key) : archived.unit);
  const gap = Math.abs(computed.value - archived.value);
  const share = gap === 0 ? 0 : scale > 0 ? gap / scale : 1;
  tally.count(share);
  if (share <= agreementTolerance) return;
  const [one, other] = tellApart(archived.value, computed.value);
  tally.tell({
    member,
    what,
    archived: figureWords(one, archived.unit),
    computed: figureWords(other, computed.unit),
    share,
  });
}

function compareKeys(place: Place, archived: JsonObject, computed: JsonObject): void {
  const isByMark = place.isByMark ?? false;
  const isDone = isFigure(archived) && isFigure(computed);
  for (const key of new Set([...Object.keys(archived), ...Object.keys(computed)])) {
    const isKnown = isDone && (key === 'value' || key === 'unit');
    if (isKnown || (!isByMark && leftOut.has(key))) continue;
    const [one, other] = [keyOf(archived, key), keyOf(computed, key)];
    // Marks are the project's; every other key is the format's, which may grow.
    if (one === undefined && !isByMark)
      place.tally.remark(
        `this version also gives ${nameBelow('', key)}, which the archived results do not have`,
      );
    else compareValues(below(place, key, archived), one, other);
  }
}

/** The place of what stands under a key. */
function below(
  { isByMark, ...place }: Place,
  key: string,
  archived: JsonObject,
): Place {
  if (isByMark === true) return { ...place, key: 'entry', what: `result ${key}` };
  const what = namedContent.has(key) ? place.what : nameBelow(place.what, key);
  const inner = { ...place, key, what, isByMark: key === 'results' };
  // A residual is measured by the terms that it is left over from, and they by themselves.
  const scale = 'residual' in archived ? keyOf(archived, 'scale') : undefined;
  return isFigure(scale) ? { ...inner, scaleOf: () => Math.abs(scale.value) } : inner;
}

function compareLists(
  place: Place,
  archived: readonly Json[],
  computed: readonly Json[],
): void {
  for (const pair of pairItems(place.key, archived, computed)) {
    const what = place.what === '' ? pair.name : `${place.what}, ${pair.name}`;
    compareValues({ ...place, what }, pair.archived, pair.computed);
  }
}

/** Tells both states in words, one that there is not left out. */
export function tellEnds(
  { member, what, tally }: Place,
  archived: Json | undefined,
  computed: Json | undefined,
): void {
  const [one, other] = [wordsOf(archived), wordsOf(computed)];
  tally.tell({
    member,
    what,
    ...(one === undefined ? {} : { archived: one }),
    ...(other === undefined ? {} : { computed: other }),
  });
}
