import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, test } from 'vitest';
import {
  archiveProject,
  bindProject,
  composePackage,
  keepBag,
  verify,
  workProject,
  writePlain,
  type Bound,
} from '../../../src/index.ts';
import { checkPdf } from '../../../src/pdf/index.ts';
import { openSuperseded } from '../../../src/report/index.ts';
import { memoryWorld, type MemoryWorld } from '../../../src/world/index.ts';
import { testWith } from '../../support/other-program.ts';
import {
  differenceFromKept,
  pictureOfPage,
  tolerance,
} from '../../support/page-pictures.ts';

const program = { name: 'sumzero', version: '0.0.0' };

/** A ferry landing as first issued and a revision later: a heavier winch, one strut less, one rail more. */
const landing = (isRevised: boolean): Readonly<Record<string, string>> => ({
  'landing/project.yaml': `project:
  number: "2031-203"
  title: Gull Point Landing
  office: Harrow Reach Structural
  status: ${isRevised ? 'for review' : 'issued'}
${isRevised ? '  supersedes: { number: "2031-203", revision: "0", bag: issued/2031-203-0.zip }\n' : ''}people:
  prepared: { name: I. Sorrel, initials: IS, date: ${isRevised ? '2031-11-03' : '2031-09-01'} }
  checked: { name: M. Quist, initials: MQ, date: 2031-09-03 }
revisions:
  - { mark: "0", date: 2031-09-04, note: First issue, reason: Permit, prepared: IS, checked: MQ, sheets: all }
${isRevised ? '  - { mark: A, date: 2031-11-05, note: Heavier winch, reason: "The owner bought another", prepared: IS, checked: MQ, sheets: "W1, G1" }\n' : ''}units: si
criteria:
  deflection_limits: { Q: L/300 }
assumptions:
  - { id: A1, text: The winch pulls at no more than ${isRevised ? '18' : '14'} kN., basis: maker's plate, confirmed: true }
`,
  'landing/loads.yaml': `cases:
  G: { title: Dead, kind: dead }
  Q: { title: Winch and people, kind: live }
combinations: [ en1990-uls ]
`,
  'landing/members/w1.yaml': `mark: W1
title: Winch beam
kind: beam
points: { A: 0 m, B: 1.2 m, C: 3 m }
supports: { A: pin, C: roller }
loads:
  - { case: G, uniform: 0.8 kN/m }
  - { case: Q, point: ${isRevised ? '18 kN' : '14 kN'}, at: B, note: Winch, uses: A1 }
${isRevised ? '' : '  - { case: Q, point: 1 kN, at: 2 m, note: Davit }\n'}section: { I: 36.9e6 mm^4 }
material: { E: 210 GPa }
`,
  'landing/members/g1.yaml': `mark: G1
title: Girder under the winch beam
kind: beam
points: { A: 0 m, B: 2 m, C: 5 m }
supports: { A: pin, C: roller }
loads:
  - { case: G, uniform: 1.1 kN/m }
  - { reaction: W1.C, at: B }
section: { I: 83.6e6 mm^4 }
material: { E: 210 GPa }
`,
  'landing/members/r1.yaml': `mark: R1
title: Hand rail
kind: beam
points: { A: 0 m, B: 1.5 m }
supports: { A: pin, B: roller }
loads: [ { case: Q, uniform: 0.74 kN/m } ]
`,
});

/** Telling pages: an anchor, and how many sheets after it. */
const pictures: Readonly<Record<string, readonly [string, number]>> = {
  cover: ['cover', 0],
  'revision sheet': ['revision', 0],
  'changed member': ['member-W1', 0],
  'member that nothing reaches': ['member-R1', 0],
};

describe('a package that was issued and revised', () => {
  let world: MemoryWorld = memoryWorld({});
  let bound: Bound = { worked: workProject(memoryWorld({}), ''), diagnostics: [] };
  beforeAll(async () => {
    const before = memoryWorld(landing(false));
    const archived = await archiveProject(before, 'landing', { program });
    if (archived.value === undefined)
      throw new Error(JSON.stringify(archived.diagnostics));
    keepBag(before, archived.value.path, archived.value.bytes);
    world = memoryWorld({ ...Object.fromEntries(before.files), ...landing(true) });
    bound = await bindProject(world, 'landing', { program });
  });

  test('is proved by its bag, which the revision leaves as it is', async () => {
    const found = await verify(world, 'landing/issued/2031-203-0.zip', program);
    expect(found).toMatchObject({ verdict: 'intact', damage: [], differences: [] });
  });

  test('tells what changed, and lacks nothing that an archive asks of a file', async () => {
    expect(checkPdf(bound.pdf ?? new Uint8Array())).toEqual([]);
    const { project } = bound.worked;
    if (project === undefined) throw new Error('the project cannot be read');
    const { superseded } = await openSuperseded(world, project, workProject);
    const { report } = composePackage(world, bound.worked, {
      program,
      ...(superseded === undefined ? {} : { superseded }),
    });
    if (report === undefined) throw new Error('the project cannot be composed');
    const parts = report.parts.filter(({ anchor }) => anchor === 'revision');
    await expect(writePlain({ ...report, parts })).toMatchFileSnapshot('revision.txt');
  });

  for (const [title, [anchor, after]] of Object.entries(pictures)) {
    testWith('pdftoppm', `looks as it did: ${title}`, () => {
      const sheet = (bound.sheets?.[anchor] ?? 0) + after;
      const picture = pictureOfPage(bound.pdf ?? new Uint8Array(), sheet);
      const file = fileURLToPath(
        new URL(
          `../pictures/revised/${title.replaceAll(' ', '-')}.png`,
          import.meta.url,
        ),
      );
      expect(differenceFromKept(picture, file)).toBeLessThan(tolerance.ofPixels);
    });
  }
});
