import { expect, test } from 'vitest';
import { name, type StatementLine } from '../../../src/equation/index.ts';
import {
  checkFacts,
  checkTitleOf,
  stepAnchorOf,
} from '../../../src/report/contexts/check-facts.ts';
import { noCombinations } from '../../../src/standards/index.ts';
import type { MarkedFile, MarkedStep } from '../../../src/review/index.ts';
import { beamYaml, soundFolder } from '../../support/folder.ts';

const P = name({ letter: 'P', meaning: 'load' });
const R = name({ letter: 'R', meaning: 'reaction' });

/** R − P = 0. */
const line: StatementLine = {
  left: {
    kind: 'sum',
    terms: [
      { sign: 1, of: R },
      { sign: -1, of: P },
    ],
  },
  chain: [{ sign: '=', of: P }],
};

const step: MarkedStep = {
  step: 1,
  line: 4,
  loads: 'all',
  written: 'R + P = 0',
  concluded: ['R = 3 kip'],
  lines: [line, line],
  verdict: 'wrong',
  findings: [{ kind: 'sign', message: '`P` acts down.' }],
  remarks: [],
  expected: { line, text: 'R − P = 0', differing: [1] },
};

const file = (steps: readonly MarkedStep[]): MarkedFile => ({
  file: 'worked/hoist.yaml',
  member: 'B1',
  isLoadsChosen: false,
  steps,
  summary: { right: 0, wrong: steps.length, follows: 0, unread: 0 },
  comments: [],
  remarks: [],
});

const factsOf = (steps: readonly MarkedStep[]): object =>
  checkFacts(file(steps), {
    project: soundFolder({ 'members/b1.yaml': beamYaml() }),
    members: [],
    combinations: noCombinations,
    loadPath: [],
    worked: [file(steps)],
    closures: [],
    asIs: [],
    program: { name: 'sumzero', version: '0.0.0' },
  });

test('the right line has the differing terms set off and no others', () => {
  expect(factsOf([step])).toMatchObject({
    hasMark: { setOff: true },
    steps: [
      {
        belongs: {
          lines: [{ left: { terms: [{ of: R }, { of: P, isSetOff: true }] } }],
        },
        findings: [{ message: '“P” acts down.' }],
      },
    ],
  });
  expect(JSON.stringify(factsOf([step])).match(/isSetOff/g)).toHaveLength(1);
});

test('each line of a step is a statement by itself', () => {
  expect(factsOf([step])).toMatchObject({
    steps: [{ statements: [{ lines: [line] }, { lines: [line] }], texts: [] }],
  });
});

test('a step of which one line cannot be read stands as it was written, whole', () => {
  expect(factsOf([{ ...step, verdict: 'unread', lines: [line] }])).toMatchObject({
    steps: [{ mark: 'not read', statements: [], texts: ['R + P = 0', 'R = 3 kip'] }],
  });
});

test('sheets and steps are named after the file', () => {
  expect(checkTitleOf(file([]))).toBe('Check print of hoist, member B1');
  expect(stepAnchorOf(file([]), 3)).toBe('check-hoist/3');
});
