import { createHash } from 'node:crypto';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import {
  bindProject,
  composePackage,
  workProject,
  writePlain,
} from '../../src/index.ts';
import { checkPdf } from '../../src/pdf/index.ts';
import { diskWorld } from '../../src/world/index.ts';

const program = { name: 'sumzero', version: '0.0.0' };
const folderOf = (path: string): string =>
  fileURLToPath(new URL(`../../${path}`, import.meta.url));
const world = diskWorld();

/** The package as a person would read it, without the echo of the files that lie beside it. */
function proseOf(folder: string): string {
  const { report } = composePackage(world, workProject(world, folder), { program });
  if (report === undefined) throw new Error('the project cannot be composed');
  return writePlain({
    ...report,
    parts: report.parts.filter(({ anchor }) => anchor !== 'echo'),
  });
}

describe('goldens', () => {
  test('the small project reads as it did, line for line, and its numbers are the same', async () => {
    const folder = folderOf('tests/golden/one-beam');
    await expect(proseOf(folder)).toMatchFileSnapshot('one-beam/prose.txt');
    const worked = workProject(world, folder);
    const { resultsOf } = await import('../../src/index.ts');
    await expect(`${resultsOf(worked, { stations: 5 })}\n`).toMatchFileSnapshot(
      'one-beam/results.json.txt',
    );
  });

  test.each(['quarry-road-depot', 'tarn-boathouse'])(
    'the demo %s has its sheets and its bytes, and lacks nothing that an archive asks of a file',
    async (demo) => {
      const bound = await bindProject(world, folderOf(`demo-projects/${demo}`), {
        program,
      });
      expect(checkPdf(bound.pdf ?? new Uint8Array())).toEqual([]);
      const sha256 = createHash('sha256')
        .update(bound.pdf ?? new Uint8Array())
        .digest('hex');
      const lines = [
        `sheets ${bound.sheetCount ?? 0}`,
        ...Object.entries(bound.sheets ?? {}).map(
          ([anchor, sheet]) => `${anchor} ${sheet}`,
        ),
        `sha256 ${sha256}`,
      ];
      await expect(`${lines.join('\n')}\n`).toMatchFileSnapshot(`${demo}.txt`);
    },
  );
});
