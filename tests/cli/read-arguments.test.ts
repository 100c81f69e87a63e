import { describe, expect, test } from 'vitest';
import { readArguments, type Given } from '../../src/cli/read-arguments.ts';

const options = {
  output: { type: 'string', short: 'o', value: 'FILE', about: '' },
  only: { type: 'string', multiple: true, value: 'MARK…', about: '' },
  watch: { type: 'boolean', about: '' },
} as const;

function given(...args: readonly string[]): Given {
  const read = readArguments(args, options);
  if ('fault' in read) throw new Error(read.fault.message);
  return read.given;
}

function fault(...args: readonly string[]): readonly string[] {
  const read = readArguments(args, options);
  return 'fault' in read ? [read.fault.message, ...read.fault.hints] : [];
}

describe('reading the arguments of a command', () => {
  test('tells options from what stands alone, in any order', () => {
    const read = given('--watch', 'shed', '-o', 'a.pdf', '--only', 'B1', '--only=B2');
    expect(read.positionals).toEqual(['shed']);
    expect(read.has('watch')).toBe(true);
    expect(read.has('only')).toBe(true);
    expect(read.value('output')).toBe('a.pdf');
    expect(read.all('only')).toEqual(['B1', 'B2']);
  });

  test('takes what follows two dashes as it stands', () => {
    expect(given('--', '--watch').positionals).toEqual(['--watch']);
  });

  test('knows nothing of options that were not given', () => {
    const read = given('shed');
    expect([read.has('watch'), read.value('output'), read.all('only')]).toEqual([
      false,
      undefined,
      [],
    ]);
  });

  test('suggests the nearest option', () => {
    expect(fault('--onyl', 'B1')).toEqual([
      'there is no option --onyl',
      'write --only',
    ]);
    expect(fault('--toString')[0]).toBe('there is no option --toString');
  });

  test('misses a value, also where another option follows', () => {
    expect(fault('-o')).toEqual(['-o needs a value', 'write -o FILE']);
    expect(fault('--output', '--watch')).toEqual([
      '--output needs a value',
      'write --output FILE',
    ]);
    expect(fault('--output=')).toEqual([
      '--output needs a value',
      'write --output FILE',
    ]);
  });

  test('refuses a value where none belongs', () => {
    expect(fault('--watch=yes')).toEqual([
      '--watch takes no value',
      'write --watch alone',
    ]);
  });
});
