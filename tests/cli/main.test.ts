import { spawn, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';

// The program as it is installed: `npm test` builds it before.
const main = fileURLToPath(new URL('../../dist/cli/main.js', import.meta.url));

function sumzero(
  args: readonly string[],
  environment: Readonly<Record<string, string>> = {},
): { readonly code: number | null; readonly out: string; readonly err: string } {
  const { PATH } = process.env;
  const { status, stdout, stderr } = spawnSync(process.execPath, [main, ...args], {
    encoding: 'utf8',
    env: { PATH, ...environment },
  });
  return { code: status, out: stdout, err: stderr };
}

describe('the program as a process', () => {
  test('exits with the code of the run and keeps the two streams apart', () => {
    const good = sumzero(['--version']);
    expect([good.code, good.err]).toEqual([0, '']);
    const mistake = sumzero(['bnd']);
    expect([mistake.code, mistake.out]).toEqual([1, '']);
  });

  test('colours nothing in a pipe unless the environment asks for it', () => {
    expect(sumzero(['explain', 'bad-name']).out).not.toContain('\u001b');
    expect(sumzero(['explain', 'bad-name'], { FORCE_COLOR: '1' }).out).toContain(
      '\u001b[',
    );
    expect(sumzero(['explain', 'bad-name'], { FORCE_COLOR: '0' }).out).not.toContain(
      '\u001b',
    );
    expect(sumzero(['explain', 'bad-name'], { NO_COLOR: '1' }).out).not.toContain(
      '\u001b',
    );
  });

  test('starts, then solves, a project on the disk', () => {
    const folder = mkdtempSync(join(tmpdir(), 'started-'));
    try {
      expect(sumzero(['start', join(folder, 'shelter')]).code).toBe(0);
      const { code, out } = sumzero(['solve', join(folder, 'shelter'), 'B1', '--json']);
      expect(code).toBe(0);
      expect(JSON.parse(out)).toHaveProperty('members.0.mark', 'B1');
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  }, 60_000);

  test('is not troubled by a reader that has seen enough', async () => {
    const child = spawn(process.execPath, [main, 'schema', 'beam'], {
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    const errors: string[] = [];
    child.stderr.on('data', (chunk: Buffer) => errors.push(chunk.toString()));
    child.stdout.destroy();
    const code = await new Promise((then) => {
      child.on('close', then);
    });
    expect([code, errors.join('')]).toEqual([0, '']);
  }, 60_000);
});
