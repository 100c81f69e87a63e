import { unitTable } from './unit-table.ts';

/** What people write for units that the table has under another name. */
const otherWords: ReadonlyMap<string, string> = new Map([
  ['foot', 'ft'],
  ['feet', 'ft'],
  ['inch', 'in'],
  ['inches', 'in'],
  ['yard', 'yd'],
  ['yards', 'yd'],
  ['pound', 'lb'],
  ['pounds', 'lb'],
  ['metre', 'm'],
  ['metres', 'm'],
  ['meter', 'm'],
  ['meters', 'm'],
  ['newton', 'N'],
  ['newtons', 'N'],
  ['degree', 'deg'],
  ['degrees', 'deg'],
  ['radian', 'rad'],
  ['radians', 'rad'],
]);

/** What people write as a force and is a mass. */
const masses: ReadonlySet<string> = new Set([
  'g',
  'kg',
  't',
  'tonne',
  'tonnes',
  'ton',
  'tons',
  'slug',
]);

/** The known symbol that somebody most likely meant: the same in other letters, a word for it, or one or two slips away. */
export function nearestUnit(written: string): string | undefined {
  const lower = written.toLowerCase();
  const word = otherWords.get(lower);
  if (word !== undefined) return word;
  const names = unitTable.flatMap(({ symbol, aliases = [] }) =>
    [symbol, ...aliases].map((name) => ({ symbol, name })),
  );
  const inOtherLetters = names.find(({ name }) => name.toLowerCase() === lower);
  if (inOtherLetters !== undefined) return inOtherLetters.symbol;
  const ranked = names
    .filter(({ name }) => name.length > 1)
    .map(({ symbol, name }) => ({ symbol, slips: slipsBetween(written, name) }))
    .filter(({ slips }) => slips <= Math.min(2, written.length / 2))
    .sort((a, b) => a.slips - b.slips);
  return ranked[0]?.symbol;
}

/** True where a word names a mass, which is no load until gravity is applied. */
export function isMass(written: string): boolean {
  return masses.has(written.toLowerCase());
}

/**
 * How many letters must be put in, taken out, changed, or swapped with their neighbour to turn one word into
 * another (optimal string alignment; F. J. Damerau, Communications of the ACM 7 (1964), 171).
 */
export function slipsBetween(a: string, b: string): number {
  const rows: number[][] = [Array.from({ length: b.length + 1 }, (_, j) => j)];
  const at = (i: number, j: number): number => rows[i]?.[j] ?? 0;
  for (let i = 1; i <= a.length; i += 1) {
    const row = [i];
    rows.push(row);
    for (let j = 1; j <= b.length; j += 1) {
      const change = a[i - 1] === b[j - 1] ? 0 : 1;
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      const plain = Math.min(
        at(i - 1, j) + 1,
        at(i, j - 1) + 1,
        at(i - 1, j - 1) + change,
      );
      row.push(swapped ? Math.min(plain, at(i - 2, j - 2) + 1) : plain);
    }
  }
  return at(a.length, b.length);
}
