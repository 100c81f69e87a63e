import type { Expression, Statement } from '../equation/index.ts';
import type { FigureSpec } from '../figure/index.ts';

/** How a run of text is set. */
export type TextStyle =
  'plain' | 'emphasis' | 'strong' | 'small-caps' | 'muted' | 'code';

/** A part of a line of text. */
export type Inline =
  | { readonly kind: 'text'; readonly text: string; readonly style: TextStyle }
  /** Mathematics on the text's baseline. */
  | { readonly kind: 'math'; readonly expression: Expression }
  /** A forced line break. */
  | { readonly kind: 'break' }
  /** A link to an anchor of the package. */
  | {
      readonly kind: 'link';
      readonly anchor: string;
      readonly content: readonly Inline[];
    }
  /** The number of the sheet that an anchor stands on, set as a link. */
  | { readonly kind: 'sheet-number'; readonly anchor: string }
  /** The number of sheets of the whole package. */
  | { readonly kind: 'sheet-count' }
  /** A ruled blank to write on, as wide as given in points. */
  | { readonly kind: 'blank'; readonly width: number };

/** A cell of a table. */
export interface Cell {
  readonly content: readonly Inline[];
  readonly isHead: boolean;
  readonly colSpan: number;
}

/** A row of cells. */
export interface Row {
  readonly cells: readonly Cell[];
  /** A heavier rule above: totals, groups. */
  readonly isRuled?: boolean;
  /** Heads the rows that follow it: never the last row of a page. */
  readonly headsRows?: boolean;
  /** Differs from the revision before, or was not there: a bar stands beside it. */
  readonly isChanged?: boolean;
}

/** How a column is set: decimal columns line their points up. */
export type ColumnAlign = 'left' | 'right' | 'centre' | 'decimal';

/**
 * A block of the report, in reading order. This is all that layout knows; every block comes from
 * an element of the templates' HTML, and the PDF's tags mirror the same elements.
 */
export type Block = BlockKind & {
  /** Differs from the revision before, or was not there: a bar stands beside it. */
  readonly isChanged?: boolean;
};

type BlockKind =
  | {
      readonly kind: 'heading';
      readonly level: 1 | 2 | 3;
      readonly content: readonly Inline[];
      readonly anchor?: string;
      /** Also a bookmark of the PDF, at this depth (1 outermost); absent: none. */
      readonly bookmark?: number;
    }
  | {
      readonly kind: 'paragraph';
      readonly content: readonly Inline[];
      readonly style:
        'body' | 'small' | 'lead' | 'note' | 'caution' | 'field' | 'title';
      /** Stands in the right margin beside the first line: references and flags. */
      readonly margin?: readonly Inline[];
      readonly keepWithNext?: boolean;
    }
  | {
      readonly kind: 'list';
      readonly isOrdered: boolean;
      readonly items: readonly (readonly Block[])[];
    }
  | {
      readonly kind: 'table';
      readonly columns: readonly ColumnAlign[];
      readonly head: readonly Row[];
      readonly body: readonly Row[];
      readonly caption?: readonly Inline[];
      /** `plain` has no rules (fields and values), `ruled` a rule above, below the head and at the foot. */
      readonly style: 'ruled' | 'plain';
      readonly size: 'body' | 'small';
      /** Spread over the whole width of the text rather than as wide as its cells. */
      readonly isWide?: boolean;
    }
  /** Lines stacked on their relation signs; `keepWithPrevious` holds it to the sentence that introduces it. */
  | {
      readonly kind: 'equation';
      readonly statement: Statement;
      readonly keepWithPrevious: boolean;
    }
  | {
      readonly kind: 'figure';
      readonly figure: FigureSpec;
      readonly caption?: readonly Inline[];
      readonly anchor?: string;
    }
  | {
      readonly kind: 'image';
      readonly source: string;
      readonly width: number;
      readonly height: number;
      readonly alternate: string;
    }
  /** Lines as they stand in a file, each with its number. */
  | {
      readonly kind: 'listing';
      readonly lines: readonly string[];
      /** Lines that differ from the revision before, counted from 0. */
      readonly changed?: readonly number[];
    }
  /** Blank paper: a seal's space, a gap. */
  | { readonly kind: 'space'; readonly height: number; readonly label?: string }
  | {
      readonly kind: 'group';
      /** `box`: ruled all round and kept whole; `keep`: kept whole; `section`: no look of its own. */
      readonly role: 'box' | 'keep' | 'section';
      readonly blocks: readonly Block[];
      readonly anchor?: string;
    };

/** What stands in the strip at the foot of every sheet. */
export interface RunningFoot {
  readonly project: string;
  readonly number?: string;
  /** Member mark and title, or the part's name. */
  readonly subject: string;
  readonly revision?: string;
  readonly revisionDate?: string;
  readonly prepared: string;
  readonly checked: string;
  readonly status: string;
  /** What replaces a superseded package, where it says so. */
  readonly supersededBy?: string;
}

/** A part of the package that begins on a sheet of its own. */
export interface Part {
  readonly anchor: string;
  readonly title: string;
  /** `cover` is set without a margin column; others are body. */
  readonly look: 'cover' | 'body';
  readonly foot: RunningFoot;
  readonly blocks: readonly Block[];
}

/** The document as blocks: what templates made of the derivations. */
export interface Report {
  readonly title: string;
  readonly author?: string;
  readonly language: 'en';
  readonly paper: 'letter' | 'a4';
  readonly parts: readonly Part[];
  /** Marked across each sheet of a void or superseded package. */
  readonly stamp?: string;
  /** The revision's mark, set beside the first bar of each sheet that changed and in its foot. */
  readonly changeMark?: string;
}
