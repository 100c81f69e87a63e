import type { Mark } from '../drawing/index.ts';
import type { TextStyle } from '../font/index.ts';
import { toLinear, toSpeech, toTex } from '../equation/index.ts';
import type { Expression } from '../equation/index.ts';
import type { Inline } from '../report/index.ts';
import { elementNode } from './element-node.ts';
import type { ElementNode } from './element-node.ts';
import { joinsNumberAndUnit, splitWord } from './break-places.ts';
import type { Setting } from './setting.ts';
import { tryTypeset } from '../typeset/index.ts';
import { plainEquation } from './remarks.ts';
import { lookOf } from './text-look.ts';
import type { TextBase } from './text-look.ts';

/** Whose marks a part of a line are: compared by identity, one for each link and each formula. */
export type Owner =
  | { readonly kind: 'text' }
  | { readonly kind: 'math'; readonly node: ElementNode }
  | { readonly kind: 'link'; readonly anchor: string };

/** Something that is never broken: a word or part of one, an equation, a blank. */
export interface BoxItem {
  readonly type: 'box';
  readonly width: number;
  readonly marks: readonly Mark[];
  readonly owner: Owner;
  /** How far it reaches above and below the baseline; 0 for text, whose leading allows for it. */
  readonly above: number;
  readonly below: number;
  /** The text and its look, where it is text: it may be hyphenated or broken in an emergency. */
  readonly word?: { readonly text: string; readonly look: TextStyle };
}

/** A space between words, or the filling of a last line. */
export interface GlueItem {
  readonly type: 'glue';
  readonly width: number;
  readonly stretch: number;
  readonly shrink: number;
  readonly look?: TextStyle;
  readonly owner: Owner;
}

/** A place where a line may end (cost below 1000), must end (−1000) or must not (1000). */
export interface PenaltyItem {
  readonly type: 'penalty';
  readonly width: number;
  readonly cost: number;
  readonly flagged: boolean;
  /** A hyphen is set where the line ends here. */
  readonly hyphen?: TextStyle;
  readonly owner: Owner;
}

/** What a paragraph is broken from: the boxes, glue and penalties of Knuth and Plass. */
export type LineItem = BoxItem | GlueItem | PenaltyItem;

/** Costs that force and forbid a break, as tex-linebreak has them. */
export const mustBreak = -1000;
export const mustNotBreak = 1000;

// The text face's space is .23 em; TeX's stretches by .167 em and shrinks by .111 em (TeXbook, p. 76),
// and the narrower space must not shrink as much.
const stretchShare = 0.7;
const shrinkShare = 0.27;
const explicitBreakCost = 50;

/** The items of inlines, without hyphenation; they end in a forced break. */
export function lineItems(
  inlines: readonly Inline[],
  base: TextBase,
  setting: Setting,
): readonly LineItem[] {
  const items: LineItem[] = [];
  const owner: Owner = { kind: 'text' };
  for (const inline of inlines) addInline(items, inline, { base, owner, setting });
  while (items.at(-1)?.type === 'glue') items.pop();
  endLine(items, owner);
  return items;
}

interface Flow {
  readonly base: TextBase;
  readonly owner: Owner;
  readonly setting: Setting;
}

function addInline(items: LineItem[], inline: Inline, flow: Flow): void {
  const { base, owner, setting } = flow;
  const { anchors } = setting;
  switch (inline.kind) {
    case 'text':
      addText(items, inline.text, lookOf(base, inline.style), flow);
      return;
    case 'math':
      addMath(items, inline.expression, flow);
      return;
    case 'break':
      while (items.at(-1)?.type === 'glue') items.pop();
      endLine(items, owner);
      return;
    case 'link': {
      const within: Flow = { ...flow, owner: { kind: 'link', anchor: inline.anchor } };
      for (const part of inline.content) addInline(items, part, within);
      return;
    }
    case 'sheet-number': {
      const within: Flow = { ...flow, owner: { kind: 'link', anchor: inline.anchor } };
      addText(items, anchors.sheetOf(inline.anchor), base.look, within);
      return;
    }
    case 'sheet-count':
      addText(items, anchors.sheetCount(), base.look, flow);
      return;
    case 'blank':
      items.push(blankItem(inline.width, flow));
      return;
  }
}

