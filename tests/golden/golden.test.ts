import { createHash } from 'node:crypto';
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, test } from 'vitest';
import { describeDrawing } from '../../src/drawing/index.ts';
import {
  bindProject,
  composePackage,
  workProject,
  writePlain,
  type Bound,
} from '../../src/index.ts';
import { layOut } from '../../src/layout/index.ts';
import { checkPdf } from '../../src/pdf/index.ts';
import type { Project } from '../../src/project/index.ts';
import type { Report } from '../../src/report/index.ts';
import { defaultTheme, layOver } from '../../src/theme/index.ts';
import { diskWorld, memoryWorld } from '../../src/world/index.ts';
import { layoutTools } from '../support/layout-tools.ts';
import { testWith } from '../support/other-program.ts';
import {
  differenceFromKept,
  pictureOfPage,
  tolerance,
} from '../support/page-pictures.ts';

const program = { name: 'sumzero', version: '0.0.0' };
const folderOf = (path: string): string =>
  fileURLToPath(new URL(`../../${path}`, import.meta.url));
const world = diskWorld();

/** Telling pages of each demo: an anchor, and how many sheets after it. */
const demos: Readonly<
  Record<string, Readonly<Record<string, readonly [string, number]>>>
> = {
  'quarry-road-depot': {
    cover: ['cover', 0],
    index: ['index', 0],
    'sign conventions': ['basis', 2],
    'member as loaded': ['member-B1', 1],
    'equations of a case': ['member-B1', 3],
    'stations and diagrams': ['member-B1', 5],
    'singularity functions': ['member-B1', 6],
    'combinations and envelope': ['member-B1', 23],
    'three moments': ['member-F1', 6],
    'governing arrangements': ['member-F1', 30],
    'influence lines': ['member-K2', 11],
    'envelope of moving loads': ['member-K2', 13],
    'closure of the project': ['closure', 1],
  },
  'tarn-boathouse': {
    cover: ['cover', 0],
    'released member': ['member-P1', 2],
    'handbook case': ['member-P1', 4],
    'check print': ['check-l1-draught', 0],
    reactions: ['reactions', 0],
  },
};

function composed(folder: string): {
  readonly report: Report;
  readonly project: Project;
} {
  const worked = workProject(world, folder);
  const { report } = composePackage(world, worked, { program });
  if (report === undefined || worked.project === undefined)
    throw new Error('the project cannot be composed');
  return { report, project: worked.project };
}

/** The package as a person would read it, without the echo of the files that lie beside it. */
function proseOf(folder: string): string {
  const { report } = composed(folder);
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

  test('every page of the small project has its marks where they were', async () => {
    const { report, project } = composed(folderOf('tests/golden/one-beam'));
    const { theme, images } = project;
    const document = layOut(report, {
      ...layoutTools,
      theme: layOver(defaultTheme, theme),
      images,
    });
    const pages = document.pages.map(
      ({ drawing }, index) => `sheet ${index + 1}\n${describeDrawing(drawing)}`,
    );
    await expect(`${pages.join('\n\n')}\n`).toMatchFileSnapshot('one-beam/pages.txt');
  });
});

describe.each(Object.entries(demos))('the demo %s', (demo, pictures) => {
  let bound: Bound = { worked: workProject(memoryWorld({}), ''), diagnostics: [] };
  let pdf: Uint8Array = new Uint8Array();
  beforeAll(async () => {
    bound = await bindProject(world, folderOf(`demo-projects/${demo}`), { program });
    pdf = bound.pdf ?? pdf;
  });

  test('has its sheets and its bytes, and lacks nothing that an archive asks of a file', async () => {
    expect(checkPdf(pdf)).toEqual([]);
    const lines = [
      `sheets ${bound.sheetCount ?? 0}`,
      ...Object.entries(bound.sheets ?? {}).map(
        ([anchor, sheet]) => `${anchor} ${sheet}`,
      ),
      `sha256 ${createHash('sha256').update(pdf).digest('hex')}`,
    ];
    await expect(`${lines.join('\n')}\n`).toMatchFileSnapshot(`${demo}.txt`);
  });

  for (const [title, [anchor, after]] of Object.entries(pictures)) {
    testWith('pdftoppm', `looks as it did: ${title}`, () => {
      const sheet = (bound.sheets?.[anchor] ?? 0) + after;
      const picture = pictureOfPage(pdf, sheet);
      const file = folderOf(
        `tests/golden/pictures/${demo}/${title.replaceAll(' ', '-')}.png`,
      );
      expect(differenceFromKept(picture, file)).toBeLessThan(tolerance.ofPixels);
    });
  }
});
