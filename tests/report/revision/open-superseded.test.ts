import { describe, expect, test } from 'vitest';
import { workProject } from '../../../src/index.ts';
import {
  openSuperseded,
  placeOf,
  type SupersededOutcome,
} from '../../../src/report/revision/open-superseded.ts';
import { digest, memoryWorld } from '../../../src/world/index.ts';
import {
  bagOf,
  inFolder,
  laterFiles,
  stageFiles,
  type Stage,
} from '../../support/revised.ts';

async function opening(
  kept: Readonly<Record<string, Uint8Array>>,
  stage: Stage = {},
): Promise<SupersededOutcome> {
  const world = memoryWorld({ ...inFolder('p/now', laterFiles(stage)), ...kept });
  const { project } = workProject(world, 'p/now');
  if (project === undefined) throw new Error('the project cannot be read');
  return openSuperseded(world, project, workProject);
}

describe('the bag of the package that is superseded', () => {
  test('is worked again, and told by its path and checksum', async () => {
    const bag = await bagOf(stageFiles());
    const { superseded, diagnostics } = await opening({ 'p/kept/B.zip': bag });
    expect(diagnostics).toEqual([]);
    expect(superseded).toMatchObject({
      bag: '../kept/B.zip',
      sha256: digest(bag),
      worked: { project: { definition: { title: 'Lower Weir Stage' } } },
    });
  });

  test('is asked for by nobody that names none', async () => {
    expect(await opening({}, { more: '' })).toEqual({ diagnostics: [] });
  });

  test('that is not there is an error with its place, and how to mend it', async () => {
    const { superseded, diagnostics } = await opening({});
    expect(diagnostics).toMatchObject([
      {
        severity: 'error',
        code: 'changes-unknown',
        message: expect.stringContaining('../kept/B.zip') as string,
        span: { file: 'project.yaml' },
      },
    ]);
    expect(diagnostics[0]?.hints).toHaveLength(1);
    expect(superseded).toMatchObject({
      why: expect.stringContaining('there is no such file') as string,
    });
  });

  test('stops nothing while the package is preliminary', async () => {
    const { diagnostics } = await opening({}, { status: 'preliminary' });
    expect(diagnostics).toMatchObject([
      { severity: 'remark', code: 'changes-unknown' },
    ]);
  });

  test('is not taken where a byte of it differs', async () => {
    const bag = await bagOf(stageFiles());
    const at = new TextDecoder('latin1').decode(bag).indexOf('8.4 kip');
    const { diagnostics } = await opening({ 'p/kept/B.zip': bag.with(at, 0x39) });
    expect(diagnostics).toMatchObject([{ severity: 'error', code: 'changes-unknown' }]);
  });

  test('is not taken where it holds another package', async () => {
    const other = stageFiles({ revisions: ['{ mark: A, date: 2031-02-01 }'] });
    const { diagnostics } = await opening({ 'p/kept/B.zip': await bagOf(other) });
    expect(diagnostics[0]?.message).toContain(
      'the bag holds package 2031-077 revision A, not package 2031-077 revision B',
    );
  });

  test('is not taken where its project cannot be read', async () => {
    const bag = await bagOf({ 'project.yaml': 'project: {}\nunits: us\n' });
    const { diagnostics } = await opening({ 'p/kept/B.zip': bag });
    expect(diagnostics).toMatchObject([{ code: 'changes-unknown' }]);
  });
});

test('a path counts from the project folder on', () => {
  expect(placeOf('p/now', '../kept/B.zip')).toBe('p/kept/B.zip');
  expect(placeOf('p/now', './issued/B.zip')).toBe('p/now/issued/B.zip');
  expect(placeOf('.', 'B.zip')).toBe('B.zip');
  expect(placeOf('../p', '../B.zip')).toBe('../B.zip');
  expect(placeOf('/p/now', '../B.zip')).toBe('/p/B.zip');
  expect(placeOf('p', '/kept/B.zip')).toBe('/kept/B.zip');
  expect(placeOf('p', 'C:\\kept\\B.zip')).toBe('C:\\kept\\B.zip');
});
