import { describe, expect, test } from 'vitest';
import type { StatementLine } from '../../../src/equation/index.ts';
import { sum } from '../../../src/equation/index.ts';
import {
  equals,
  equation,
  letter,
  paragraph,
  product,
  quotient,
  words,
} from '../../support/blocks.ts';
import { layOutBlocks } from '../../support/layout-tools.ts';
import { runsOf, shapesOf, visitMarks } from '../../support/read-pages.ts';
import type { Mark } from '../../../src/drawing/index.ts';

const lines: readonly StatementLine[] = [
  equals(letter('M', 'A'), sum(product(letter('R', 'C'), letter('L')), letter('P'))),
  { chain: [{ sign: '=', of: quotient(letter('P'), letter('L')) }], boxed: true },
];

function actualTexts(marks: readonly Mark[]): readonly string[] {
  return marks.flatMap((mark) =>
    mark.kind === 'group'
      ? [
          ...(mark.actualText === undefined ? [] : [mark.actualText]),
          ...actualTexts(mark.marks),
        ]
      : [],
  );
}

describe('setEquation', () => {
  const document = layOutBlocks(paragraph('Moments about A:'), equation(lines, true));
  const page = document.pages[0]!;

  test('stacks the lines on their relation signs', () => {
    const signs = runsOf(page).filter(({ text }) => text === '=');
    expect(signs).toHaveLength(2);
    expect(signs[1]!.x).toBeCloseTo(signs[0]!.x, 3);
    expect(signs[1]!.y).toBeGreaterThan(signs[0]!.y);
  });

  test('makes each line a formula that is spoken, and that is copied in linear form', () => {
    const formulas = document.elements.filter(({ type }) => type === 'Formula');
    expect(formulas.map(({ alternate }) => alternate)).toEqual([
      'M sub A equals R sub C times L plus P',
      'equals P over L',
    ]);
    expect(actualTexts(page.drawing.marks)).toEqual(['M_A = R_C L + P', '= P / L']);
  });

  test('draws the box of a result', () => {
    expect(
      shapesOf(page).filter(({ artifact }) => artifact === undefined).length,
    ).toBeGreaterThan(1);
  });

  test('stands the note of a broken line beside its last row', () => {
    const long = sum(
      ...Array.from({ length: 24 }, () => product(letter('R', 'C'), letter('L'))),
    );
    const [only] = layOutBlocks(
      equation([{ ...equals(letter('M', 'A'), long), margin: '(7)' }], false),
    ).pages;
    const runs = runsOf(only!);
    const note = runs.find(({ text }) => text === '(7)')!;
    const rows = [
      ...new Set(runs.filter(({ text }) => text === 'L').map(({ y }) => y)),
    ];
    expect(rows.length).toBeGreaterThan(1);
    expect(note.y).toBeCloseTo(Math.max(...rows), 3);
  });

  test('stands a line’s note in the margin, on the line’s baseline', () => {
    const noted = [lines[0]!, { ...lines[1]!, margin: 'AISC F2' }];
    const [of] = layOutBlocks(equation(noted)).pages;
    const runs = runsOf(of!);
    const note = runs.find(({ text }) => text === 'AISC F2')!;
    const sign = runs.filter(({ text }) => text === '=')[1]!;
    expect(note.y).toBeCloseTo(sign.y, 3);
    expect(note.x).toBeGreaterThan(72 + 420);
  });

  test('breaks a line that is wider than the column and stays inside it', () => {
    const terms = Array.from({ length: 24 }, (_, index) =>
      product(letter('P', String(index)), letter('x', String(index))),
    );
    const [of] = layOutBlocks(equation([equals(letter('M'), sum(...terms))])).pages;
    const runs = runsOf(of!).filter(({ artifact }) => artifact === undefined);
    expect(
      new Set(runs.filter(({ text }) => text === 'P').map(({ y }) => y)).size,
    ).toBeGreaterThan(1);
    for (const { right } of runs) expect(right).toBeLessThanOrEqual(72 + 420 + 1e-6);
  });

  test('keeps a stack on the page of the sentence that introduces it', () => {
    for (let before = 36; before < 48; before += 1) {
      const { pages } = layOutBlocks(
        ...Array.from({ length: before }, () => paragraph('Line.', { style: 'field' })),
        paragraph('Intro:'),
        equation(lines, true),
        paragraph(words(20)),
      );
      const at = pages.findIndex((of) =>
        runsOf(of).some(({ text }) => text === 'Intro:'),
      );
      expect(runsOf(pages[at]!).filter(({ text }) => text === '=')).toHaveLength(2);
    }
  });

  test('breaks a stack longer than half a page between its lines alone', () => {
    const many = Array.from({ length: 60 }, () => lines[1]!);
    const { pages } = layOutBlocks(equation(many));
    expect(pages.length).toBeGreaterThan(1);
    const signs = pages.map(
      (of) => runsOf(of).filter(({ text }) => text === '=').length,
    );
    expect(signs.reduce((total, count) => total + count, 0)).toBe(60);
    for (const of of pages) {
      let lowest = 0;
      visitMarks(of.drawing.marks, (mark, { y, artifact }) => {
        if (mark.kind === 'glyphs' && artifact === undefined)
          lowest = Math.max(lowest, y + mark.y);
      });
      expect(lowest).toBeLessThan(792 - 66);
    }
  });

  test('sets no lines as nothing', () => {
    expect(
      layOutBlocks(equation([])).elements.some(({ type }) => type === 'Formula'),
    ).toBe(false);
  });
});
