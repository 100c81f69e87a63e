import type { GlyphsMark, LinkMark, Mark, ShapeMark } from '../../src/drawing/index.ts';
import type { Page, PagedDocument, StructureElement } from '../../src/layout/index.ts';
import { ownFonts } from './own-fonts.ts';

/** A run of text as it stands on a page, points from the page's top left. */
export interface ReadRun {
  readonly text: string;
  readonly x: number;
  /** The baseline. */
  readonly y: number;
  /** Where its last visible letter ends. */
  readonly right: number;
  readonly face: string;
  readonly size: number;
  readonly element?: number;
  readonly artifact?: 'pagination' | 'layout';
}

interface Around {
  readonly x: number;
  readonly y: number;
  readonly element?: number;
  readonly artifact?: 'pagination' | 'layout';
}

/** Visits every mark of a page that is no group, with its place and what it belongs to. */
export function visitMarks(
  marks: readonly Mark[],
  visit: (mark: Exclude<Mark, { kind: 'group' }>, around: Around) => void,
  around: Around = { x: 0, y: 0 },
): void {
  for (const mark of marks) {
    if (mark.kind !== 'group') {
      visit(mark, around);
      continue;
    }
    visitMarks(mark.marks, visit, {
      ...around,
      x: around.x + mark.x,
      y: around.y + mark.y,
      ...(mark.element === undefined ? {} : { element: mark.element }),
      ...(mark.artifact === undefined ? {} : { artifact: mark.artifact }),
    });
  }
}

/** The runs of text on a page, in the order that they are drawn. */
export function runsOf(page: Page): readonly ReadRun[] {
  const runs: ReadRun[] = [];
  visitMarks(page.drawing.marks, (mark, around) => {
    if (mark.kind === 'glyphs') runs.push(readRun(mark, around));
  });
  return runs;
}

function readRun(mark: GlyphsMark, { x, y, ...of }: Around): ReadRun {
  const text = mark.glyphs.map((glyph) => glyph.text).join('');
  const visible = mark.glyphs.filter((glyph) => glyph.text.trim() !== '').at(-1);
  const start = x + mark.x;
  return {
    text,
    x: start,
    y: y + mark.y,
    right:
      visible === undefined ? start : start + visible.x + widthOf(mark, visible.text),
    face: mark.face,
    size: mark.size,
    ...of,
  };
}

function widthOf({ face, size }: GlyphsMark, text: string): number {
  const shaped = ownFonts.face(face).shape(text);
  return shaped.reduce((sum, { advance }) => sum + advance * size, 0);
}

/** The words on a page as one line; running foot, rules and repeated heads left out. */
export function textOf(page: Page): string {
  return joinRuns(runsOf(page).filter(({ artifact }) => artifact === undefined));
}

/** Runs that touch on one baseline belong together; between others there is a space. */
function joinRuns(runs: readonly ReadRun[]): string {
  let joined = '';
  for (const [index, run] of runs.entries()) {
    const before = runs[index - 1];
    const touches = before?.y === run.y && Math.abs(run.x - before.right) < 1;
    joined += touches ? run.text : ` ${run.text}`;
  }
  return joined.replace(/\s+/gu, ' ').trim();
}

/** The words of the running foot. */
export function footOf(page: Page): string {
  return runsOf(page)
    .filter(({ artifact }) => artifact === 'pagination')
    .map(({ text }) => text)
    .join(' ')
    .replace(/\s+/gu, ' ');
}

/** Runs of one baseline side by side, as one line. */
export function linesOf(page: Page): readonly (readonly ReadRun[])[] {
  const lines = new Map<string, ReadRun[]>();
  for (const run of runsOf(page)) {
    if (run.artifact !== undefined) continue;
    const key = run.y.toFixed(2);
    const line = lines.get(key);
    if (line === undefined) lines.set(key, [run]);
    else line.push(run);
  }
  return [...lines.values()];
}

/** A shape with the corner that its coordinates are measured from. */
export interface ReadShape {
  readonly mark: ShapeMark;
  readonly x: number;
  readonly y: number;
  readonly artifact?: 'pagination' | 'layout';
}

export function shapesOf(page: Page): readonly ReadShape[] {
  const shapes: ReadShape[] = [];
  visitMarks(page.drawing.marks, (mark, { x, y, artifact }) => {
    if (mark.kind === 'shape')
      shapes.push({ mark, x, y, ...(artifact === undefined ? {} : { artifact }) });
  });
  return shapes;
}

export function linksOf(page: Page): readonly LinkMark[] {
  const links: LinkMark[] = [];
  visitMarks(page.drawing.marks, (mark) => {
    if (mark.kind === 'link') links.push(mark);
  });
  return links;
}

/** The tree of elements as indented lines of their types. */
export function treeOf({ elements }: PagedDocument): string {
  const depth = (element: StructureElement): number =>
    element.parent === undefined ? 0 : 1 + depth(elements[element.parent]!);
  return elements
    .map((element) => `${'  '.repeat(depth(element))}${element.type}`)
    .join('\n');
}