/** The rest of a line is left blank, and the line ends. */
function endLine(items: LineItem[], owner: Owner): void {
  items.push({ type: 'glue', width: 0, stretch: 100_000, shrink: 0, owner });
  items.push({ type: 'penalty', width: 0, cost: mustBreak, flagged: false, owner });
}

function addText(items: LineItem[], text: string, look: TextStyle, flow: Flow): void {
  const parts = text.split(/([ \t\r\n]+)/u);
  for (const [index, part] of parts.entries()) {
    if (part === '') continue;
    if (index % 2 === 0) addWord(items, part, look, flow);
    else {
      const isTied = joinsNumberAndUnit(parts[index - 1] ?? '', parts[index + 1] ?? '');
      addSpace(items, look, { ...flow, isTied });
    }
  }
}

function addSpace(
  items: LineItem[],
  look: TextStyle,
  { owner, setting, isTied }: Flow & { readonly isTied: boolean },
): void {
  const before = items.at(-1);
  // No space at the start of a line, and one space where two meet.
  if (before === undefined || before.type === 'glue' || isForced(before)) return;
  const { width } = setting.words.inLook(look)(' ');
  const glue = { stretch: width * stretchShare, shrink: width * shrinkShare };
  if (isTied)
    items.push({
      type: 'penalty',
      width: 0,
      cost: mustNotBreak,
      flagged: false,
      owner,
    });
  items.push({ type: 'glue', width, ...glue, look, owner });
}

function isForced(item: LineItem): boolean {
  return item.type === 'penalty' && item.cost <= mustBreak;
}

function addWord(items: LineItem[], word: string, look: TextStyle, flow: Flow): void {
  const { owner, setting } = flow;
  for (const [index, text] of splitWord(word, look).entries()) {
    if (index > 0) {
      const cost = explicitBreakCost;
      items.push({ type: 'penalty', width: 0, cost, flagged: true, owner });
    }
    items.push(wordItem(text, look, { owner, setting }));
  }
}

/** A word or a part of one as a box. */
export function wordItem(
  text: string,
  look: TextStyle,
  { owner, setting }: { readonly owner: Owner; readonly setting: Setting },
): BoxItem {
  const { width, marks } = setting.words.inLook(look)(text);
  return { type: 'box', width, marks, owner, above: 0, below: 0, word: { text, look } };
}

function addMath(items: LineItem[], expression: Expression, flow: Flow): void {
  const { base, owner, setting } = flow;
  const { theme, typesetter } = setting;
  const linear = toLinear(expression);
  const tex = toTex(expression);
  const drawing = tryTypeset([{ tex, linear }], () =>
    typesetter.typeset(tex, {
      size: (theme.text.equation / theme.text.size) * base.look.size,
      colour: base.look.colour,
      actualText: linear,
    }),
  );
  if (drawing === undefined) {
    setting.remark(plainEquation(linear));
    addText(items, linear, base.look, flow);
    return;
  }
  const baseline = drawing.baseline ?? drawing.height;
  const alternate = toSpeech(expression);
  items.push({
    type: 'box',
    width: drawing.width,
    marks: [{ kind: 'group', x: 0, y: -baseline, marks: drawing.marks }],
    owner:
      owner.kind === 'text'
        ? { kind: 'math', node: elementNode('Formula', [], { alternate }) }
        : owner,
    above: baseline,
    below: drawing.height - baseline,
  });
}

function blankItem(width: number, { base, owner, setting }: Flow): BoxItem {
  const drop = 1.5;
  const stroke = { width: setting.theme.line.dimension, colour: base.muted };
  const path = [
    ['M', 0, drop],
    ['L', width, drop],
  ] as const;
  const marks: readonly Mark[] = [{ kind: 'shape', path, stroke }];
  return { type: 'box', width, marks, owner, above: 0, below: drop };
}
