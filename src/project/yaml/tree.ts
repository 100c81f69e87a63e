import type { Span } from '../../diagnostics/index.ts';

/**
 * What a definition file says, with the place of every word. Scalars stay the text that was
 * written: whether `2` is a number or the name of a grid line is for the reader of the key to say,
 * so none of YAML's guesses (dates, octal numbers, yes and no) can change a value on the way.
 */
export type Tree = TextTree | ListTree | MapTree | EmptyTree;

/** A scalar as text; `quoted` where the file holds it in quotes or as a block. */
export interface TextTree {
  readonly kind: 'text';
  readonly text: string;
  readonly quoted: boolean;
  readonly span: Span;
}

/** A list, in file order. */
export interface ListTree {
  readonly kind: 'list';
  readonly items: readonly Tree[];
  readonly span: Span;
}

/** A map, in file order, each key once. */
export interface MapTree {
  readonly kind: 'map';
  readonly entries: readonly MapEntry[];
  readonly span: Span;
}

/** One entry of a map. */
export interface MapEntry {
  readonly key: TextTree;
  readonly value: Tree;
}

/** A key without a value, `~` or `null`. */
export interface EmptyTree {
  readonly kind: 'empty';
  readonly span: Span;
}

/** What a tree is, as messages say it. */
export function treeWords(tree: Tree): string {
  switch (tree.kind) {
    case 'text':
      return tree.text.length > 40 || tree.text.includes('\n')
        ? 'a text'
        : `\`${tree.text}\``;
    case 'list':
      return 'a list';
    case 'map':
      return 'a map of keys and values';
    case 'empty':
      return 'nothing';
  }
}

/** The value of a key; undefined where the map does not hold it. */
export function entryOf(map: MapTree, key: string): Tree | undefined {
  return map.entries.find((entry) => entry.key.text === key)?.value;
}
