import type { FontBook } from '../font/index.ts';
import type { Block } from '../report/index.ts';
import type { Theme } from '../theme/index.ts';
import type { Typesetter } from '../typeset/index.ts';
import type { Band } from './band.ts';
import type { ElementNode } from './element-node.ts';
import type { Hyphenate } from './hyphenate.ts';
import type { Words } from './words.ts';

/** What is known of anchors while a part is being set. */
export interface AnchorBook {
  /** The number of the sheet that an anchor stands on, as printed; `?` where there is no such anchor. */
  readonly sheetOf: (anchor: string) => string;
  /** What a reader is told about a link to the anchor: `Sheet 7: B1 Deck stringer`; undefined where there is none. */
  readonly says: (anchor: string) => string | undefined;
  /** The number of sheets of the package, as printed. */
  readonly sheetCount: () => string;
}

/** The column that blocks are set in. */
export interface Column {
  /** Its left edge, from the left edge of the page's text column. */
  readonly x: number;
  readonly width: number;
  /** The tallest that a thing may be and still stand on a page. */
  readonly height: number;
  /** The margin column, measured likewise; absent where there is none. */
  readonly margin?: { readonly x: number; readonly width: number };
}

/** A block set: its bands, and its elements in reading order. */
export interface SetBlock {
  readonly bands: readonly Band[];
  readonly nodes: readonly ElementNode[];
  /** Must not be the last thing on a page: headings. */
  readonly keepsWithNext?: boolean;
}

/** Everything that setting a block may ask for. */
export interface Setting {
  readonly theme: Theme;
  readonly fonts: FontBook;
  readonly typesetter: Typesetter;
  readonly words: Words;
  readonly hyphenate: Hyphenate;
  readonly anchors: AnchorBook;
  /** Pictures that may be placed, by their path in the project folder. */
  readonly hasImage: (source: string) => boolean;
  /** Something the reader of the remarks should know. */
  readonly remark: (remark: string) => void;
  /** Sets blocks that stand inside a block. */
  readonly setBlocks: (blocks: readonly Block[], column: Column) => SetBlock;
}
