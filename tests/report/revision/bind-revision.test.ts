import { describe, expect, test } from 'vitest';
import { bindProject, type Bound } from '../../../src/index.ts';
import { checkPdf } from '../../../src/pdf/index.ts';
import { memoryWorld } from '../../../src/world/index.ts';
import { bagOf, inFolder, laterFiles, stageFiles } from '../../support/revised.ts';

const program = { name: 'sumzero', version: '0.0.0' };
const worked =
  'member: S2\nloads: all\nsteps:\n  - { sum: forces up, so: "RA = 6 kip" }\n';

async function binding(
  kept: Readonly<Record<string, Uint8Array>>,
  more: Partial<Parameters<typeof bindProject>[2]> = {},
): Promise<Bound> {
  const files = { ...laterFiles(), 'worked/s2.yaml': worked };
  const world = memoryWorld({ ...inFolder('p/now', files), ...kept });
  return bindProject(world, 'p/now', { program, ...more });
}

describe('binding a revision of an issued package', () => {
  test('gives equal bytes for equal folders, a sound PDF, and sound check prints beside it', async () => {
    const kept = { 'p/kept/B.zip': await bagOf(stageFiles()) };
    const [one, other] = [await binding(kept), await binding(kept)];
    expect(one.diagnostics.map(({ code }) => code)).toEqual([
      'worked-left-out',
      'date-left-over',
    ]);
    expect(one.pdf).toEqual(other.pdf);
    expect(one.checkPrints).toEqual(other.checkPrints);
    expect(one.sheets?.revision).toBe(3);
    expect(checkPdf(one.pdf ?? new Uint8Array())).toEqual([]);
    expect(checkPdf(one.checkPrints ?? new Uint8Array())).toEqual([]);
    // The bag is read, and no file of the project: it does not travel in the PDF.
    expect(one.sources?.some(({ path }) => path.endsWith('.zip'))).toBe(false);
  }, 120_000);

  test('stops where its changes cannot be told, unless others are to be bound all the same', async () => {
    const stopped = await binding({});
    expect(stopped.pdf).toBeUndefined();
    expect(stopped.diagnostics).toMatchObject([
      { severity: 'error', code: 'changes-unknown', span: { file: 'project.yaml' } },
    ]);
    const bound = await binding({}, { keepGoing: true });
    expect(bound.pdf).toBeDefined();
    expect(bound.sheets?.revision).toBe(3);
    expect(bound.diagnostics).toMatchObject([
      { code: 'changes-unknown' },
      { code: 'worked-left-out' },
      { code: 'date-left-over' },
    ]);
  }, 120_000);
});
