import type { Colour, Drawing, Mark, PathStep } from '../../src/drawing/index.ts';
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
    case 'shape': {
      const { fill, stroke } = mark;
      const lines =
        stroke === undefined
          ? ''
          : ` stroke="${colour(stroke.colour)}" stroke-width="${stroke.width}" stroke-linecap="${stroke.cap ?? 'butt'}" stroke-linejoin="${stroke.join ?? 'miter'}"${stroke.dash === undefined ? '' : ` stroke-dasharray="${stroke.dash.join(' ')}"`}`;
      return `<path d="${path(mark.path)}" fill="${fill === undefined ? 'none' : colour(fill)}"${lines}/>`;
    }
    case 'glyphs': {
      const [, name = '', style = ''] = /^KaTeX_(\w+)-(\w+)$/.exec(mark.face) ?? [];
      const family =
        families[mark.face] ??
        `font-family="KaTeX_${name}"${style.includes('Italic') ? ' font-style="italic"' : ''}${style.includes('Bold') ? ' font-weight="700"' : ''}`;
      const glyphs = mark.glyphs.map(({ x, text }) => {
        const escaped = text.replaceAll('&', '&amp;').replaceAll('<', '&lt;');
        return `<tspan x="${mark.x + x}">${escaped}</tspan>`;
      });
      return `<text y="${mark.y}" font-size="${mark.size}" ${family} fill="${colour(mark.colour)}">${glyphs.join('')}</text>`;
    }
    case 'image':
    case 'link':
    case 'anchor':
      return '';
  }
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
