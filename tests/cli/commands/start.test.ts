import { describe, expect, test } from 'vitest';
import { readResults, workProject } from '../../../src/index.ts';
import { memoryWorld, type World } from '../../../src/world/index.ts';
import { ran } from '../../support/command-line.ts';

describe('start', () => {
  test.each(['us', 'si'])(
    'writes a project in %s units that is read without a remark',
    async (units) => {
      const world = memoryWorld({});
      const { code, out } = await ran(['start', 'shelter', '--units', units], world);
      expect(code).toBe(0);
      expect(out).toContain('sumzero bind shelter');
      const worked = workProject(world, 'shelter');
      expect(worked.diagnostics).toEqual([]);
      expect(worked.members.map(({ kind }) => kind)).toEqual(['derived', 'derived']);
      expect(worked.project?.definition.units).toBe(units);
    },
  );

  test('every definition names a schema that lies beside it', async () => {
    const world = memoryWorld({});
    await ran(['start', 'shelter'], world);
    const decoder = new TextDecoder();
    const yaml = [...world.files].filter(([path]) => path.endsWith('.yaml'));
    expect(yaml.length).toBe(4);
    for (const [path, bytes] of yaml) {
      const named = /^# yaml-language-server: \$schema=(\S+)\n/.exec(
        decoder.decode(bytes),
      )?.[1];
      const schema = new URL(named ?? '', `file:///${path}`).pathname.slice(1);
      const text = world.files.get(schema);
      expect(text, `${path} → ${schema}`).toBeDefined();
      expect(JSON.parse(decoder.decode(text))).toHaveProperty('properties');
    }
  });

  test('the project solves to figures', async () => {
    const world = memoryWorld({});
    await ran(['start', 'shelter', '--units', 'si'], world);
    const { out } = await ran(['solve', 'shelter', '--json'], world);
    expect(readResults(out).kind).toBe('results');
  });

  test('refuses a folder that is not empty and touches nothing in it', async () => {
    const world = memoryWorld({ 'shelter/notes.txt': 'mine' });
    const { code, err } = await ran(['start', 'shelter'], world);
    expect(code).toBe(1);
    expect(err).toContain('the folder shelter is not empty: it holds notes.txt');
    expect([...world.files.keys()]).toEqual(['shelter/notes.txt']);
  });

  test('refuses a path that is a file, and units that are none', async () => {
    const world = memoryWorld({ shelter: '' });
    expect((await ran(['start', 'shelter'], world)).err).toContain(
      'there is a file of that name',
    );
    expect((await ran(['start', 'shed', '--units', 'uk'], world)).err).toContain(
      'write us',
    );
    expect((await ran(['start'], world)).err).toContain(
      'start needs the folder of a project',
    );
  });

  test('a disk that refuses is told in one sentence', async () => {
    const full: World = {
      ...memoryWorld({}),
      write: () => ({ refused: 'the disk is full' }),
    };
    const { code, err } = await ran(['start', 'shelter'], full);
    expect(code).toBe(1);
    expect(err).toBe(
      'Error: shelter/project.yaml cannot be written: the disk is full\n  → choose another place\n',
    );
  });
});
