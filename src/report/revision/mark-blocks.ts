import type { Block, Row } from '../blocks.ts';
import { asPrinted, rowAsPrinted, tableHead } from './as-printed.ts';
import { matchKeys } from './match-keys.ts';

/**
 * The later blocks, each marked that is not in the earlier ones. Where a table, a list or a listing
 * changed, only those of its rows, items and lines are marked that did; where something was taken
 * out, what stood before it is.
 */
export function markBlocks(
  earlier: readonly Block[],
  later: readonly Block[],
): readonly Block[] {
  return markRuns(earlier, later, {
    key: asPrinted,
    mark: (block) => ({ ...block, isChanged: true }),
    within: markWithin,
  });
}

/** True where any of the blocks, or anything in them, is marked. */
export function hasMarks(blocks: readonly Block[]): boolean {
  return blocks.some((block) => block.isChanged === true || hasMarksWithin(block));
}

function hasMarksWithin(block: Block): boolean {
  if (block.kind === 'group') return hasMarks(block.blocks);
  if (block.kind === 'list') return block.items.some(hasMarks);
  if (block.kind === 'table')
    return block.body.some(({ isChanged }) => isChanged === true);
  return block.kind === 'listing' && (block.changed ?? []).length > 0;
}

interface Marking<T> {
  readonly key: (one: T) => string;
  readonly mark: (one: T) => T;
  /** The later thing with only those of its parts marked that changed; undefined where it is another thing altogether. */
  readonly within?: (earlier: T, later: T) => T | undefined;
}

/** Marks what has no equal; between two that do, things of a kind are paired in their order. */
function markRuns<T>(
  earlier: readonly T[],
  later: readonly T[],
  { key, mark, within }: Marking<T>,
): readonly T[] {
  const pairs = matchKeys(earlier.map(key), later.map(key));
  const marked = [...later];
  let [from, to] = [0, 0];
  for (const [one, other] of [...pairs, [earlier.length, later.length] as const]) {
    const gone = earlier.slice(from, one);
    if (other > to) {
      const unpaired = [...gone];
      for (let index = to; index < other; index += 1) {
        const now = later[index] as T;
        marked[index] = pairWithin(unpaired, now, within) ?? mark(now);
      }
    } else if (gone.length > 0 && later.length > 0) {
      const beside = Math.max(0, to - 1);
      marked[beside] = mark(marked[beside] as T);
    }
    [from, to] = [one + 1, other + 1];
  }
  return marked;
}

/** Takes the first of the earlier things that the later one is a change of. */
function pairWithin<T>(
  unpaired: T[],
  now: T,
  within: Marking<T>['within'],
): T | undefined {
  for (const [index, before] of unpaired.entries()) {
    const found = within?.(before, now);
    if (found === undefined) continue;
    unpaired.splice(0, index + 1);
    return found;
  }
  return undefined;
}

const rows: Marking<Row> = {
  key: rowAsPrinted,
  mark: (row) => ({ ...row, isChanged: true }),
};

function markWithin(earlier: Block, later: Block): Block | undefined {
  if (later.kind === 'table' && earlier.kind === 'table') {
    if (tableHead(earlier) !== tableHead(later)) return undefined;
    return { ...later, body: markRuns(earlier.body, later.body, rows) };
  }
  if (later.kind === 'group' && earlier.kind === 'group') {
    if (earlier.role !== later.role) return undefined;
    return { ...later, blocks: markBlocks(earlier.blocks, later.blocks) };
  }
  if (later.kind === 'list' && earlier.kind === 'list')
    return { ...later, items: markItems(earlier.items, later.items) };
  if (later.kind === 'listing' && earlier.kind === 'listing')
    return { ...later, changed: changedLines(earlier.lines, later.lines) };
  return undefined;
}

type Items = Extract<Block, { kind: 'list' }>['items'];

function markItems(earlier: Items, later: Items): Items {
  return markRuns(earlier, later, {
    key: (item) => item.map(asPrinted).join('\n'),
    mark: (item) => item.map((block) => ({ ...block, isChanged: true })),
  });
}

/** Lines of a file that are new or not as they were, counted from 0. */
function changedLines(
  earlier: readonly string[],
  later: readonly string[],
): readonly number[] {
  const marked = markRuns(
    earlier.map((text) => ({ text, isChanged: false })),
    later.map((text) => ({ text, isChanged: false })),
    { key: ({ text }) => text, mark: (line) => ({ ...line, isChanged: true }) },
  );
  return marked.flatMap(({ isChanged }, index) => (isChanged ? [index] : []));
}
