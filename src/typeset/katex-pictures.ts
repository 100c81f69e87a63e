import type {
  EquationNode,
  Fit,
  FrameNode,
  Look,
  PathPiece,
  StrokePiece,
} from './equation-node.ts';
import { pieceShares } from './katex-classes.ts';
import { ems } from './katex-look.ts';
import type { KatexNode } from './katex-node.ts';
import { refuse } from './typeset-fault.ts';

/** Thickness of the border of a box where its style gives none (katex.css, .fbox). */
const boxBorder = 0.04;
/** The same for the angle of an actuarial symbol (katex.css, .angl). */
const anglBorder = 0.049;

/** A span that holds SVG, in one piece or in parts side by side; undefined for other spans. */
export function readPicture(node: KatexNode, look: Look): EquationNode | undefined {
  const children = node.children ?? [];
  const isInParts =
    node.classes?.includes('katex-stretchy') === true && children.some(holdsSvg);
  if (!isInParts && !holdsSvg(node)) return undefined;
  const pieces = isInParts
    ? children.flatMap((part) => readPieces(part, shareOf(part)))
    : readPieces(node, [0, 1]);
  const { width, minWidth, height } = node.style ?? {};
  return {
    kind: 'picture',
    ...look,
    tall: ems(height),
    width: width === undefined ? { atLeast: ems(minWidth) } : { fixed: ems(width) },
    pieces,
  };
}

/** An SVG node has attributes and children but, alone in the tree, no classes. */
function isSvg(node: KatexNode): boolean {
  return node.classes === undefined && node.children !== undefined;
}

function holdsSvg(node: KatexNode): boolean {
  return node.children?.some(isSvg) === true;
}

function shareOf(part: KatexNode): readonly [from: number, share: number] {
  for (const name of part.classes ?? []) {
    const share = pieceShares.get(name);
    if (share !== undefined) return share;
  }
  return refuse(`a part of an outline (${(part.classes ?? []).join(' ')})`);
}

function readPieces(
  holder: KatexNode,
  [from, share]: readonly [from: number, share: number],
): (PathPiece | StrokePiece)[] {
  return (holder.children ?? []).flatMap((svg) =>
    (svg.children ?? []).map((shape) =>
      shape.pathName === undefined
        ? readStroke(shape)
        : readPath(svg, shape, { from, share }),
    ),
  );
}

function readPath(
  svg: KatexNode,
  path: KatexNode,
  place: { readonly from: number; readonly share: number },
): PathPiece {
  const box = /^0 0 ([\d.]+) ([\d.]+)$/.exec(svg.attributes?.viewBox ?? '');
  if (box === null) return refuse('an outline without a view box');
  return {
    kind: 'path',
    ...place,
    viewWidth: Number(box[1]),
    viewHeight: Number(box[2]),
    fit: fitOf(svg.attributes?.preserveAspectRatio),
    data: path.alternate ?? dataIn(path.toMarkup()),
  };
}

/** The path data of a named outline: KaTeX tells them in its markup alone. */
function dataIn(markup: string): string {
  const match = /^<path d="([^"]*)"\/>$/.exec(markup);
  return match?.[1] ?? refuse('an outline without data');
}

const fits: ReadonlyMap<string | undefined, Fit> = new Map<string | undefined, Fit>([
  [undefined, 'meet-middle'],
  ['none', 'stretch'],
  ['xMinYMin', 'meet-left'],
  ['xMinYMin slice', 'slice-left'],
  ['xMidYMin slice', 'slice-middle'],
  ['xMaxYMin slice', 'slice-right'],
]);

function fitOf(aspect: string | undefined): Fit {
  return fits.get(aspect) ?? refuse(`the aspect "${aspect ?? ''}"`);
}

/** \cancel's strokes run from corner to corner, in per cent of the picture. */
function readStroke(line: KatexNode): StrokePiece {
  const { x1, y1, x2, y2, 'stroke-width': thickness } = line.attributes ?? {};
  const ends = [x1, y1, x2, y2].join(' ');
  if (ends !== '0 0 100% 100%' && ends !== '0 100% 100% 0') refuse(`a line (${ends})`);
  return {
    kind: 'stroke',
    thickness: ems(thickness),
    isRising: ends === '0 100% 100% 0',
  };
}

/** A box as wide as its line; undefined for other spans. */
export function readFrame(node: KatexNode, look: Look): FrameNode | undefined {
  const classes = node.classes ?? [];
  if (!classes.includes('katex-stretchy')) return undefined;
  const { height, borderWidth, borderTopWidth, borderColor, backgroundColor } =
    node.style ?? {};
  const frame = {
    kind: 'frame' as const,
    ...look,
    tall: ems(height),
    border: borderColor,
    background: backgroundColor,
  };
  if (classes.includes('angl')) {
    const thickness = borderTopWidth === undefined ? anglBorder : ems(borderTopWidth);
    return { ...frame, sides: 'top-right', thickness };
  }
  if (classes.includes('colorbox')) return { ...frame, sides: 'all', thickness: 0 };
  if (classes.includes('fbox') || classes.includes('fcolorbox')) {
    const thickness = borderWidth === undefined ? boxBorder : ems(borderWidth);
    return { ...frame, sides: 'all', thickness };
  }
  return refuse(`a stretched box (${classes.join(' ')})`);
}
