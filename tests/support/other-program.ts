import { spawnSync } from 'node:child_process';
import { test } from 'vitest';

/**
 * A test with a program that is not part of the package; where it is not installed the log says
 * what was not tested, and the test is skipped.
 */
export function testWith(
  program: string,
  title: string,
  body: () => void | Promise<void>,
): void {
  test(title, async ({ skip }) => {
    const isInstalled = spawnSync('which', [program]).status === 0;
    if (!isInstalled)
      console.log(`${program} is not installed: “${title}” was not tested`);
    skip(!isInstalled);
    await body();
  });
}
