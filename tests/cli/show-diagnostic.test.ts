import { describe, expect, test } from 'vitest';
import { paintFor } from '../../src/cli/paint.ts';
import {
  countDiagnostics,
  showDiagnostics,
  showUsageFault,
  type Showing,
} from '../../src/cli/show-diagnostic.ts';
import { sourceReader } from '../../src/cli/source-reader.ts';
import type { Diagnostic } from '../../src/diagnostics/index.ts';
import { memoryWorld } from '../../src/world/index.ts';

const world = memoryWorld({
  'shed/project.yaml': 'units: metric\n',
  'shed/members/b1.yaml': 'mark: B1\npoints: { A: 0 ft, B: 6 }\n',
});
const showing: Showing = {
  folder: 'shed',
  source: sourceReader(world, 'shed'),
  paint: paintFor(false),
};

const missing: Diagnostic = {
  severity: 'error',
  code: 'unit-missing',
  message: '6 has no unit, and a length is wanted',
  span: { file: 'members/b1.yaml', start: 31, end: 32 },
  hints: ['write 6 ft or 6 in', 'a bare 0 is fine'],
};
const unused = (start: number, file: string = 'members/b1.yaml'): Diagnostic => ({
  severity: 'remark',
  code: 'point-unused',
  message: 'nothing stands at this point',
  span: { file, start, end: start + 1 },
  hints: ['leave it'],
});

describe('showing diagnostics', () => {
  test('an error has its code, its place, its line with a caret, and hints', () => {
    expect(showDiagnostics([missing], showing)).toBe(
      [
        'Error in shed/members/b1.yaml:2:23: 6 has no unit, and a length is wanted  [unit-missing]',
        '',
        '    points: { A: 0 ft, B: 6 }',
        '                          ^',
        '  → write 6 ft or 6 in',
        '  → a bare 0 is fine',
        '',
        '',
      ].join('\n'),
    );
  });

  test('an error without a place is a sentence and hints', () => {
    const error: Diagnostic = {
      severity: 'error',
      code: 'no-members',
      message: 'none',
      hints: [],
    };
    expect(showDiagnostics([error], showing)).toBe('Error: none  [no-members]\n\n');
  });

  test('a file that cannot be shown is named without line and column', () => {
    const span = { file: 'images/logo.bin', start: 0, end: 0 };
    const error: Diagnostic = { ...missing, span, hints: [] };
    expect(showDiagnostics([error], showing)).toBe(
      'Error in shed/images/logo.bin: 6 has no unit, and a length is wanted  [unit-missing]\n\n',
    );
  });

  test('remarks come first and briefly, one line each', () => {
    const shown = showDiagnostics([missing, unused(0)], showing);
    expect(shown.split('\n')[0]).toBe(
      'Remark in shed/members/b1.yaml:1:1: nothing stands at this point  [point-unused]',
    );
    expect(shown).toContain('\n\nError in');
  });

  test('a remark that holds at several places is said once, with a line a file', () => {
    expect(
      showDiagnostics([unused(0), unused(12), unused(2, 'project.yaml')], showing),
    ).toBe(
      [
        'Remark: nothing stands at this point  [point-unused]',
        '    shed/members/b1.yaml, lines 1, 2',
        '    shed/project.yaml, line 1',
        '',
      ].join('\n'),
    );
  });

  test('errors of one file stand in the order of the file', () => {
    const first: Diagnostic = {
      ...missing,
      message: 'first',
      span: { file: 'members/b1.yaml', start: 0, end: 1 },
    };
    const shown = showDiagnostics([missing, first], showing);
    expect(shown.indexOf('first')).toBeLessThan(shown.indexOf('6 has no unit'));
  });

  test('colours mark the words that say how grave it is', () => {
    const shown = showDiagnostics([missing], { ...showing, paint: paintFor(true) });
    expect(shown).toContain('\u001b[31mError in');
  });

  test('nothing in a message can steer the terminal', () => {
    const shown = showDiagnostics([{ ...missing, message: 'no \u001b[2J' }], showing);
    expect(shown).not.toContain('\u001b');
  });

  test('paths of the folder at hand are written without it', () => {
    const here = memoryWorld({ 'members/b1.yaml': 'mark: B1\n' });
    const shown = showDiagnostics([unused(0)], {
      folder: '.',
      source: sourceReader(here, '.'),
      paint: paintFor(false),
    });
    expect(shown).toContain('Remark in members/b1.yaml:1:1:');
  });
});

test('a count names errors and remarks, in the singular where there is one', () => {
  expect(countDiagnostics([missing, missing, unused(0)])).toBe('2 errors, 1 remark');
  expect(countDiagnostics([])).toBe('');
});

test('a fault of the command line is a sentence and hints', () => {
  expect(
    showUsageFault(
      { message: 'there is no command bnd', hints: ['write bind'] },
      paintFor(false),
    ),
  ).toBe('Error: there is no command bnd\n  → write bind\n');
});
