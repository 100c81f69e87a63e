/*
 * Makes tests/typeset/reference.json: where a browser puts every glyph and path of the expressions
 * in expressions.js, laid out by KaTeX's own stylesheet. Run by hand when KaTeX's pinned version or
 * the list changes, never by the tests:
 *
 *     node tests/support/typeset-reference/make-reference.js
 *
 * It needs Debian's `chromium` and `mutool` (mupdf-tools). Each expression stands on a page of its
 * own behind a marker glyph on the same baseline, at 1000 px/em: below that the browser rounds
 * baselines and rules to whole pixels and is less exact than what it is to judge. Its own quantum
 * is then 0.0005 em. The printed PDF is read back with `mutool trace`.
 *
 * The file holds, for each expression, its glyphs [text, face, x, y, size] and the boxes of its
 * paths [left, top, right, bottom], in ems from the start of the baseline, y down.
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import katex from 'katex';
import { display, inline, tagged, union } from './expressions.js';

const em = 1000;
const columnOfTagged = 20;
const markerAdvance = 0.917; // M of KaTeX_Main-Regular

const cases = [
  ...Object.entries(display).flatMap(([group, list]) =>
    list.map((tex) => ({ group, tex, display: true })),
  ),
  ...union.map((tex) => ({ group: 'union', tex, display: true })),
  ...inline.map((tex) => ({ group: 'inline', tex, display: false })),
  ...tagged.map((tex) => ({ group: 'tagged', tex, display: true })),
];

function page({ tex, display: isDisplay, group }) {
  const root = katex.__renderToHTMLTree(tex, {
    displayMode: isDisplay,
    strict: 'ignore',
  });
  const isTagged = group === 'tagged';
  const markup = (isDisplay && !isTagged ? root.children[0] : root).toMarkup();
  const look = isTagged
    ? `width:${columnOfTagged * em}px`
    : `text-align:${isDisplay ? 'center' : 'left'}`;
  return `<div class="page"><div class="line"><span>M</span><span class="holder" style="${look}">${markup}</span></div></div>`;
}

const stylesheet = new URL(
  '../../../node_modules/katex/dist/katex.css',
  import.meta.url,
);
const html = `<!doctype html><meta charset="utf-8"><link rel="stylesheet" href="${stylesheet}"><style>
@page { size: 46000px 18000px; margin: 0 }
body { margin: 0 }
.page { break-after: page; height: 17900px; white-space: nowrap; overflow: hidden; position: relative;
  font: ${em}px KaTeX_Main; line-height: 1.2 }
.katex { font-size: ${em}px !important }
.katex-display { margin: 0 }
.line { position: absolute; left: 1000px; top: 7000px }
.holder { display: inline-block }
</style><body>${cases.map(page).join('')}`;

const folder = mkdtempSync(join(tmpdir(), 'typeset-reference-'));
const pagePath = join(folder, 'reference.html');
const pdfPath = join(folder, 'reference.pdf');
writeFileSync(pagePath, html);
execFileSync(
  'chromium',
  [
    '--headless',
    '--no-sandbox',
    '--disable-gpu',
    '--font-render-hinting=none',
    '--no-pdf-header-footer',
    '--allow-file-access-from-files',
    `--print-to-pdf=${pdfPath}`,
    `file://${pagePath}`,
  ],
  { stdio: 'ignore' },
);
const trace = execFileSync('mutool', ['trace', pdfPath], {
  maxBuffer: 1 << 30,
}).toString();
rmSync(folder, { recursive: true });

/* Reading the trace. */

const attribute = (line, name) => new RegExp(` ${name}="([^"]*)"`).exec(line)?.[1];
const numbers = (text) => text.split(' ').map(Number);
const apply = ([a, b, c, d, e, f], x, y) => [a * x + c * y + e, b * x + d * y + f];
const unescape = (text) =>
  text
    .replace(/&#x([\da-f]+);/gi, (_, hex) =>
      String.fromCodePoint(Number.parseInt(hex, 16)),
    )
    .replace(/&lt;/g, '<')
    .replace(/&gt;/g, '>')
    .replace(/&quot;/g, '"')
    .replace(/&apos;/g, "'")
    .replace(/&amp;/g, '&');

const fontFolder = new URL('../../../node_modules/katex/dist/fonts/', import.meta.url);
const faces = readdirSync(fontFolder)
  .filter((name) => name.endsWith('.ttf'))
  .map((name) => name.slice(0, -'.ttf'.length));

