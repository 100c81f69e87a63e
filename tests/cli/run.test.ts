import { describe, expect, test } from 'vitest';
import { memoryWorld } from '../../src/world/index.ts';
import { ran } from '../support/command-line.ts';
import { shed } from '../support/command-line.ts';

describe('the command line as a whole', () => {
  test.each([[[]], [['--help']], [['-h']], [['help']]])(
    '%j shows help',
    async (args) => {
      const { code, out, err } = await ran(args);
      expect([code, err]).toEqual([0, '']);
      expect(out).toContain('sumzero bind shelter');
    },
  );

  test.each([[['bind', '--help']], [['bind', 'shed', '-h']], [['help', 'bind']]])(
    '%j shows help on a command and does nothing',
    async (args) => {
      const world = shed();
      const before = world.files.size;
      const { code, out } = await ran(args, world);
      expect(code).toBe(0);
      expect(out).toContain('--keep-going');
      expect(world.files.size).toBe(before);
    },
  );

  test('--version says the version of package.json and no more', async () => {
    const { code, out } = await ran(['--version']);
    expect(code).toBe(0);
    expect(out).toMatch(/^\d+\.\d+\.\d+\n$/);
  });

  test('an unknown command or option is the user’s mistake; the nearest is suggested', async () => {
    const command = await ran(['bnid', 'shed']);
    expect([command.code, command.out]).toEqual([1, '']);
    expect(command.err).toBe(
      'Error: there is no command bnid\n  → write bind\nsumzero --help shows what can be written.\n',
    );
    const option = await ran(['bind', 'shed', '--wach']);
    expect(option.code).toBe(1);
    expect(option.err).toContain('  → write --watch\nsumzero bind --help shows');
    expect((await ran(['--verion'])).err).toContain('write --version');
    expect((await ran(['help', 'bnid'])).code).toBe(1);
  });

  test('a fault of our own says so, shows where, and exits 2', async () => {
    const broken = {
      ...memoryWorld({}),
      list: (): never => {
        throw new TypeError('a slip of ours');
      },
    };
    const { code, out, err } = await ran(['solve', 'shed'], broken);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain('This is a fault of the program, not of your files.');
    expect(err).toMatch(/TypeError: a slip of ours\n\s+at /);
  });

  test('no stack is ever shown for a mistake of the user’s', async () => {
    for (const args of [
      ['solve', 'nowhere'],
      ['bind', 'nowhere'],
      ['schema', 'x'],
      ['explain', 'x'],
    ]) {
      const { code, err } = await ran(args);
      expect(code).toBe(1);
      expect(err).not.toMatch(/\n\s+at /);
    }
  });
});
