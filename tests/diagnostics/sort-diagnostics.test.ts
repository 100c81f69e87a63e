import { expect, test } from 'vitest';
import { sortDiagnostics, type Diagnostic } from '../../src/diagnostics/index.ts';

const note = (message: string, file?: string, start: number = 0): Diagnostic => ({
  severity: 'error',
  code: 'unknown-key',
  message,
  hints: [],
  ...(file === undefined ? {} : { span: { file, start, end: start } }),
});

test('diagnostics are put in reading order: folder, known files in their order, others by name, offsets rising', () => {
  const sorted = sortDiagnostics(
    [
      note('f', 'z.yaml'),
      note('e', 'a.yaml'),
      note('d', 'members/b1.yaml', 4),
      note('c', 'project.yaml', 30),
      note('b', 'project.yaml', 2),
      note('a'),
      note('d2', 'members/b1.yaml', 4),
    ],
    ['project.yaml', 'members/b1.yaml'],
  );
  expect(sorted.map((one) => one.message)).toEqual([
    'a',
    'b',
    'c',
    'd',
    'd2',
    'e',
    'f',
  ]);
});