/** The face of a font name, which the trace cuts off after 31 characters with the subset's tag. */
function faceOf(name) {
  const bare = name.replace(/^[A-Z]{6}\+/, '');
  return (
    faces.find((face) => face === bare) ??
    faces.find((face) => face.startsWith(bare)) ??
    bare
  );
}

/** Points on the lines and curves of a path; 64 a curve tell its box to 0.0001 em. */
function pointOn(line, from) {
  const at = (name) => Number(attribute(line, name));
  if (!line.includes('<curveto')) return [[at('x'), at('y')]];
  const [x0, y0] = from;
  const [x1, y1, x2, y2, x3, y3] = ['x1', 'y1', 'x2', 'y2', 'x3', 'y3'].map(at);
  return Array.from({ length: 64 }, (_, index) => {
    const t = (index + 1) / 64;
    const u = 1 - t;
    const blend = (a, b, c, d) =>
      u ** 3 * a + 3 * u * u * t * b + 3 * u * t * t * c + t ** 3 * d;
    return [blend(x0, x1, x2, x3), blend(y0, y1, y2, y3)];
  });
}

function boxOf(points, spread) {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  return [
    Math.min(...xs) - spread,
    Math.min(...ys) - spread,
    Math.max(...xs) + spread,
    Math.max(...ys) + spread,
  ];
}

const cut = (box, window) => [
  Math.max(box[0], window[0]),
  Math.max(box[1], window[1]),
  Math.min(box[2], window[2]),
  Math.min(box[3], window[3]),
];

const everywhere = [-Infinity, -Infinity, Infinity, Infinity];

function readPage(lines) {
  const glyphs = [];
  const boxes = [];
  const windows = [everywhere];
  let open; // the element that is open: its matrix, and the points or font of what is in it
  let face;
  let size;
  for (const line of lines) {
    if (/<(fill|stroke|clip)_path|<fill_text|<clip_text/.test(line)) {
      const stroke = Number(attribute(line, 'linewidth') ?? 0);
      open = {
        line,
        matrix: numbers(attribute(line, 'transform')),
        points: [],
        last: [0, 0],
        stroke: line.includes('<stroke_path') ? stroke : 0,
        isHidden: attribute(line, 'alpha') === '0',
      };
    } else if (line.includes('<span ')) {
      face = faceOf(attribute(line, 'font'));
      size = numbers(attribute(line, 'trm'))[0];
    } else if (line.includes('<g ')) {
      const [x, y] = apply(
        open.matrix,
        Number(attribute(line, 'x')),
        Number(attribute(line, 'y')),
      );
      const isReal = size > 1 && !open.isHidden;
      if (isReal)
        glyphs.push([
          unescape(attribute(line, 'unicode')),
          face,
          x,
          y,
          size * open.matrix[0],
        ]);
    } else if (/<(moveto|lineto|curveto)/.test(line)) {
      for (const point of pointOn(line, open.last)) {
        open.last = point;
        open.points.push(apply(open.matrix, ...point));
      }
    } else if (/<\/clip_path/.test(line)) {
      windows.push(cut(boxOf(open.points, 0), windows.at(-1)));
    } else if (/<\/(fill|stroke)_path/.test(line)) {
      const spread = (open.stroke * open.matrix[0]) / 2;
      const box = cut(boxOf(open.points, spread), windows.at(-1));
      if (!open.isHidden && box[2] > box[0] && box[3] > box[1]) boxes.push(box);
    } else if (line.includes('<pop_clip')) {
      windows.pop();
    }
  }
  return { glyphs, boxes };
}

const pages = trace
  .split('<page ')
  .slice(1)
  .map((text) => readPage(text.split('\n')));
const round = (value) => Math.round(value * 10000) / 10000 + 0;

const reference = cases.map(({ group, tex, display: isDisplay }, index) => {
  const { glyphs, boxes } = pages[index];
  const [marker, ...rest] = glyphs;
  const unit = marker[4];
  const startX = marker[2] + markerAdvance * unit;
  const startY = marker[3];
  return {
    group,
    tex,
    display: isDisplay,
    glyphs: rest
      .filter(([text]) => text.trim() !== '' && text !== '\u200b')
      .map(([text, face, x, y, size]) => [
        text,
        face,
        round((x - startX) / unit),
        round((y - startY) / unit),
        round(size / unit),
      ]),
    boxes: boxes.map((box) =>
      box.map((value, side) =>
        round((value - (side % 2 === 0 ? startX : startY)) / unit),
      ),
    ),
  };
});

const lines = reference.map((entry) => JSON.stringify(entry));
const target = fileURLToPath(new URL('../../typeset/reference.json', import.meta.url));
writeFileSync(target, `[\n${lines.join(',\n')}\n]\n`);
