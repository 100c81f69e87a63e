import { describe, expect, test } from 'vitest';
import {
  checkPrintsBeside,
  outputProblem,
  writeOutputs,
} from '../../src/cli/output-files.ts';
import { memoryWorld, type World } from '../../src/world/index.ts';

const world = memoryWorld({ 'shed/project.yaml': '', 'issue/old.pdf': '' });
const problem = (pdf: string, json: string = 'shed/results.json'): string | undefined =>
  outputProblem(world, 'shed', { pdf, json })?.message;

describe('where a package may go', () => {
  test('into any folder that is there, also over a file', () => {
    expect(problem('shed/package.pdf')).toBeUndefined();
    expect(problem('issue/old.pdf')).toBeUndefined();
    expect(problem('A.pdf')).toBeUndefined();
  });

  test('not into a folder that is missing', () => {
    expect(problem('nowhere/A.pdf')).toBe(
      'A.pdf cannot be written to nowhere: there is no folder nowhere',
    );
  });

  test('not where a folder stands', () => {
    expect(problem('issue')).toBe(
      'issue cannot be written to .: there is a folder of that name',
    );
  });

  test('not over a definition or a template', () => {
    expect(problem('shed/project.yaml')).toContain('is never overwritten');
    expect(problem('issue/A.pdf', 'shed/cover.HBS')).toContain('is never overwritten');
  });

  test('not over its own figures', () => {
    expect(problem('shed/x', './shed/x')).toContain('cannot have one name');
  });

  test('a project folder that is missing is left to the reader, who says it better', () => {
    const paths = { pdf: 'nowhere/package.pdf', json: 'nowhere/results.json' };
    expect(outputProblem(world, 'nowhere', paths)).toBeUndefined();
  });
});

describe('writing a package', () => {
  const paths = { pdf: 'shed/package.pdf', json: 'shed/results.json' };
  const bytes = { pdf: new Uint8Array([1]), json: '{}' };
  const refusing = (name: string): World => ({
    ...memoryWorld({}),
    write: (path) =>
      path.endsWith(name) ? { refused: 'the disk is full' } : { written: true },
  });

  test('writes both files', () => {
    const into = memoryWorld({});
    expect(writeOutputs(into, paths, bytes)).toEqual({
      failed: [],
      isHalfWritten: false,
    });
    expect([...into.files.keys()]).toEqual(['shed/package.pdf', 'shed/results.json']);
  });

  test('a package that is refused leaves the figures as they were', () => {
    const { failed, isHalfWritten } = writeOutputs(refusing('.pdf'), paths, bytes);
    expect(failed.map(({ code, message }) => [code, message])).toEqual([
      ['write-failed', 'package.pdf cannot be written to shed: the disk is full'],
    ]);
    expect(isHalfWritten).toBe(false);
  });

  test('figures that are refused after the package are told apart', () => {
    const { failed, isHalfWritten } = writeOutputs(refusing('.json'), paths, bytes);
    expect(failed[0]?.message).toBe(
      'results.json cannot be written to shed: the disk is full',
    );
    expect(failed[0]?.hints[0]).toContain('--json FILE');
    expect(isHalfWritten).toBe(true);
  });
});

test('check prints go beside the package, and by its name where it has one of its own', () => {
  expect(checkPrintsBeside('shed/package.pdf')).toBe('shed/check-prints.pdf');
  expect(checkPrintsBeside('issue/A.pdf')).toBe('issue/A.check-prints.pdf');
  const empty = memoryWorld({});
  const paths = { pdf: 'shed/package.pdf', json: 'shed/results.json' };
  const one = new Uint8Array([1]);
  writeOutputs(empty, paths, { pdf: one, json: '{}', checkPrints: one });
  expect([...empty.files.keys()]).toContain('shed/check-prints.pdf');
});
