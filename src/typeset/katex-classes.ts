import type { Align, FaceChange, Role } from './equation-node.ts';

/**
 * What one class name of KaTeX 0.19.1 means: the part of its stylesheet (katex.css) that moves
 * or shapes anything. Lengths in ems of the node that carries the class.
 */
export interface ClassMeaning {
  readonly face?: FaceChange;
  readonly align?: Align;
  readonly before?: number;
  readonly after?: number;
  readonly advance?: number;
  readonly role?: Role;
  /** True where the stylesheet positions the node, so that its top and left count. */
  readonly isPositioned?: boolean;
  /** The special kinds of node; the others are rows. */
  readonly kind?: 'strut' | 'stack' | 'bar' | 'rule' | 'separator' | 'lap';
  /** The construct's name, where it is refused. */
  readonly refused?: string;
}

const plain: ClassMeaning = {};
const each = (names: string, meaning: ClassMeaning): [string, ClassMeaning][] =>
  names.split(' ').map((name) => [name, meaning]);

const diagram = 'a commutative diagram (CD)';

/** Every class that is known. A class that is missing here is refused by name. */
export const classMeanings: ReadonlyMap<string, ClassMeaning> = new Map([
  // No box of their own: atoms, bases, groups.
  ...each('mord mop minner mpunct mtight katex-base katex-tag', plain),
  ...each('enclosing sqrt text mtable accentunder mult', plain),
  ...each('delimsizing delimsizinginner vlist-t2', plain),
  ...each('katex-overline katex-underline katex-overlay katex-smash', plain),
  ...each('katex-vbox katex-thinbox katex-inner katex-fix hide-tail', plain),
  ...each('accent-full textmd textup', plain),

  // What line breaking asks for.
  ...each('mbin', { role: 'operator' }),
  ...each('mrel', { role: 'relation' }),
  ...each('mopen', { role: 'open' }),
  ...each('mclose', { role: 'close' }),
  ...each('mspace', { role: 'space' }),
  ...each('allowbreak', { role: 'break-allowed' }),
  ...each('nobreak', { role: 'break-forbidden' }),

  // Faces.
  ...each('textbf', { face: { bold: true } }),
  ...each('textit', { face: { italic: true } }),
  ...each('mathrm', { face: { italic: false } }),
  ...each('textrm', { face: { family: 'Main' } }),
  ...each('mainrm', { face: { family: 'Main', italic: false } }),
  ...each('mathit', { face: { family: 'Main', italic: true } }),
  ...each('mathbf', { face: { family: 'Main', bold: true } }),
  ...each('mathnormal', { face: { family: 'Math', italic: true } }),
  ...each('boldsymbol', { face: { family: 'Math', bold: true, italic: true } }),
  ...each('textsf mathsf', { face: { family: 'SansSerif' } }),
  ...each('mathboldsf textboldsf', { face: { family: 'SansSerif', bold: true } }),
  ...each('mathsfit mathitsf textitsf', {
    face: { family: 'SansSerif', italic: true },
  }),
  ...each('texttt mathtt', { face: { family: 'Typewriter' } }),
  ...each('amsrm mathbb textbb', { face: { family: 'AMS' } }),
  ...each('mathcal', { face: { family: 'Caligraphic' } }),
  ...each('mathfrak textfrak', { face: { family: 'Fraktur' } }),
  ...each('mathboldfrak textboldfrak', { face: { family: 'Fraktur', bold: true } }),
  ...each('mathscr textscr', { face: { family: 'Script' } }),
  ...each('small-op delim-size1', { face: { family: 'Size1' } }),
  ...each('large-op', { face: { family: 'Size2' } }),
  ...each('delim-size4', { face: { family: 'Size4' } }),

  // Alignment of what is stacked inside.
  ...each('mfrac op-limits katex-accent x-arrow mover munder', { align: 'centre' }),
  ...each('col-align-c', { align: 'centre' }),
  ...each('msupsub svg-align col-align-l', { align: 'left' }),
  ...each('col-align-r', { align: 'right' }),

  // Room.
  ...each('nulldelimiter', { advance: 0.12 }),
  ...each('arraycolsep', plain),
  ...each('katex-root', { before: 0.2777777778, after: -0.5555555556 }),
  ...each('x-arrow-pad', { before: 0.5, after: 0.5 }),
  ...each('boxpad', { before: 0.3, after: 0.3 }),
  ...each('anglpad', { before: 0.03889, after: 0.03889 }),
  ...each('cancel-pad', { before: 0.2, after: 0.2 }),
  ...each('cancel-lap', { before: -0.2, after: -0.2 }),

  // Positioned nodes.
  ...each('op-symbol delimcenter accent-body', { isPositioned: true }),

  // Special kinds.
  ...each('katex-strut pstrut', { kind: 'strut' }),
  ...each('vlist-t', { kind: 'stack' }),
  ...each('frac-line overline-line underline-line katex-hline', { kind: 'bar' }),
  ...each('katex-hdashline katex-sout', { kind: 'bar' }),
  ...each('katex-rule', { kind: 'rule' }),
  ...each('vertical-separator', { kind: 'separator' }),
  ...each('llap rlap clap', { kind: 'lap' }),
  ...each('katex-stretchy fbox fcolorbox colorbox angl', plain),
  ...each('halfarrow-left halfarrow-right brace-left brace-center brace-right', plain),

  // Refused.
  ...each('cd-arrow-pad cd-vert-arrow cd-label-left cd-label-right', {
    refused: diagram,
  }),
  ...each('katex-newline', { refused: 'a line break inside a group' }),
  ...each('eqn-num', { refused: 'an automatic equation number' }),
  ...each('reflectbox', { refused: '\\reflectbox' }),
]);

/** Size steps 1 to 11 over the base size (KaTeX's Options.ts, sizeMultipliers). */
export const sizeSteps: readonly number[] = [
  0.5, 0.6, 0.7, 0.8, 0.9, 1, 1.2, 1.44, 1.728, 2.074, 2.488,
];

/** Where the pieces of a stretched outline lie, as shares of its width (katex.css). */
export const pieceShares: ReadonlyMap<string, readonly [from: number, share: number]> =
  new Map([
    ['halfarrow-left', [0, 0.502]],
    ['halfarrow-right', [0.498, 0.502]],
    ['brace-left', [0, 0.251]],
    ['brace-center', [0.25, 0.5]],
    ['brace-right', [0.749, 0.251]],
  ]);

/** Every style key that KaTeX sets (CssStyle in its domTree.ts). Another is refused by name. */
export const knownStyles: ReadonlySet<string> = new Set(
  [
    'backgroundColor borderBottomWidth borderColor borderRightStyle borderRightWidth',
    'borderTopWidth borderStyle borderWidth bottom color height left margin marginLeft',
    'marginRight marginTop minWidth paddingLeft position textShadow top width verticalAlign',
  ].flatMap((keys) => keys.split(' ')),
);
