import type { GlyphsMark, LinkMark, Mark } from '../drawing/index.ts';
import type { SetText } from '../font/index.ts';
import type { LineRange } from './break-lines.ts';
import { elementNode } from './element-node.ts';
import type { ElementNode } from './element-node.ts';
import type { BoxItem, LineItem, Owner } from './line-items.ts';
import type { Setting } from './setting.ts';

/** A part of a line that belongs to one element; `own` is the element of the text itself. */
export interface LinePart {
  readonly of: ElementNode | 'own';
  readonly marks: readonly Mark[];
}

/** A line set on its baseline: x from the line's left, y from the baseline. */
export interface Line {
  /** From the left edge to the end of the last word, points. */
  readonly width: number;
  /** What it needs above and below the baseline beyond the text's own. */
  readonly above: number;
  readonly below: number;
  readonly parts: readonly LinePart[];
}

// A link can be hit from the ascenders to the descenders of its text (shares of the em).
const linkAbove = 0.74;
const linkBelow = 0.24;

/** Sets the items of one line one after the other, spaces stretched by the line's ratio. */
export function setLine(range: LineRange, setting: Setting): Line {
  const run = openRun(setting);
  let above = 0;
  let below = 0;
  for (const item of range.items) {
    if (item.type === 'glue') {
      const change = range.ratio * (range.ratio < 0 ? item.shrink : item.stretch);
      if (item.look !== undefined) addSpace(run, item, item.width + change);
    } else if (item.type === 'box') {
      addBox(run, item);
      above = Math.max(above, item.above);
      below = Math.max(below, item.below);
    }
  }
  const { end, lastSpace } = range;
  if (end?.hyphen !== undefined)
    run.add(end.owner, softHyphen(setting.words.inLook(end.hyphen)('-')));
  const { width } = run;
  if (lastSpace?.look !== undefined) addSpace(run, lastSpace, lastSpace.width);
  return { width, above, below, parts: run.finish() };

  function addSpace(
    { add }: Run,
    { look, owner }: Extract<LineItem, { type: 'glue' }>,
    advance: number,
  ): void {
    if (look === undefined) return;
    const { marks } = setting.words.inLook(look)(' ');
    add(owner, { width: advance, marks });
  }
}

/** A hyphen that the line alone needs: read as a soft one, so that copying joins the word again. */
function softHyphen({ width, marks }: SetText): SetText {
  const soft = marks.map((mark) => ({
    ...mark,
    glyphs: mark.glyphs.map((glyph) => ({ ...glyph, text: '\u00ad' })),
  }));
  return { width, marks: soft };
}

function addBox(run: Run, { owner, width, marks }: BoxItem): void {
  run.add(owner, { width, marks });
}

interface Run {
  readonly width: number;
  readonly add: (
    owner: Owner,
    set: Pick<SetText, 'width'> & { readonly marks: readonly Mark[] },
  ) => void;
  readonly finish: () => readonly LinePart[];
}

/** Collects marks from left to right into parts of one owner and runs of one look. */
function openRun(setting: Setting): Run {
  const parts: LinePart[] = [];
  let owner: Owner | undefined;
  let marks: Mark[] = [];
  let start = 0;
  let x = 0;
  const close = (): void => {
    if (owner !== undefined)
      parts.push(partOf(owner, marks, { start, end: x, setting }));
    marks = [];
    start = x;
  };
  return {
    get width() {
      return x;
    },
    add: (next, set) => {
      if (owner !== next) {
        close();
        owner = next;
      }
      for (const mark of set.marks) append(marks, mark, x);
      x += set.width;
    },
    finish: () => {
      close();
      return parts;
    },
  };
}

/** Adds a mark moved right, into the last run of glyphs where it has the same look. */
function append(marks: Mark[], mark: Mark, x: number): void {
  if (mark.kind === 'group') {
    marks.push({ ...mark, x: mark.x + x });
    return;
  }
  if (mark.kind !== 'glyphs') {
    marks.push({ kind: 'group', x, y: 0, marks: [mark] });
    return;
  }
  const last = marks.at(-1);
  if (last?.kind !== 'glyphs' || !looksLike(last, mark)) {
    marks.push({ ...mark, x: mark.x + x, glyphs: [...mark.glyphs] });
    return;
  }
  const offset = x + mark.x - last.x;
  const glyphs = last.glyphs as GlyphsMark['glyphs'][number][];
  for (const { id, x: at, text } of mark.glyphs)
    glyphs.push({ id, x: at + offset, text });
}

function looksLike(one: GlyphsMark, other: GlyphsMark): boolean {
  return (
    one.face === other.face &&
    one.size === other.size &&
    one.y === other.y &&
    (one.colour === other.colour || one.colour.join() === other.colour.join())
  );
}

interface Extent {
  readonly start: number;
  readonly end: number;
  readonly setting: Setting;
}

function partOf(
  owner: Owner,
  marks: readonly Mark[],
  { start, end, setting }: Extent,
): LinePart {
  switch (owner.kind) {
    case 'text':
      return { of: 'own', marks };
    case 'math':
      return { of: owner.node, marks };
    case 'link': {
      const says = setting.anchors.says(owner.anchor);
      if (says === undefined) return { of: 'own', marks };
      const size =
        marks.find((mark) => mark.kind === 'glyphs')?.size ?? setting.theme.text.size;
      const link: LinkMark = {
        kind: 'link',
        x: start,
        y: -linkAbove * size,
        width: end - start,
        height: (linkAbove + linkBelow) * size,
        to: { anchor: owner.anchor },
        says,
      };
      return { of: elementNode('Link'), marks: [...marks, link] };
    }
  }
}
