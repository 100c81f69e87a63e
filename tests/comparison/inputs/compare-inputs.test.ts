import { describe, expect, test } from 'vitest';
import { compareInputs } from '../../../src/comparison/inputs/compare-inputs.ts';
import type { Project } from '../../../src/project/index.ts';
import { readFolder } from '../../support/folder.ts';
import { plainBeam } from '../../support/worked-side.ts';

type Folder = Readonly<Record<string, string | Uint8Array>>;

const b1 = plainBeam('B1', '{ case: L, point: 8 kip, at: 6 ft }');

function projectIn(files: Folder): Project {
  const { value } = readFolder({ 'members/b1.yaml': b1, ...files });
  if (value === undefined) throw new Error('the folder cannot be read');
  return value;
}

/** Changes from one folder to another, a line each. */
function told(before: Folder, after: Folder): readonly string[] {
  return compareInputs(projectIn(before), projectIn(after)).map(
    ({ kind, part, what, from, to }) =>
      [kind, part, what, from, to].filter((one) => one !== undefined).join(' | '),
  );
}

/** The head of a PNG, told apart by one byte. */
const png = (byte: number): Uint8Array =>
  new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, byte]);

describe('compareInputs tells of what lies beside the members', () => {
  test('pictures by name, renamed ones too', () => {
    expect(
      told(
        { 'images/a.png': png(1), 'images/b.png': png(2), 'images/c.png': png(3) },
        { 'images/a.png': png(4), 'images/d.png': png(2), 'images/e.png': png(5) },
      ),
    ).toEqual([
      'renamed | pictures | picture images/b.png | images/b.png | images/d.png',
      'changed | pictures | picture images/a.png',
      'removed | pictures | picture images/c.png',
      'added | pictures | picture images/e.png',
    ]);
  });

  test('templates by name and the theme by its values', () => {
    expect(
      told(
        {
          'report-templates/cover.hbs': '<p>One</p>',
          'theme.yaml': 'text: { size: 10 }\n',
        },
        {
          'report-templates/cover.hbs': '<p>Two</p>',
          'theme.yaml': '# larger\ntext: { size: 11 }\n',
        },
      ),
    ).toEqual([
      'changed | templates | template cover.hbs',
      'changed | theme | theme text.size | 10 | 11',
    ]);
  });

  test('worked steps that were only laid out anew not at all', () => {
    const steps = (note: string): string =>
      `member: B1\nsteps:\n  - { value: moment at 6 ft, write: "4 kip * 6 ft", so: "M = 24 kip ft"${note} }\n`;
    expect(
      told(
        { 'worked/b1.yaml': steps('') },
        { 'worked/b1.yaml': `# by hand\n${steps('')}` },
      ),
    ).toEqual([]);
    expect(
      told(
        { 'worked/b1.yaml': steps('') },
        {
          'worked/b1.yaml': steps(', note: checked twice'),
          'worked/b2.yaml': steps(', note: anew'),
        },
      ),
    ).toEqual([
      'changed | worked | worked steps worked/b1.yaml',
      'added | worked | worked steps worked/b2.yaml | for B1',
    ]);
  });
});

describe('compareInputs tells of members that cannot be read', () => {
  const faulty = b1.replace('at: 6 ft', 'at: 60 ft');

  test('that they have errors now, or no longer', () => {
    expect(told({}, { 'members/b1.yaml': faulty })).toEqual([
      'changed | members | file of B1 | sound | has errors',
    ]);
    expect(told({ 'members/b1.yaml': faulty }, {})).toEqual([
      'changed | members | file of B1 | has errors | sound',
    ]);
  });

  test('nothing where the same file stands on both sides, a change where it does not', () => {
    expect(told({ 'members/b1.yaml': faulty }, { 'members/b1.yaml': faulty })).toEqual(
      [],
    );
    expect(
      told(
        { 'members/b1.yaml': faulty },
        { 'members/b1.yaml': faulty.replace('8 kip', '9 kip') },
      ),
    ).toEqual(['changed | members | file of B1']);
  });
});

describe('compareInputs matches members', () => {
  test('with the case of a load where only loads name the cases', () => {
    expect(told({}, { 'members/b1.yaml': b1.replace('case: L', 'case: S') })).toEqual([
      'changed | members | case of the load on B1 at 6 ft | L | S',
    ]);
  });

  test('by their content where two marks changed at once', () => {
    const b2 = plainBeam(
      'B2',
      '{ case: L, uniform: 1 kip/ft }, { case: D, couple: 2 kip ft, at: B, turn: clockwise }',
    );
    expect(
      told(
        { 'members/b2.yaml': b2 },
        {
          'members/b1.yaml': b2.replace('B2', 'N7'),
          'members/b2.yaml': b1.replace('B1', 'N8'),
        },
      ),
    ).toEqual([
      'renamed | members | member B2 | B2 | N7',
      'renamed | members | member B1 | B1 | N8',
    ]);
  });
});
