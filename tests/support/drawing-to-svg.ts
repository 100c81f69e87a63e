import type {
  Colour,
  Drawing,
  GlyphsMark,
  Mark,
  PathStep,
  ShapeMark,
  Stroke,
} from '../../src/drawing/index.ts';
import type { Box } from '../../src/figure/geometry/box.ts';

/** How the faces of the font book are called where a drawing is looked at as SVG. */
const families: Readonly<Record<string, string>> = {
  text: 'font-family="Source Serif 4"',
  'text-italic': 'font-family="Source Serif 4" font-style="italic"',
  'text-semibold':
    'font-family="Source Serif 4, Source Serif 4 Semibold" font-weight="600"',
  'text-semibold-italic':
    'font-family="Source Serif 4" font-weight="600" font-style="italic"',
  'text-bold': 'font-family="Source Serif 4" font-weight="700"',
};

/** A drawing as SVG, to be looked at; boxes can be laid over it, labels blue and obstacles orange. */
export function drawingToSvg(
  drawing: Drawing,
  boxes: { readonly labels: readonly Box[]; readonly obstacles: readonly Box[] } = {
    labels: [],
    obstacles: [],
  },
): string {
  const { width, height } = drawing;
  const over = [
    ...boxes.obstacles.map((box) => rectangle(box, 'fill="#f80" fill-opacity="0.35"')),
    ...boxes.labels.map((box) =>
      rectangle(box, 'fill="none" stroke="#04f" stroke-width="0.3"'),
    ),
  ];
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}">`,
    `<rect width="100%" height="100%" fill="white"/>`,
    ...drawing.marks.map(markToSvg),
    ...over,
    '</svg>',
  ].join('\n');
}

function markToSvg(mark: Mark): string {
  switch (mark.kind) {
    case 'group':
      return `<g transform="translate(${mark.x} ${mark.y})">${mark.marks.map(markToSvg).join('')}</g>`;
    case 'shape':
      return shapeToSvg(mark);
    case 'glyphs':
      return glyphsToSvg(mark);
    case 'image':
    case 'link':
    case 'anchor':
      return '';
  }
}

function shapeToSvg({ path: steps, fill, stroke }: ShapeMark): string {
  const inside = fill === undefined ? 'none' : colour(fill);
  return `<path d="${path(steps)}" fill="${inside}"${stroke === undefined ? '' : strokeToSvg(stroke)}/>`;
}

function strokeToSvg({ colour: ink, width, cap, join, dash }: Stroke): string {
  const dashes = dash === undefined ? '' : ` stroke-dasharray="${dash.join(' ')}"`;
  return ` stroke="${colour(ink)}" stroke-width="${width}" stroke-linecap="${cap ?? 'butt'}" stroke-linejoin="${join ?? 'miter'}"${dashes}`;
}

/** One span a glyph, so that every glyph stands where the drawing has it. */
function glyphsToSvg(mark: GlyphsMark): string {
  const glyphs = mark.glyphs.map(({ x, text }) => {
    const escaped = text.replaceAll('&', '&amp;').replaceAll('<', '&lt;');
    return `<tspan x="${mark.x + x}">${escaped}</tspan>`;
  });
  return `<text y="${mark.y}" font-size="${mark.size}" ${familyOf(mark.face)} fill="${colour(mark.colour)}">${glyphs.join('')}</text>`;
}

function familyOf(face: string): string {
  const [, name = '', style = ''] = /^KaTeX_(\w+)-(\w+)$/.exec(face) ?? [];
  const slope = style.includes('Italic') ? ' font-style="italic"' : '';
  const weight = style.includes('Bold') ? ' font-weight="700"' : '';
  return families[face] ?? `font-family="KaTeX_${name}"${slope}${weight}`;
}

function path(steps: readonly PathStep[]): string {
  return steps.map((step) => step.join(' ')).join(' ');
}

function colour([red, green, blue]: Colour): string {
  return `rgb(${[red, green, blue].map((part) => Math.round(part * 255)).join(',')})`;
}

function rectangle({ left, top, right, bottom }: Box, look: string): string {
  return `<rect x="${left}" y="${top}" width="${right - left}" height="${bottom - top}" ${look}/>`;
}
