import { describe, expect, test } from 'vitest';
import { beamYaml, readFolder } from '../../support/folder.ts';

const read = (logo: string, bytes: readonly number[]): ReturnType<typeof readFolder> =>
  readFolder({
    'project.yaml': `project: { title: Weir, logo: ${logo} }\nunits: us\n`,
    'members/b1.yaml': beamYaml(),
    'images/office.png': new Uint8Array(bytes),
  });
const png = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0];
const jpeg = [0xff, 0xd8, 0xff, 0xe0];

describe('the logo', () => {
  test('is a PNG or a JPEG, whatever its name ends in', () => {
    expect(read('images/office.png', png).value?.definition.logo).toBe(
      'images/office.png',
    );
    expect(read('./images/office.png', jpeg).value?.definition.logo).toBe(
      'images/office.png',
    );
  });

  test.each([
    ['images/office.png', [0x47, 0x49, 0x46], 'not-a-picture'],
    ['images/office.png', [0x89, 0x50], 'not-a-picture'],
    ['images/ofice.png', png, 'file-missing'],
    ['../office.png', png, 'path-outside-folder'],
    ['/images/office.png', png, 'path-outside-folder'],
  ])('%s with the bytes %j is refused', (logo, bytes, code) => {
    const { value, diagnostics } = read(logo, bytes);
    expect(value).toBeUndefined();
    expect(
      diagnostics.filter((one) => one.severity === 'error').map((one) => one.code),
    ).toEqual([code]);
  });
});
