import { describe, expect, test } from 'vitest';
import { commands } from '../../src/cli/commands.ts';
import { helpOn, helpOnAll } from '../../src/cli/help.ts';
import { paintFor } from '../../src/cli/paint.ts';

const plain = paintFor(false);
const pages = [
  helpOnAll(commands, { name: 'sumzero', version: '1.2.3' }, plain),
  ...commands.map((command) => helpOn(command, plain)),
];

describe('help', () => {
  test('names every command with an example of each', () => {
    const [all = ''] = pages;
    for (const { name, summary, examples } of commands) {
      expect(all).toContain(`  ${name} `);
      expect(all).toContain(summary);
      expect(all).toContain(examples[0]?.line);
    }
  });

  test.each(commands.map((command) => [command.name, command] as const))(
    'on %s names every option and shows examples that begin with it',
    (name, command) => {
      const page = helpOn(command, plain);
      for (const option of Object.keys(command.options))
        expect(page).toContain(`--${option}`);
      expect(command.examples.length).toBeGreaterThan(0);
      for (const { line } of command.examples)
        expect(line.startsWith(`sumzero ${name}`)).toBe(true);
    },
  );

  test('fits into 80 columns', () => {
    expect(
      pages.flatMap((page) => page.split('\n')).filter((line) => line.length > 80),
    ).toEqual([]);
  });
});
