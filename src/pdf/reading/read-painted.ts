import type { Operation } from './read-content.ts';
import { openMarks } from './marked-stack.ts';
import type { Marking } from './marked-stack.ts';
import type { PdfObject } from './pdf-object.ts';
import { bytesOf, isKind, nameOf, numberOr } from './pdf-object.ts';
import type { ReadFont } from './read-font.ts';
import { openTextState } from './text-state.ts';

/** Something that a page's content puts on the page. */
export type Painted = PaintedText | PaintedOther;

/** A shown text with its place, points from the page's bottom left. */
export interface PaintedText {
  readonly kind: 'text';
  readonly text: string;
  readonly codes: readonly number[];
  /** The font's name in the page's resources. */
  readonly font: string;
  readonly size: number;
  readonly x: number;
  readonly y: number;
  readonly marking: Marking;
}

/** A painted path or a picture. */
export interface PaintedOther {
  readonly kind: 'path' | 'image';
  readonly marking: Marking;
}

/** What the content of a page paints, and what is wrong with its nesting. */
export interface PaintedPage {
  readonly painted: readonly Painted[];
  readonly faults: readonly string[];
  /** All operators that the content uses. */
  readonly operators: ReadonlySet<string>;
}

const asPath = ['S', 's', 'f', 'F', 'f*', 'B', 'B*', 'b', 'b*', 'sh'] as const;
const asText = ['Tj', 'TJ', "'", '"'] as const;
/** The operators that paint, and what (ISO 32000-1, tables 60, 77, 87 and 109). */
const paintings: ReadonlyMap<string, Painted['kind']> = new Map([
  ...asPath.map((operator) => [operator, 'path'] as const),
  ...asText.map((operator) => [operator, 'text'] as const),
  ['Do', 'image'] as const,
]);
const deepestSaves = 28; // ISO 19005-3, 6.1.13

/** Follows the operators of a page. `fontNamed` looks a font up in the page's resources. */
export function readPainted(
  operations: readonly Operation[],
  fontNamed: (name: string) => ReadFont | undefined,
): PaintedPage {
  const marks = openMarks();
  const state = openTextState();
  const saves = countSaves(operations);
  const faults: string[] = saves === undefined ? [] : [saves];
  const painted: Painted[] = [];
  for (const { operator, operands } of operations) {
    const [first = null] = operands;
    const kind = paintings.get(operator);
    if (kind === 'text') {
      const place = state.now();
      const font = fontNamed(place.font);
      if (font === undefined)
        faults.push(`text is shown in an unknown font ${place.font}`);
      const codes = isKind(first, 'array')
        ? first.items.flatMap(codesOf)
        : codesOf(first);
      const text = codes.map((code) => font?.texts.get(code) ?? '').join('');
      painted.push({ kind, text, codes, ...place, marking: marks.now() });
    } else if (kind !== undefined) painted.push({ kind, marking: marks.now() });
    marks.follow(operator, operands);
    const numbers = operands.map((operand) => numberOr(operand, 0));
    state.follow(operator, numbers, nameOf(first));
  }
  const operators = new Set(operations.map(({ operator }) => operator));
  return { painted, faults: [...faults, ...marks.faults()], operators };
}

/** What is wrong with the saving and restoring of graphics states, if anything is. */
function countSaves(operations: readonly Operation[]): string | undefined {
  let depth = 0;
  for (const { operator } of operations) {
    if (operator === 'q') depth += 1;
    if (operator === 'Q') depth -= 1;
    if (depth < 0) return 'a graphics state is restored that was never saved';
    if (depth > deepestSaves) return `graphics states are saved ${depth} deep`;
  }
  return depth > 0 ? `${depth} saved graphics states are never restored` : undefined;
}

/** The two-byte codes of a shown string; none of a number between strings. */
function codesOf(object: PdfObject): readonly number[] {
  const bytes = bytesOf(object) ?? new Uint8Array();
  return Array.from(
    { length: bytes.length >> 1 },
    (_, index) => 256 * (bytes[2 * index] ?? 0) + (bytes[2 * index + 1] ?? 0),
  );
}
