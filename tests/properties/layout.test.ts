import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { PagedDocument } from '../../src/layout/index.ts';
import type { Block, Inline } from '../../src/report/index.ts';
import {
  equals,
  equation,
  group,
  headRow,
  heading,
  letter,
  list,
  math,
  paragraph,
  part,
  product,
  quotient,
  report,
  row,
  sheetNumber,
  table,
  text,
  words,
} from '../support/blocks.ts';
import { layOutReport } from '../support/layout-tools.ts';
import { linksOf, runsOf, textOf, visitMarks } from '../support/read-pages.ts';

/** The text area of a letter sheet, points, and the right edge of the margin column. */
const area = { left: 72, right: 492, marginRight: 576, top: 54, foot: 792 - 66 };

const someWords = fc
  .tuple(fc.integer({ min: 1, max: 140 }), fc.integer({ min: 0, max: 40 }))
  .map(([count, from]) => words(count, from));
const inline: fc.Arbitrary<Inline> = fc.oneof(
  { weight: 6, arbitrary: someWords.map((of) => text(`${of} `)) },
  fc.constant(math(product(letter('q'), letter('L', 'max')))),
  fc.constant(math(quotient(letter('M'), letter('S')))),
  fc.constant(sheetNumber('end')),
  fc.constantFrom(text(' 12.5 kip·ft '), text('self-weight '), text('x'.repeat(150))),
);
const content = fc.array(inline, { minLength: 1, maxLength: 4 });
const flat: fc.Arbitrary<Block> = fc.oneof(
  {
    weight: 4,
    arbitrary: fc
      .tuple(
        content,
        fc.constantFrom(
          ...(['body', 'small', 'lead', 'note', 'caution', 'field'] as const),
        ),
      )
      .map(([of, style]) => paragraph(of, { style })),
  },
  content.map((of) => paragraph(of, { margin: [text(words(8)), sheetNumber('end')] })),
  fc
    .constantFrom(1 as const, 2 as const, 3 as const)
    .map((level) => heading(level, words(4))),
  fc.integer({ min: 1, max: 7 }).map((count) =>
    equation(
      Array.from({ length: count }, () =>
        equals(letter('M', 'A'), quotient(letter('P'), letter('L'))),
      ),
      true,
    ),
  ),
  fc.tuple(fc.integer({ min: 1, max: 30 }), someWords).map(([count, of]) =>
    table(['left', 'decimal', 'left'], {
      head: [headRow('Mark', 'Value', 'Why')],
      body: Array.from({ length: count }, (_, index) =>
        row(`B${index}`, String(index * 1.5), index % 5 === 0 ? of : 'short'),
      ),
    }),
  ),
  fc.array(content, { minLength: 1, maxLength: 4 }).map((items) => list(items, true)),
  fc.constant({ kind: 'space', height: 60, label: 'Sign here' } as const),
  fc
    .array(fc.string({ maxLength: 120 }), { minLength: 1, maxLength: 30 })
    .map((lines) => ({ kind: 'listing', lines }) as const),
);
const block: fc.Arbitrary<Block> = fc.oneof(
  { weight: 5, arbitrary: flat },
  fc
    .tuple(fc.constantFrom('box', 'keep', 'section'), fc.array(flat, { maxLength: 4 }))
    .map(([role, blocks]) => group(role as 'box', blocks)),
);
const blocks = fc.array(block, { minLength: 1, maxLength: 14 });

function layOut(of: readonly Block[]): PagedDocument {
  return layOutReport(
    report([part('Beginning', of), part('End', [paragraph('End of calculations.')])]),
  );
}

const settings = { numRuns: 20 };

