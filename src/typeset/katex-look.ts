import type { FaceChange, Look, Role } from './equation-node.ts';
import { classMeanings, knownStyles, sizeSteps } from './katex-classes.ts';
import type { ClassMeaning } from './katex-classes.ts';
import type { KatexNode } from './katex-node.ts';
import { refuse } from './typeset-fault.ts';

/** A node's look and, where a class of its says so, its special kind. */
export interface ReadLook {
  readonly look: Look;
  readonly kind: ClassMeaning['kind'];
}

const noClasses: readonly string[] = [];
const noStyle: Readonly<Record<string, string | undefined>> = {};

/** Reads a length such as "-2.314em"; 0 where there is none. Another unit is refused. */
export function ems(value: string | undefined): number {
  if (value === undefined || value === '0') return 0;
  if (!value.endsWith('em')) refuse(`the length "${value}"`);
  return Number.parseFloat(value);
}

/** Reads what a node's classes and style say of it; refuses what is not known, by name. */
export function readLook(node: KatexNode): ReadLook {
  const classes = node.classes ?? noClasses;
  const style = node.style ?? noStyle;
  for (const key in style) {
    if (!knownStyles.has(key)) refuse(`the style "${key}"`);
  }
  const said = gather(classes);
  const isPositioned = said.isPositioned || style.position === 'relative';
  const look: Look = {
    scale: sizeOf(classes),
    face: said.face,
    colour: style.color,
    align: said.align,
    before: said.before + ems(style.marginLeft) + ems(style.paddingLeft),
    after: said.after + ems(style.marginRight) + italicCorrection(node),
    drop: isPositioned ? ems(style.top) : 0,
    shift: isPositioned ? ems(style.left) : 0,
    advance: advanceOf(classes, style.width, said.advance),
    height: node.height ?? 0,
    depth: node.depth ?? 0,
    role: said.role,
  };
  return { look, kind: said.kind };
}

/**
 * KaTeX's italic correction becomes room after a symbol, only where it is positive. A stack may
 * carry one too (\oiint); that is a note for KaTeX's own subscripts and takes no room.
 */
function italicCorrection({ text, italic = 0 }: KatexNode): number {
  return text === undefined ? 0 : Math.max(0, italic);
}

interface Gathered {
  face: FaceChange | undefined;
  align: Look['align'];
  before: number;
  after: number;
  advance: number | undefined;
  role: Role;
  isPositioned: boolean;
  kind: ClassMeaning['kind'];
}

function gather(classes: readonly string[]): Gathered {
  const said: Gathered = {
    face: undefined,
    align: undefined,
    before: 0,
    after: 0,
    advance: undefined,
    role: 'other',
    isPositioned: false,
    kind: undefined,
  };
  for (const name of classes) {
    if (name === '') continue;
    const meaning = classMeanings.get(name) ?? meaningOfSize(name, classes);
    if (meaning.refused !== undefined) refuse(meaning.refused);
    add(said, meaning);
  }
  return said;
}

function add(said: Gathered, meaning: ClassMeaning): void {
  if (meaning.face !== undefined) said.face = { ...said.face, ...meaning.face };
  said.align = meaning.align ?? said.align;
  said.before += meaning.before ?? 0;
  said.after += meaning.after ?? 0;
  said.advance = meaning.advance ?? said.advance;
  said.role = meaning.role ?? said.role;
  said.isPositioned ||= meaning.isPositioned === true;
  said.kind = meaning.kind ?? said.kind;
}

const nothing: ClassMeaning = {};
const sizeFaces: ReadonlyMap<string, ClassMeaning> = new Map([
  ['size1', { face: { family: 'Size1' } }],
  ['size2', { face: { family: 'Size2' } }],
  ['size3', { face: { family: 'Size3' } }],
  ['size4', { face: { family: 'Size4' } }],
]);
const sizeClass = /^(reset-size|size)(\d+)$/;

/**
 * The classes whose meaning hangs on their neighbours: `size3` is a face beside `delimsizing`
 * and a font size beside `katex-sizing` (read by sizeOf). KaTeX marks characters of scripts that
 * its faces do not cover (`cjk_fallback`); they are refused later, as characters.
 */
function meaningOfSize(name: string, classes: readonly string[]): ClassMeaning {
  if (name === 'katex-sizing' || name.endsWith('_fallback')) return nothing;
  if (!sizeClass.test(name)) return refuse(`the class "${name}"`);
  if (!classes.includes('delimsizing')) return nothing;
  return sizeFaces.get(name) ?? refuse(`the delimiter class "${name}"`);
}

/** The font size that `katex-sizing reset-sizeA sizeB` sets: that of step B over that of A. */
function sizeOf(classes: readonly string[]): number {
  const at = classes.indexOf('katex-sizing');
  if (at === -1) return 1;
  const from = sizeSteps[stepOf(classes[at + 1], 'reset-size') - 1];
  const to = sizeSteps[stepOf(classes[at + 2], 'size') - 1];
  if (from === undefined || to === undefined) {
    return refuse(`the sizes "${classes.join(' ')}"`);
  }
  return to / from;
}

function stepOf(name: string | undefined, prefix: string): number {
  return name?.startsWith(prefix) === true ? Number(name.slice(prefix.length)) : 0;
}

function advanceOf(
  classes: readonly string[],
  width: string | undefined,
  advance: number | undefined,
): number | undefined {
  if (classes.includes('arraycolsep')) return ems(width);
  if (classes.includes('accent-body') && !classes.includes('accent-full')) return 0;
  return advance;
}
