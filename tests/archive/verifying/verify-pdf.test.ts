import { beforeAll, describe, expect, test } from 'vitest';
import { verify, type Verification } from '../../../src/archive/index.ts';
import { bindProject, type BindOptions } from '../../../src/index.ts';
import { memoryWorld } from '../../../src/world/index.ts';
import { program, sluiceFiles } from '../../support/archived-sluice.ts';

const second = sluiceFiles['members/b1.yaml']!.replace('B1', 'B2');

/** Binds the sluice house with a second beam. */
async function bound(options: Partial<BindOptions> = {}): Promise<Uint8Array> {
  const files = { ...sluiceFiles, 'members/b2.yaml': second };
  const placed = Object.entries(files).map(
    ([path, text]) => [`p/${path}`, text] as const,
  );
  const { pdf } = await bindProject(memoryWorld(Object.fromEntries(placed)), 'p', {
    program,
    ...options,
  });
  if (pdf === undefined) throw new Error('nothing bound');
  return pdf;
}

async function verified(pdf: Uint8Array): Promise<Verification> {
  return await verify(memoryWorld({ 'a.pdf': pdf }), 'a.pdf', program);
}

let pdf: Uint8Array;
beforeAll(async () => {
  pdf = await bound();
});

describe('verifying a PDF alone', () => {
  test('finds it intact, works it again, and says what it cannot prove', async () => {
    const found = await verified(pdf);
    expect(found).toMatchObject({
      kind: 'pdf',
      verdict: 'intact',
      identity: {
        number: '2031-207',
        title: 'Sluice house',
        revision: 'A',
        status: 'issued',
      },
      versions: { issued: '0.1.0', present: '0.1.0' },
      damage: [],
      differences: [],
    });
    expect(found.compared?.figures).toBeGreaterThan(200);
    expect(found.remarks).toEqual([
      expect.stringMatching(/^a PDF alone has no digest of its pages/u),
    ]);
  });

  test('one of some members alone, or with stations, is held against the same', async () => {
    const some = await verified(await bound({ only: ['B2'], stations: 4 }));
    expect([some.verdict, some.differences]).toEqual(['intact', []]);
    expect(some.remarks).toContain('it holds 1 of the 2 members of its project');
  });

  test('something added at its end, as by signing, leaves it readable', async () => {
    const added = Uint8Array.from([
      ...pdf,
      ...new TextEncoder().encode('\n% signed\n'),
    ]);
    expect((await verified(added)).verdict).toBe('intact');
  });

  test('finds nearly every byte that is changed within its objects', async () => {
    let missed = 0;
    const tries = 30;
    for (let index = 0; index < tries; index += 1) {
      const at = 1000 + Math.floor(((pdf.length - 3000) * index) / tries);
      const changed = Uint8Array.from(pdf);
      changed[at] = changed[at]! ^ 0x10;
      if ((await verified(changed)).verdict === 'intact') missed += 1;
    }
    // Metadata, dictionaries and pictures stand there plainly, without a sum.
    expect(missed).toBeLessThan(tries / 10);
  }, 120_000);

  test('cut short it is refused', async () => {
    expect(await verified(pdf.subarray(0, -2000))).toMatchObject({
      verdict: 'unreadable',
      damage: [{ message: expect.stringContaining('no sound PDF') as string }],
    });
  });
});
