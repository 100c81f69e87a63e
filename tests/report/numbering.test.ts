import { expect, test } from 'vitest';
import { name } from '../../src/equation/index.ts';
import type { Block } from '../../src/report/index.ts';
import { numberEquations } from '../../src/report/numbering.ts';

const of = name({ letter: 'V', meaning: 'shear' });
const equation = (margin?: string): Block => ({
  kind: 'equation',
  keepWithPrevious: false,
  statement: {
    lines: [
      { chain: [{ sign: '=', of }] },
      { chain: [{ sign: '=', of }], ...(margin === undefined ? {} : { margin }) },
    ],
  },
});

function margins(blocks: readonly Block[]): readonly (string | undefined)[] {
  return blocks.flatMap((block): readonly (string | undefined)[] => {
    if (block.kind === 'group') return margins(block.blocks);
    return block.kind === 'equation' ? [block.statement.lines.at(-1)?.margin] : [];
  });
}

test('equations are numbered from 1 through groups, beside their last line', () => {
  const blocks: readonly Block[] = [
    equation(),
    { kind: 'group', role: 'keep', blocks: [equation()] },
    equation(),
  ];
  expect(margins(numberEquations(blocks))).toEqual(['(1)', '(2)', '(3)']);
});

test('a line that has a margin note keeps it', () => {
  expect(margins(numberEquations([equation('at A'), equation()]))).toEqual([
    'at A',
    '(2)',
  ]);
});
