import type { Reading } from '../reading.ts';
import { commaSlipHint } from '../yaml/slips.ts';
import type { ListTree, MapEntry, MapTree, Tree } from '../yaml/tree.ts';

/** Entries of a map that a comma tore off a number: `{ point: 1,250 lb }` reads as `point: 1` and a key `250 lb`. */
export interface TornEntries {
  /** Entries whose value is the head of such a number, and those whose key is its tail. */
  readonly torn: ReadonlySet<MapEntry>;
}

/** Finds and reports numbers of a map that a comma cut in two. */
export function tornEntries(tree: MapTree, reading: Reading): TornEntries {
  const torn = new Set<MapEntry>();
  for (const [index, after] of tree.entries.entries()) {
    const before = tree.entries[index - 1];
    if (before === undefined || after.value.kind !== 'empty') continue;
    if (!reportIfTorn(before.value, after.key, reading)) continue;
    torn.add(before).add(after);
  }
  return { torn };
}

/** Reports numbers of a list that a comma cut in two, `[1,250 lb]`; true where there are any. */
export function reportTornItems(tree: ListTree, reading: Reading): boolean {
  const found = tree.items.filter((item, index) => {
    const next = tree.items[index + 1];
    // `[1, 250 lb]` with a space is two entries by intent as far as anybody can tell.
    const isClose = next?.span.start === item.span.end + 1;
    return next !== undefined && isClose && reportIfTorn(item, next, reading);
  });
  return found.length > 0;
}

function reportIfTorn(head: Tree, tail: Tree, reading: Reading): boolean {
  if (head.kind !== 'text' || tail.kind !== 'text' || head.quoted || tail.quoted)
    return false;
  const hint = commaSlipHint(head.text, tail.text);
  if (hint === undefined) return false;
  reading.report({
    code: 'comma-in-number',
    message: `the comma ends the entry: this reads as \`${head.text}\` and \`${tail.text}\``,
    span: { ...head.span, end: tail.span.end },
    hints: [hint],
  });
  return true;
}