describe('layout', () => {
  test('no mark leaves its area', () => {
    fc.assert(
      fc.property(blocks, (of) => {
        for (const page of layOut(of).pages) {
          for (const run of runsOf(page)) {
            if (run.artifact === 'pagination') continue;
            const isNote = run.x > area.right;
            expect(run.x).toBeGreaterThanOrEqual(area.left - 1e-6);
            expect(run.right).toBeLessThanOrEqual(
              (isNote ? area.marginRight : area.right) + 1e-6,
            );
            expect(run.y).toBeGreaterThan(area.top);
            expect(run.y).toBeLessThanOrEqual(area.foot + 1e-6);
          }
          visitMarks(page.drawing.marks, (mark, { x, y, artifact }) => {
            if (mark.kind !== 'shape' || artifact === 'pagination') return;
            for (const [, ...numbers] of mark.path) {
              for (const [index, number] of numbers.entries()) {
                const [from, to] =
                  index % 2 === 0 ? [area.left, area.right] : [area.top, area.foot];
                const at = number + (index % 2 === 0 ? x : y);
                expect(at).toBeGreaterThanOrEqual(from - 1e-6);
                expect(at).toBeLessThanOrEqual(to + 1e-6);
              }
            }
          });
        }
      }),
      settings,
    );
  });

  test('no two lines of text overlap', () => {
    fc.assert(
      fc.property(blocks, (of) => {
        const document = layOut(of);
        for (const page of document.pages) {
          // Lines of the text itself: parts of an equation stand above each other by nature.
          const lines = runsOf(page).filter(
            ({ element, face }) =>
              element !== undefined &&
              document.elements[element]!.type !== 'Formula' &&
              !/KaTeX_(Size|Math)/.test(face),
          );
          for (const [index, one] of lines.entries()) {
            for (const other of lines.slice(index + 1)) {
              if (one.y === other.y) {
                const [left, right] = one.x <= other.x ? [one, other] : [other, one];
                expect(left.right).toBeLessThanOrEqual(right.x + 0.6);
                continue;
              }
              const isBeside = one.right <= other.x + 0.6 || other.right <= one.x + 0.6;
              const apart = Math.abs(one.y - other.y);
              if (!isBeside)
                expect(apart).toBeGreaterThan(0.8 * Math.min(one.size, other.size));
            }
          }
        }
      }),
      settings,
    );
  });

  test('every block is placed once and in order', () => {
    const numbered = fc
      .array(fc.tuple(flat, fc.integer({ min: 0, max: 2 })), {
        minLength: 1,
        maxLength: 14,
      })
      .map((pairs) =>
        pairs.flatMap(([of, kind], index): readonly Block[] => {
          const mark = paragraph(`mark-${index}-here`);
          if (kind === 0) return [of, mark];
          return kind === 1
            ? [group('box', [mark, of])]
            : [list([[mark], [paragraph('x')]]), of];
        }),
      );
    fc.assert(
      fc.property(numbered, (of) => {
        const said = layOut(of).pages.map(textOf).join(' ');
        const found = [...said.matchAll(/mark-\s?(\d+)-\s?here/g)].map(([, number]) =>
          Number(number),
        );
        const expected = Array.from({ length: found.length }, (_, index) => index);
        expect(found).toEqual(expected);
        expect(found.length).toBe(JSON.stringify(of).match(/mark-\d+-here/g)!.length);
      }),
      settings,
    );
  });

  test('every element is drawn where it says, and pages go through the elements in order', () => {
    fc.assert(
      fc.property(blocks, (of) => {
        const { pages, elements } = layOut(of);
        let last = 0;
        for (const page of pages) {
          const seen: number[] = [];
          visitMarks(page.drawing.marks, (mark, { x, element, artifact }) => {
            if (mark.kind === 'anchor') return;
            expect(element === undefined).toBe(artifact !== undefined);
            // A note in the margin is read behind its paragraph, which may go on to the next page.
            if (element !== undefined && x < area.right) seen.push(element);
          });
          for (const element of seen) {
            expect(element).toBeLessThan(elements.length);
            expect(elements[element]!.parent).toBeLessThan(element);
          }
          if (seen.length === 0) continue;
          expect(Math.min(...seen)).toBeGreaterThanOrEqual(rowStart(elements, last));
          last = Math.max(...seen);
        }
      }),
      settings,
    );
  });

  test('links say the sheet that they lead to', () => {
    fc.assert(
      fc.property(blocks, (of) => {
        const { pages, sheets } = layOut(of);
        const end = sheets.end!;
        expect(textOf(pages[end - 1]!)).toBe('End of calculations.');
        for (const page of pages)
          for (const { says } of linksOf(page)) expect(says).toBe(`Sheet ${end}: End`);
      }),
      settings,
    );
  });

  test('the same input gives the same document', () => {
    fc.assert(
      fc.property(blocks, (of) => {
        expect(layOut(of)).toEqual(layOut(of));
      }),
      { numRuns: 10 },
    );
  });

  test('a paragraph more at the end changes no page before a page start that both have', () => {
    const lengths = fc.array(fc.tuple(fc.integer({ min: 1, max: 160 }), fc.boolean()), {
      minLength: 8,
      maxLength: 24,
    });
    // Words that occur once each, so that a page is known by its first.
    const unique = (
      [count, isHeaded]: readonly [number, boolean],
      at: number,
    ): Block[] => [
      ...(isHeaded ? [heading(2, `Heading-${at}`)] : []),
      paragraph(
        Array.from({ length: count }, (_, index) => `w${at}.${index}`).join(' '),
      ),
    ];
    fc.assert(
      fc.property(lengths, fc.integer({ min: 1, max: 400 }), (of, more) => {
        const given = of.flatMap(unique);
        const longer = [...given, ...unique([more, false], of.length)];
        const before = layOut(given).pages.slice(0, -1).map(textOf);
        const after = layOut(longer).pages.slice(0, -1).map(textOf);
        const starts = after.map((page) => page.split(' ')[0]);
        const shared = before
          .map((page) => starts.indexOf(page.split(' ')[0]))
          .filter((at) => at >= 0);
        const last = shared.at(-1)!;
        expect(shared).toEqual(
          Array.from({ length: shared.length }, (_, index) => index),
        );
        expect(after.slice(0, last)).toEqual(before.slice(0, last));
      }),
      settings,
    );
  });
});

/** The first element of the innermost row, item or paragraph that an element belongs to, or itself. */
function rowStart(elements: PagedDocument['elements'], id: number): number {
  let start = id;
  for (let at: number | undefined = id; at !== undefined; at = elements[at]!.parent) {
    if (
      ['TR', 'P', 'LI', 'Caption', 'Code', 'H1', 'H2', 'H3', 'Div'].includes(
        elements[at]!.type,
      )
    )
      start = at;
  }
  return start;
}
