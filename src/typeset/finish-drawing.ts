import type { Colour, Drawing, Mark } from '../drawing/index.ts';
import type { Inherited } from './node-setter.ts';

/** How an equation is set, whichever way its lines are arranged. */
export interface EquationStyle {
  /** Size of the em, points. */
  readonly size: number;
  /** Default: black. */
  readonly colour?: Colour;
  /** The equation spoken, for someone who cannot see it; passed through to the drawing. */
  readonly alternate?: string;
  /**
   * The equation in linear form, which copying and searching find in place of the glyphs. Where
   * it is given, all marks stand in one group that carries it.
   */
  readonly actualText?: string;
}

/** The marks of an equation and the room that they take, points; the top left is (0, 0). */
export interface SetMarks {
  readonly width: number;
  readonly height: number;
  readonly baseline: number;
  readonly lastBaseline?: number;
  readonly marks: readonly Mark[];
}

const black: Colour = [0, 0, 0];

/** What the outermost nodes of an equation inherit: upright Main at the equation's own size. */
export function rootOf(colour: Colour = black, display: boolean = false): Inherited {
  return {
    scale: 1,
    family: 'Main',
    bold: false,
    italic: false,
    colour,
    align: display ? 'centre' : 'left',
  };
}

/** Makes marks into a drawing that says what it is. */
export function finishDrawing(
  { marks, ...room }: SetMarks,
  { alternate, actualText }: Pick<EquationStyle, 'alternate' | 'actualText'>,
): Drawing {
  const grouped: readonly Mark[] =
    actualText === undefined
      ? marks
      : [{ kind: 'group', x: 0, y: 0, marks, actualText }];
  return { ...room, marks: grouped, ...(alternate === undefined ? {} : { alternate }) };
}
