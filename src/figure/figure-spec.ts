import type { Expression, StatementLine } from '../equation/index.ts';
import type { Piecewise } from '../statics/index.ts';

/** Words or mathematics beside a part of a figure: plain text, a symbol or value, or `P₁ = 8.4 kip`. */
export type Label =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'expression'; readonly expression: Expression }
  | { readonly kind: 'line'; readonly line: StatementLine };

/** A support as it is drawn. */
export interface PictureSupport {
  readonly x: number;
  readonly type:
    'pin' | 'roller' | 'fixed' | 'guide' | 'spring' | 'pin-with-rotation-spring';
  /** Direction of an inclined roller's reaction in degrees from +x, counterclockwise; 90 for an ordinary one. */
  readonly normal?: number;
}

/** A load as it is drawn; arrows of one picture share one scale of magnitudes. */
export type PictureLoad = {
  /** Load case, told by a tag and by stacking cases in rows; absent on a free body of one case. */
  readonly case?: string;
} & (
  | {
      readonly kind: 'force';
      readonly x: number;
      /** Where it points, degrees from +x, counterclockwise (down is 270). */
      readonly degrees: number;
      /** Size in N, positive. */
      readonly size: number;
      readonly label: Label;
    }
  | {
      readonly kind: 'distributed';
      readonly from: number;
      readonly to: number;
      readonly degrees: number;
      /** Intensities in N/m at the two ends; one may be negative (points the other way). */
      readonly sizes: readonly [number, number];
      /** One label for a uniform load, one at each end that is not 0 for a varying one. */
      readonly labels: readonly [Label | undefined, Label | undefined];
    }
  | {
      readonly kind: 'couple';
      readonly x: number;
      readonly turn: 'clockwise' | 'counterclockwise';
      readonly size: number;
      readonly label: Label;
    }
);

/** An unknown (or found) force on a free body, drawn in its positive sense with an open arrowhead. */
export type PictureReaction =
  | {
      readonly kind: 'force';
      readonly x: number;
      readonly degrees: number;
      readonly label: Label;
    }
  | {
      readonly kind: 'moment';
      readonly x: number;
      readonly turn: 'clockwise' | 'counterclockwise';
      readonly label: Label;
    };

/** A straight member with what stands on it; stations in metres along the file's axis. */
export interface BeamPicture {
  readonly start: number;
  readonly end: number;
  readonly points: readonly { readonly name: string; readonly x: number }[];
  readonly supports: readonly PictureSupport[];
  readonly hinges: readonly { readonly x: number }[];
  readonly loads: readonly PictureLoad[];
  readonly reactions: readonly PictureReaction[];
  /** Dimension chains under the member, nearest first; each chain runs left to right. */
  readonly dimensions: readonly (readonly {
    readonly from: number;
    readonly to: number;
    readonly label: Label;
  }[])[];
}

/** A labelled value of a diagram; `side` tells which side of a jump it belongs to. */
export interface KeyValue {
  readonly x: number;
  readonly value: number;
  readonly side?: 'left' | 'right';
  readonly label: Label;
  /** Extremes are set heavier. */
  readonly isExtreme?: boolean;
}

/** One diagram on the member's stations. */
export interface Diagram {
  readonly quantity: 'axial' | 'shear' | 'moment' | 'deflection';
  /** Name and unit at the left, `V (kip)`. */
  readonly title: Label;
  /** The curve, or the greatest and least curves of an envelope; SI values. */
  readonly curves: readonly {
    readonly of: Piecewise;
    readonly style: 'solid' | 'dashed';
  }[];
  readonly keyValues: readonly KeyValue[];
  /** Whether positive values are drawn above or below the base line. */
  readonly positive: 'up' | 'down';
}

/** What a sign convention shows. */
export type ConventionKind =
  | {
      readonly kind: 'forces';
      readonly horizontal: 'right' | 'left';
      readonly vertical: 'up' | 'down';
    }
  | { readonly kind: 'moments'; readonly positive: 'counterclockwise' | 'clockwise' }
  | { readonly kind: 'axial' }
  | { readonly kind: 'shear' }
  | { readonly kind: 'bending'; readonly drawnOn: 'compression' | 'tension' };

/** What is to be drawn, as plain data; `alternate` says what it shows, with its numbers. */
export type FigureSpec =
  | {
      readonly kind: 'member';
      readonly picture: BeamPicture;
      readonly alternate: string;
    }
  /** One picture a free body; members taken apart at hinges have several, drawn on common stations one above another. */
  | {
      readonly kind: 'free-body';
      readonly pictures: readonly BeamPicture[];
      readonly alternate: string;
    }
  /** Diagrams stacked under the member on common stations. */
  | {
      readonly kind: 'diagrams';
      readonly picture: BeamPicture;
      readonly diagrams: readonly Diagram[];
      readonly alternate: string;
    }
  /** Small drawings of sign conventions, side by side, a caption under each. */
  | {
      readonly kind: 'conventions';
      readonly shown: readonly {
        readonly what: ConventionKind;
        readonly caption: string;
      }[];
      readonly alternate: string;
    };
