import { describe, expect, test } from 'vitest';
import {
  commentCount,
  inQuotes,
  registerFacts,
  registerOf,
} from '../../../src/report/contexts/register-facts.ts';
import type { Comment, MarkedFile } from '../../../src/review/index.ts';

const noted = (step: number, status: Comment['status']): Comment => ({
  number: 1,
  step,
  comment: 'The arm of `P` is 6 ft.',
  status,
});

const file = (name: string, comments: readonly Comment[]): MarkedFile => ({
  file: `worked/${name}.yaml`,
  isLoadsChosen: false,
  steps: [],
  summary: { right: 0, wrong: 0, follows: 0, unread: 0 },
  comments,
  remarks: [],
});

const worked = [
  file('a', [noted(2, 'open'), noted(5, 'closed')]),
  file('b', [noted(1, 'reworked')]),
];

describe('the register of comments', () => {
  test('numbers through all files and leads to the step', () => {
    expect(
      registerFacts({ worked }, (one, step) => `${one.file}#${step ?? 0}`),
    ).toMatchObject({
      rows: [
        { number: 1, step: 2, anchor: 'worked/a.yaml#2', status: 'open' },
        { number: 2, step: 5, anchor: 'worked/a.yaml#5', status: 'closed' },
        {
          number: 3,
          step: 1,
          anchor: 'worked/b.yaml#1',
          comment: 'The arm of “P” is 6 ft.',
        },
      ],
      unmarked: [],
    });
  });

  test('counts for the cover what no checker has closed', () => {
    expect(commentCount({ worked })).toEqual({
      notClosed: 2,
      states: ['1 open', '1 reworked'],
      unmarked: 0,
    });
    expect(commentCount({ worked: [file('a', [noted(1, 'closed')])] })).toEqual({
      notClosed: 0,
      states: [],
      unmarked: 0,
    });
  });

  test('says nothing where nothing was worked by hand', () => {
    expect(commentCount({ worked: [] })).toBeUndefined();
    expect(registerOf({ worked: [] })).toEqual([]);
  });
});

test('what stands between backticks is printed in quotation marks, one alone as it is', () => {
  expect(inQuotes('`P` beside `Q`')).toBe('“P” beside “Q”');
  expect(inQuotes('6` of it')).toBe('6` of it');
});
