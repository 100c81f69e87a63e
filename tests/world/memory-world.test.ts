import { describe, expect, test } from 'vitest';
import { memoryWorld } from '../../src/world/index.ts';

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
const world = (): ReturnType<typeof memoryWorld> =>
  memoryWorld({
    'p/project.yaml': 'units: us',
    'p/members/b1.yaml': 'mark: B1',
    'p/members/b2.yaml': '',
  });

describe('a world in memory', () => {
  test('gives the bytes of a file, whatever way its path is spelt', () => {
    expect(world().read('./p//project.yaml')).toEqual({ bytes: bytes('units: us') });
    expect(world().sizeOf('p/project.yaml')).toBe(9);
  });

  test('says that a file is missing, and that a folder is none', () => {
    expect(world().read('p/loads.yaml')).toEqual({ missing: true });
    expect(world().read('p/members')).toEqual({ refused: 'it is a folder' });
    expect(world().sizeOf('p/members')).toBeUndefined();
  });

  test('lists files and folders by code unit, folders with a slash', () => {
    expect(world().list('p')).toEqual(['members/', 'project.yaml']);
    expect(world().list('p/')).toEqual(['members/', 'project.yaml']);
    expect(world().list('p/members')).toEqual(['b1.yaml', 'b2.yaml']);
    expect(world().list('.')).toEqual(['p/']);
    expect(world().list('q')).toBeUndefined();
  });

  test('keeps what is written', () => {
    const into = world();
    expect(into.write('p/results.json', bytes('{}'))).toEqual({ written: true });
    expect(into.read('p/results.json')).toEqual({ bytes: bytes('{}') });
    expect([...into.files.keys()]).toContain('p/results.json');
  });

  test('makes folders, and refuses to write over one or to make one over a file', () => {
    const into = world();
    expect(into.makeFolder('q/images')).toEqual({ written: true });
    expect(into.list('q')).toEqual(['images/']);
    expect(into.list('q/images')).toEqual([]);
    expect(into.write('q', bytes(''))).toEqual({
      refused: 'there is a folder of that name',
    });
    expect(into.makeFolder('p/project.yaml')).toEqual({
      refused: 'there is a file of that name',
    });
  });

  test('writes a new file, and refuses one over a file or a folder', () => {
    const into = world();
    expect(into.writeNew('p/issued.zip', bytes('x'))).toEqual({ written: true });
    expect(into.writeNew('p/issued.zip', bytes('y'))).toEqual({
      refused: 'there is a file of that name',
    });
    expect(into.read('p/issued.zip')).toEqual({ bytes: bytes('x') });
    expect(into.writeNew('p/members', bytes('y'))).toEqual({
      refused: 'there is a folder of that name',
    });
  });
});
