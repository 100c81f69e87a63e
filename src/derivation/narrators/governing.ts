import type { Symbol } from '../../equation/index.ts';
import type { Combination } from '../../standards/index.ts';
import type {
  BeamResult,
  EntryResult,
  Extreme,
  RangeResult,
} from '../../statics/index.ts';
import { momentSymbol, shearSymbol } from '../symbols.ts';

/** A result and the combination that it is for; cases have none. */
export interface Entry {
  readonly result: BeamResult;
  /** Where the entry has no single state: its bounds. `result` is then the state that is narrated. */
  readonly range?: RangeResult;
  readonly combination?: Combination;
}

/** Entries that are judged together. */
export interface JudgedGroup {
  readonly for: 'cases' | 'strength' | 'service';
  readonly entries: readonly Entry[];
}

/** A quantity of which one entry gives the most. */
export type Governed = 'moment-max' | 'moment-min' | 'shear';

/** The value of the greater size, with its sign; of two of one size the first. */
export function signedGreatest(a: number, b: number): number {
  return Math.abs(b) > Math.abs(a) * (1 + 1e-9) ? b : a;
}

/** What an entry is judged on: its bounds where it has no single state. */
export function judgedBy({ result, range }: Entry): EntryResult {
  return range ?? result;
}

/** An extreme of one entry, signed, with its station. */
export function extremeOf(entry: Entry, what: Governed): Extreme {
  const { shear, moment } = judgedBy(entry).extremes;
  if (what === 'moment-max') return moment.max;
  if (what === 'moment-min') return moment.min;
  const isMax = signedGreatest(shear.max.value, shear.min.value) === shear.max.value;
  return isMax ? shear.max : shear.min;
}

/** How much an entry gives of what is sought: positive where it gives any. */
export function sizeOf(entry: Entry, what: Governed): number {
  const { value } = extremeOf(entry, what);
  if (what === 'shear') return Math.abs(value);
  return what === 'moment-max' ? value : 0 - value;
}

/** True where an entry comes to as much as the one that governs, as far as rounding lets one tell. */
export function comesToTheSame(
  entry: Entry,
  governing: Entry,
  what: Governed,
): boolean {
  return sizeOf(entry, what) >= sizeOf(governing, what) * (1 - 1e-9);
}

/** The entry that gives most; of several that come to the same the first. */
export function governingEntry(
  entries: readonly Entry[],
  what: Governed,
): Entry | undefined {
  const [first, ...others] = entries;
  if (first === undefined) return undefined;
  const most = others.reduce(
    (a, b) => (sizeOf(b, what) > sizeOf(a, what) ? b : a),
    first,
  );
  return entries.find((entry) => comesToTheSame(entry, most, what)) ?? most;
}

/** `M_max`, `M_min` or `V_max`. */
export function extremeSymbol(what: Governed): Symbol {
  const letter = what === 'shear' ? shearSymbol : momentSymbol;
  const word = what === 'moment-min' ? 'min' : 'max';
  const meaning = `${word === 'max' ? 'greatest' : 'least'} ${letter.meaning}`;
  return { ...letter, subscript: word, meaning };
}
