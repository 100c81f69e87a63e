import { create } from 'fontkit';
import type { PathStep } from '../drawing/index.ts';
import type { Face } from './font-book.ts';
import { measureText } from './measure-text.ts';

/** The outline of a text on its baseline, starting at (0, 0): points, y down. */
export interface OutlinedText {
  readonly width: number;
  readonly path: readonly PathStep[];
}

/**
 * The outlines of a text's letters as one path, for words that are drawn and not read: a stamp
 * across a sheet. Opens the face's file anew, so it is for the odd word and not for text. Throws
 * RangeError on a character that the face has no glyph for.
 */
export function outlineText(face: Face, size: number, text: string): OutlinedText {
  // fontkit reads any Uint8Array; its types ask for the subclass that Node's files come in.
  const font = create(face.bytes as Buffer);
  if ('fonts' in font)
    throw new RangeError(`${face.name} is a collection, not a font.`);
  const scale = size / font.unitsPerEm;
  const { width, glyphs } = measureText(face, size, text);
  const path = glyphs.flatMap(({ id, x }) =>
    outlineSteps(font.getGlyph(id).path.commands, { scale, x }),
  );
  return { width, path };
}

interface FontCommand {
  readonly command: string;
  readonly args: readonly number[];
}

interface Placing {
  readonly scale: number;
  readonly x: number;
}

/** fontkit's commands as path steps; quadratic curves of TrueType become cubic ones. */
function outlineSteps(
  commands: readonly FontCommand[],
  { scale, x }: Placing,
): readonly PathStep[] {
  let at: Point = [0, 0];
  return commands.map(({ command, args }): PathStep => {
    const points = pointsOf(args, { scale, x });
    const step = stepOf(command, at, points);
    at = points.at(-1) ?? at;
    return step;
  });
}

function pointsOf(args: readonly number[], { scale, x }: Placing): readonly Point[] {
  return args.flatMap((value, index): readonly Point[] =>
    index % 2 === 1 ? [] : [[x + value * scale, -(args[index + 1] ?? 0) * scale]],
  );
}

const origin: Point = [0, 0];

function stepOf(command: string, from: Point, points: readonly Point[]): PathStep {
  const [first = origin, second = origin, third = origin] = points;
  switch (command) {
    case 'moveTo':
      return ['M', ...first];
    case 'lineTo':
      return ['L', ...first];
    case 'quadraticCurveTo':
      return raised(from, first, second);
    case 'bezierCurveTo':
      return ['C', ...first, ...second, ...third];
    case 'closePath':
      return ['Z'];
    default:
      throw new RangeError(`An outline has the unknown command ${command}.`);
  }
}

type Point = readonly [number, number];

/** A quadratic Bézier curve as a cubic one: its control points at two thirds of the way. */
function raised(from: Point, control: Point, to: Point): PathStep {
  const towards = (end: number, middle: number): number =>
    end + (2 / 3) * (middle - end);
  return [
    'C',
    towards(from[0], control[0]),
    towards(from[1], control[1]),
    towards(to[0], control[0]),
    towards(to[1], control[1]),
    to[0],
    to[1],
  ];
}
