import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { createTypesetter } from '../../src/typeset/index.ts';
import { ownFonts } from '../support/own-fonts.ts';
import { readDrawing, unionOf } from '../support/typeset-reference/read-drawing.ts';
import type {
  DrawnBox,
  DrawnEquation,
  DrawnGlyph,
} from '../support/typeset-reference/read-drawing.ts';

/** One expression as a browser lays it out; see tests/support/typeset-reference. */
interface Reference extends DrawnEquation {
  readonly group: string;
  readonly tex: string;
  readonly display: boolean;
}

const references = JSON.parse(
  readFileSync(new URL('reference.json', import.meta.url), 'utf8'),
) as readonly Reference[];

const size = 100;
const columnOfTagged = 20;
const nearly = 0.002;
const worst = 0.01;
const pathTolerance = 0.003;

const typesetter = createTypesetter(ownFonts);

function draw({ tex, display, group }: Reference): DrawnEquation {
  const width = columnOfTagged * size;
  const options = group === 'tagged' ? { size, display, width } : { size, display };
  return readDrawing(typesetter.typeset(tex, options), size);
}

/** How far off the nearest glyph of the same text, face and size is, each taken once. */
function glyphErrors(
  drawn: readonly DrawnGlyph[],
  expected: readonly DrawnGlyph[],
): readonly number[] {
  const left = [...drawn];
  return expected.map(([text, face, x, y, em]) => {
    let best = -1;
    let error = Infinity;
    for (const [index, glyph] of left.entries()) {
      const isSame =
        glyph[0] === text && glyph[1] === face && Math.abs(glyph[4] - em) < nearly;
      const off = Math.max(Math.abs(glyph[2] - x), Math.abs(glyph[3] - y));
      if (isSame && off < error) [best, error] = [index, off];
    }
    if (best >= 0) left.splice(best, 1);
    return error;
  });
}

function distance(one: DrawnBox, other: DrawnBox): number {
  return Math.max(...one.map((value, side) => Math.abs(value - other[side]!)));
}

function boxErrors(
  drawn: readonly DrawnBox[],
  expected: readonly DrawnBox[],
): readonly number[] {
  return expected.map((box) => Math.min(...drawn.map((own) => distance(own, box))));
}

describe('the layout agrees with the browser’s', () => {
  test.each(references)('$group: $tex', (reference) => {
    const { glyphs, boxes } = draw(reference);
    expect(glyphs).toHaveLength(reference.glyphs.length);
    expect(Math.max(0, ...glyphErrors(glyphs, reference.glyphs))).toBeLessThan(worst);
    if (reference.group === 'union') {
      const off = distance(unionOf(boxes), unionOf(reference.boxes));
      expect(off).toBeLessThan(pathTolerance);
    } else {
      expect(Math.max(0, ...boxErrors(boxes, reference.boxes))).toBeLessThan(
        pathTolerance,
      );
      expect(Math.max(0, ...boxErrors(reference.boxes, boxes))).toBeLessThan(
        pathTolerance,
      );
    }
  });

  test('99 of 100 glyphs stand within 0.002 em of their place', () => {
    const errors = references.flatMap((reference) =>
      glyphErrors(draw(reference).glyphs, reference.glyphs),
    );
    const near = errors.filter((error) => error < nearly);
    expect(errors.length).toBeGreaterThan(1500);
    expect(near.length / errors.length).toBeGreaterThan(0.99);
  });

  test('the reference covers at least 150 expressions of every group', () => {
    expect(references.length).toBeGreaterThanOrEqual(150);
    expect(new Set(references.map(({ group }) => group)).size).toBeGreaterThanOrEqual(
      15,
    );
  });
});
