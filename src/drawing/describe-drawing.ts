import type { Colour, GroupMark, Mark, PathStep, ShapeMark, Stroke } from './marks.ts';
import type { Drawing } from './drawing.ts';

/**
 * A drawing as text, one mark a line, numbers rounded to 0.01 pt, groups indented: what golden
 * files pin, and what a reviewer reads to see which mark has moved.
 */
export function describeDrawing(drawing: Drawing): string {
  const { width, height, baseline, alternate, marks } = drawing;
  const size = `drawing ${round(width)} × ${round(height)}`;
  const line = baseline === undefined ? '' : ` baseline ${round(baseline)}`;
  const says = alternate === undefined ? '' : ` “${alternate}”`;
  return [`${size}${line}${says}`, ...describeMarks(marks, '  ')].join('\n');
}

function describeMarks(marks: readonly Mark[], indent: string): readonly string[] {
  return marks.flatMap((mark) => describeMark(mark, indent));
}

function describeMark(mark: Mark, indent: string): readonly string[] {
  switch (mark.kind) {
    case 'glyphs': {
      const text = mark.glyphs.map((glyph) => glyph.text).join('');
      const last = mark.glyphs.at(-1)?.x ?? 0;
      const set = `${mark.face} ${round(mark.size)}${describeColour(mark.colour)}`;
      return [`${indent}glyphs ${at(mark)} ${set} …${round(last)} “${text}”`];
    }
    case 'shape':
      return [`${indent}shape ${describeShape(mark)}`];
    case 'image':
      return [`${indent}image ${box(mark)} ${mark.source}`];
    case 'link': {
      const to = 'anchor' in mark.to ? `#${mark.to.anchor}` : mark.to.address;
      return [`${indent}link ${box(mark)} → ${to} “${mark.says}”`];
    }
    case 'anchor':
      return [`${indent}anchor ${round(mark.y)} #${mark.name}`];
    case 'group':
      return [
        `${indent}group ${at(mark)}${describeMeaning(mark)}`,
        ...describeMarks(mark.marks, `${indent}  `),
      ];
  }
}

function describeMeaning({ element, artifact, actualText, clip }: GroupMark): string {
  const parts = [
    element === undefined ? '' : ` element ${element}`,
    artifact === undefined ? '' : ` artifact ${artifact}`,
    clip === undefined ? '' : ` clip ${box(clip)}`,
    actualText === undefined ? '' : ` “${actualText}”`,
  ];
  return parts.join('');
}

function describeShape({ path, fill, stroke }: ShapeMark): string {
  const steps = path.map(describeStep).join(' ');
  const filled = fill === undefined ? '' : ` fill${describeColour(fill, true)}`;
  return `${steps}${filled}${stroke === undefined ? '' : describeStroke(stroke)}`;
}

function describeStep([letter, ...numbers]: PathStep): string {
  return numbers.length === 0 ? letter : `${letter} ${numbers.map(round).join(' ')}`;
}

function describeStroke({ width, colour, dash, cap, join }: Stroke): string {
  const parts = [
    ` stroke ${round(width)}${describeColour(colour)}`,
    dash === undefined ? '' : ` dash ${dash.map(round).join(' ')}`,
    cap === undefined ? '' : ` ${cap}`,
    join === undefined ? '' : ` ${join}`,
  ];
  return parts.join('');
}

/** A colour as its three parts; black goes without saying unless asked for. */
function describeColour(colour: Colour, saysBlack: boolean = false): string {
  const isBlack = colour.every((part) => part === 0);
  return isBlack && !saysBlack ? '' : ` (${colour.map(round).join(' ')})`;
}

function at({ x, y }: { readonly x: number; readonly y: number }): string {
  return `(${round(x)}, ${round(y)})`;
}

function box(of: {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}): string {
  return `${at(of)} ${round(of.width)} × ${round(of.height)}`;
}

/** Two decimals at most, and no minus zero. */
function round(value: number): string {
  const rounded = Math.round(value * 100) / 100;
  return String(rounded === 0 ? 0 : rounded);
}
