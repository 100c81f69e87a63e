import { expect, test } from 'vitest';
import { notationOf } from '../../../src/report/contexts/notation.ts';

test('symbols that differ only in a point or a number are told once, with i in its place', () => {
  const notation = notationOf([
    { letter: 'R', subscript: 'A', meaning: 'vertical reaction at A' },
    { letter: 'R', subscript: 'C', meaning: 'vertical reaction at C' },
    { letter: 'P', subscript: '1', meaning: 'point load 1' },
    { letter: 'P', subscript: '2x', meaning: 'horizontal part of point load 2' },
    {
      letter: 'd',
      subscript: 'C/A',
      meaning: 'distance along the member of the first from the second',
    },
    { letter: 'M', subscript: 'max', meaning: 'greatest bending moment' },
  ]);
  expect(
    notation.map(
      ({ letter, subscript, meaning }) => `${letter}_${subscript ?? ''}: ${meaning}`,
    ),
  ).toEqual([
    'M_max: greatest bending moment',
    'P_i: point load i',
    'P_ix: horizontal part of point load i',
    'R_i: vertical reaction at i',
    'd_j/i: distance of j from i along the member',
  ]);
});
