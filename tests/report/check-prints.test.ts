import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { composePackage, workProject, writePlain } from '../../src/index.ts';
import type { Part, Report } from '../../src/report/index.ts';
import { checkPrints } from '../../src/report/check-prints.ts';
import { diskWorld } from '../../src/world/index.ts';

const folder = fileURLToPath(new URL('check-print/', import.meta.url));
const program = { name: 'sumzero', version: '0.0.0' };

/** The package of the small project, its status as given, and what was told on the way. */
function composing(
  status: 'for review' | 'preliminary' | 'issued' | 'void' = 'for review',
  only?: readonly string[],
): ReturnType<typeof composePackage> {
  const worked = workProject(diskWorld(), folder);
  const { project } = worked;
  if (project === undefined) throw new Error('the project cannot be read');
  const definition = {
    ...project.definition,
    status: { ...project.definition.status, value: status },
  };
  return composePackage(
    diskWorld(),
    { ...worked, project: { ...project, definition } },
    { program, ...(only === undefined ? {} : { only }) },
  );
}

function composed(...given: Parameters<typeof composing>): Report {
  const { report } = composing(...given);
  if (report === undefined) throw new Error('the package cannot be composed');
  return report;
}

const isCheck = ({ anchor }: Part): boolean =>
  anchor.startsWith('check-') || anchor === 'comments';

const anchorsOf = ({ parts }: Report): readonly string[] =>
  parts.map(({ anchor }) => anchor);

describe('check prints', () => {
  test('read as they did, line for line', async () => {
    const report = composed();
    const text = writePlain({ ...report, parts: report.parts.filter(isCheck) });
    await expect(text).toMatchFileSnapshot('check-print/prose.txt');
  });

  test('stand after the member sheets, a part a worked file, the register last', () => {
    const anchors = anchorsOf(composed());
    const first = anchors.indexOf('member-S2') + 1;
    expect(anchors.slice(first, first + 5)).toEqual([
      'check-arm-from-the-far-end',
      'check-reworked',
      'check-stranger',
      'comments',
      'reactions',
    ]);
  });

  test('are bound while the package is preliminary or for review and in no other', () => {
    expect(anchorsOf(composed('preliminary'))).toContain('comments');
    for (const status of ['issued', 'void'] as const)
      expect(composed(status).parts.filter(isCheck)).toEqual([]);
  });

  test('of an issued package are a document of their own, and it is told where they are', () => {
    const { checkPrints, diagnostics } = composing('issued');
    expect(checkPrints?.parts.map(({ anchor }) => anchor)).toEqual([
      'check-prints',
      'check-arm-from-the-far-end',
      'check-reworked',
      'check-stranger',
      'comments',
    ]);
    const first = writePlain(checkPrints?.parts[0]?.blocks ?? []);
    expect(first).toContain('B, 2031-04-04');
    expect(first).toMatch(/members\/s2\.yaml +[0-9a-f]{60}/);
    expect(diagnostics[0]).toMatchObject({
      severity: 'remark',
      code: 'worked-left-out',
      message:
        'the package is issued: the check prints of 3 files are no part of it, and bound on their own',
    });
    expect(composing('preliminary').checkPrints).toBeUndefined();
  });

  test('that could not be marked are remarked on, with the place', () => {
    expect(composing('preliminary').diagnostics).toMatchObject([
      {
        severity: 'remark',
        message: expect.stringMatching(/^the steps are not marked: /),
        span: { file: 'worked/stranger.yaml' },
      },
    ]);
  });

  test('are those of the members asked for', () => {
    expect(anchorsOf(composed('for review', ['S2']))).toContain('check-reworked');
    expect(anchorsOf(composed('for review', ['S2']))).not.toContain('check-stranger');
  });

  test('name at their foot who worked the steps and leave the checker open', () => {
    const [first, , stranger, register] = composed().parts.filter(isCheck);
    expect(first?.foot).toMatchObject({ prepared: 'JR 2031-03-10', checked: '' });
    expect(stranger?.foot).toMatchObject({ prepared: '', checked: '' });
    expect(register?.foot).toMatchObject({ prepared: '', checked: '' });
  });

  test('are in the index and their open comments are on the cover', () => {
    const { parts } = composed();
    const [cover, index] = parts;
    expect(writePlain(cover?.blocks ?? [])).toContain(
      '3 not closed: 1 open, 1 answered and 1 reworked',
    );
    expect(writePlain(cover?.blocks ?? [])).toContain('one sheet not marked');
    expect(writePlain(index?.blocks ?? [])).toContain('Check print of reworked');
  });
});

test('a project without worked files has no marks and no row on its cover', () => {
  const worked = workProject(diskWorld(), folder);
  if (worked.project === undefined) throw new Error('the project cannot be read');
  const project = { ...worked.project, worked: [] };
  expect(checkPrints(project, worked.members)).toEqual([]);
  const { report } = composePackage(diskWorld(), { ...worked, project }, { program });
  expect(writePlain(report?.parts[0]?.blocks ?? [])).not.toContain('Comments');
  expect(report?.parts.filter(isCheck)).toEqual([]);
});
