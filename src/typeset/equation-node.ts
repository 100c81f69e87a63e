import type { Family } from './equation-face.ts';

/** How lines of unequal width stand in a stack; inherited from the outside in. */
export type Align = 'left' | 'centre' | 'right';

/** A change of face: what is absent stays as inherited. */
export interface FaceChange {
  readonly family?: Family;
  readonly bold?: boolean;
  readonly italic?: boolean;
}

/** What a node is to line breaking. Only nodes on the outer level are asked. */
export type Role =
  | 'relation'
  | 'operator'
  | 'open'
  | 'close'
  | 'space'
  | 'break-allowed'
  | 'break-forbidden'
  | 'other';

/**
 * What every node says of itself. Lengths in ems of the node's OWN font size, unless said
 * otherwise; y is down.
 */
export interface Look {
  /** The node's font size over its parent's. */
  readonly scale: number;
  readonly face: FaceChange | undefined;
  /** A colour as it was written; `transparent` keeps the room and draws nothing. */
  readonly colour: string | undefined;
  readonly align: Align | undefined;
  /** Room before and after the content: margins and padding, signed. */
  readonly before: number;
  readonly after: number;
  /** How far the node is drawn below and right of its place; it takes no room. */
  readonly drop: number;
  readonly shift: number;
  /** A width that replaces the content's own. */
  readonly advance: number | undefined;
  /** Height above and depth below the baseline, in ems of the PARENT. */
  readonly height: number;
  readonly depth: number;
  readonly role: Role;
}

/** Characters of one face on one baseline. */
export interface GlyphsNode extends Look {
  readonly kind: 'glyphs';
  readonly text: string;
}

/** Nodes side by side on one baseline. An empty row is a space. */
export interface RowNode extends Look {
  readonly kind: 'row';
  readonly children: readonly EquationNode[];
}

/** One line of a stack. Lengths in ems of the stack. */
export interface StackLine {
  /** The line's baseline below the stack's. */
  readonly below: number;
  readonly before: number;
  readonly after: number;
  /** Where given, the line is the stack's width less this, instead of less its margins. */
  readonly narrowedBy: number | undefined;
  /** True where the line begins at the left whatever the stack's alignment. */
  readonly atLeft: boolean;
  readonly node: EquationNode;
}

/** Lines above each other: fractions, scripts, limits, columns of a matrix. In drawing order. */
export interface StackNode extends Look {
  readonly kind: 'stack';
  readonly lines: readonly StackLine[];
}

/** A rule as wide as the line of a stack that it stands on: fraction bar, overline, strike. */
export interface BarNode extends Look {
  readonly kind: 'bar';
  readonly thickness: number;
  readonly isDashed: boolean;
}

/** A rule of its own size (\rule), its foot raised above the baseline. */
export interface RuleNode extends Look {
  readonly kind: 'rule';
  readonly width: number;
  readonly tall: number;
  readonly raise: number;
}

/** A vertical line between the columns of an array; it takes no room. */
export interface SeparatorNode extends Look {
  readonly kind: 'separator';
  readonly thickness: number;
  readonly tall: number;
  /** How far its foot is below the baseline. */
  readonly below: number;
  readonly isDashed: boolean;
}

/** A box as wide as its line: \boxed, \fbox, \colorbox, or two sides of one (\angl). */
export interface FrameNode extends Look {
  readonly kind: 'frame';
  readonly tall: number;
  /** Thickness of its border, 0 for none. */
  readonly thickness: number;
  readonly sides: 'all' | 'top-right';
  readonly border: string | undefined;
  readonly background: string | undefined;
}

/** How a path's view box is fitted into the room of its piece. */
export type Fit =
  | 'stretch'
  | 'meet-left'
  | 'meet-middle'
  | 'slice-left'
  | 'slice-middle'
  | 'slice-right';

/** A filled path of a picture, its view box fitted into a part of the picture's width. */
export interface PathPiece {
  readonly kind: 'path';
  /** Where the piece begins and how wide it is, as shares of the picture's width. */
  readonly from: number;
  readonly share: number;
  readonly viewWidth: number;
  readonly viewHeight: number;
  readonly fit: Fit;
  /** SVG path data. */
  readonly data: string;
}

/** A stroke from corner to corner of a picture: \cancel and its family. */
export interface StrokePiece {
  readonly kind: 'stroke';
  readonly thickness: number;
  readonly isRising: boolean;
}

/** An outline drawn to measure: roots, braces, arrows, tall delimiters, strikes. */
export interface PictureNode extends Look {
  readonly kind: 'picture';
  readonly tall: number;
  /** Its width, or how it takes the width of its line. */
  readonly width: { readonly fixed: number } | { readonly atLeast: number };
  readonly pieces: readonly (PathPiece | StrokePiece)[];
}

/** Something drawn without taking room: \mathllap, \mathclap, \mathrlap. */
export interface LapNode extends Look {
  readonly kind: 'lap';
  /** Where the content lies, seen from the place of the lap. */
  readonly side: 'left' | 'centre' | 'right';
  readonly child: EquationNode;
}

/** Content drawn twice a hair apart, for want of a bolder face (\pmb). */
export interface PoorBoldNode extends Look {
  readonly kind: 'poor-bold';
  readonly child: EquationNode;
}

/** Every kind of node of an equation. Told apart by `kind`. */
export type EquationNode =
  | GlyphsNode
  | RowNode
  | StackNode
  | BarNode
  | RuleNode
  | SeparatorNode
  | FrameNode
  | PictureNode
  | LapNode
  | PoorBoldNode;

/** One line of an equation as it was written: its nodes side by side, outer level. */
export interface WrittenLine {
  readonly nodes: readonly EquationNode[];
  /** Extra room above the line, ems. */
  readonly gapAbove: number;
}

/** An equation ready to be set. */
export interface EquationTree {
  /** One line, or several where the TeX breaks lines itself. */
  readonly lines: readonly WrittenLine[];
  /** The equation's label, set at the right edge. */
  readonly tag: EquationNode | undefined;
}

/** The look of a node that changes nothing. */
export const plainLook: Look = {
  scale: 1,
  face: undefined,
  colour: undefined,
  align: undefined,
  before: 0,
  after: 0,
  drop: 0,
  shift: 0,
  advance: undefined,
  height: 0,
  depth: 0,
  role: 'other',
};
