import { angleUnits, siUnits } from './si-units.ts';
import type { UnitEntry } from './unit-entry.ts';
import { usUnits } from './us-units.ts';

/** Every unit symbol that the program reads or prints, each with its worth and the source of it. */
export const unitTable: readonly UnitEntry[] = [...usUnits, ...siUnits, ...angleUnits];

const bySymbol: ReadonlyMap<string, UnitEntry> = new Map(
  unitTable.map((entry) => [entry.symbol, entry]),
);
const byAnyName: ReadonlyMap<string, UnitEntry> = new Map(
  unitTable.flatMap((entry) =>
    [entry.symbol, ...(entry.aliases ?? [])].map((name) => [name, entry] as const),
  ),
);

/** The entry of a canonical symbol; anything else is a programmer's mistake, a RangeError. */
export function unitEntry(symbol: string): UnitEntry {
  const entry = bySymbol.get(symbol);
  if (entry === undefined) throw new RangeError(`no unit has the symbol ${symbol}`);
  return entry;
}

/** The entry that somebody's symbol stands for, aliases too; case matters (`K` is kelvin, `k` is kip). */
export function findUnit(name: string): UnitEntry | undefined {
  return byAnyName.get(name);
}
