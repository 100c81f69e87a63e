import type { Colour, PathStep } from '../drawing/index.ts';
import type { BoundedCache, FontBook } from '../font/index.ts';
import type { Family } from './equation-face.ts';
import type { Align, EquationNode, FaceChange } from './equation-node.ts';
import type { Pen } from './pen.ts';

/** What a node inherits from the outside in. */
export interface Inherited {
  /** Font size, ems of the equation. */
  readonly scale: number;
  readonly family: Family;
  readonly bold: boolean;
  readonly italic: boolean;
  /** Undefined keeps the room and draws nothing. */
  readonly colour: Colour | undefined;
  readonly align: Align;
}

/** A measured piece, ready to be placed. Lengths in ems of the equation. */
export interface Box {
  /** Its width; where it fills its line, the least width that it asks for. */
  readonly width: number;
  /** True where it is drawn as wide as the line that it stands on. */
  readonly fills: boolean;
  /** Draws it from x on the baseline y; `width` is its own, or its line's where it fills. */
  readonly place: (pen: Pen, x: number, y: number, width: number) => void;
}

/** What every kind of node may ask of the whole. */
export interface Setting {
  readonly fonts: FontBook;
  /** Path data already read. */
  readonly outlines: BoundedCache<readonly PathStep[]>;
  /** Measures a child. */
  readonly set: (node: EquationNode, inherited: Inherited) => Box;
}

/** The nodes of one kind. */
export type NodeOf<Kind extends EquationNode['kind']> = Extract<
  EquationNode,
  { readonly kind: Kind }
>;

/**
 * Measures the nodes of one kind and says how they are drawn. `own` is what holds INSIDE the
 * node; room before and after, and shifts, are seen to by the caller.
 */
export type NodeSetter<Kind extends EquationNode['kind']> = (
  node: NodeOf<Kind>,
  own: Inherited,
  setting: Setting,
) => Box;

/** The face inside a node that changes it. */
export function changeFace(inherited: Inherited, change: FaceChange): Inherited {
  return { ...inherited, ...change };
}
