import { describe, expect, test } from 'vitest';
import type { Diagnostic } from '../../../src/diagnostics/index.ts';
import { filesOf, gatherFolder } from '../../../src/project/folder/gather.ts';
import { memoryWorld } from '../../../src/world/index.ts';

describe('a folder', () => {
  test('gives its definitions in reading order, and leaves hidden files and folders alone', () => {
    const world = memoryWorld({
      'p/project.yaml': 'a',
      'p/loads.yaml': 'b',
      'p/members/b10.yaml': 'c',
      'p/members/b2.yaml': 'd',
      'p/members/.b3.yaml.swp': 'e',
      'p/members/.b4.yaml': 'f',
      'p/images/a.png': 'g',
      'p/images/old/b.png': 'h',
      'p/report-templates/cover.hbs': 'i',
      'p/sheets/s1.yaml': 'j',
      'p/notes.txt': 'k',
    });
    const found: Diagnostic[] = [];
    const folder = gatherFolder(world, 'p', found);
    expect(folder && filesOf(folder).map((file) => file.path)).toEqual([
      'project.yaml',
      'loads.yaml',
      'members/b2.yaml',
      'members/b10.yaml',
    ]);
    expect(Object.keys(folder?.images ?? {})).toEqual(['images/a.png']);
    expect(folder?.templates).toEqual({ 'cover.hbs': 'i' });
    expect(folder?.sheets).toEqual(['j']);
    expect(found.map((one) => one.code)).toEqual(['not-worked-yet']);
  });

  test('that is given with a slash at its end, or as the present one, is the same folder', () => {
    const files = { 'project.yaml': 'a', 'members/b1.yaml': 'b' };
    const below = Object.fromEntries(
      Object.entries(files).map(([path, text]) => [`p/${path}`, text]),
    );
    expect(gatherFolder(memoryWorld(below), 'p/', [])?.members).toHaveLength(1);
    expect(gatherFolder(memoryWorld(files), '.', [])?.members).toHaveLength(1);
  });
});
