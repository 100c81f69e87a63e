import { describe, expect, test } from 'vitest';
import { relateRows } from '../../../src/archive/register/relate-rows.ts';
import type {
  ReadRow,
  RegisterRow,
} from '../../../src/archive/register/register-row.ts';

function row(about: Partial<RegisterRow>, marks: readonly string[] = []): ReadRow {
  return {
    marks,
    row: {
      path: `${about.number ?? 'x'}-${about.revision ?? '0'}.zip`,
      kind: 'bag',
      number: '7',
      title: 'Weir crossing',
      revision: null,
      status: 'issued',
      date: null,
      prepared: null,
      checked: null,
      approved: null,
      bound: 'bound',
      sheets: 9,
      governing: null,
      sha256: 'a'.repeat(64),
      supersedes: null,
      supersededBy: [],
      hasTwin: false,
      remarks: [],
      ...about,
    },
  };
}

const replacing = (
  about: Partial<RegisterRow['supersedes']>,
): RegisterRow['supersedes'] => ({
  number: null,
  revision: null,
  bag: null,
  sha256: null,
  ...about,
});

describe('superseded by', () => {
  test('goes by the checksum of the bag, whatever its name now', () => {
    const [first, second] = relateRows([
      row({ revision: '-', sha256: 'b'.repeat(64), path: 'renamed.zip' }, ['-']),
      row(
        {
          revision: 'A',
          supersedes: replacing({ bag: '7-0.zip', sha256: 'b'.repeat(64) }),
        },
        ['-', 'A'],
      ),
    ]);
    expect(first?.supersededBy).toEqual(['7 revision A']);
    expect(second?.supersededBy).toEqual([]);
    const other = relateRows([
      row({ revision: '-', sha256: 'c'.repeat(64), path: '7-0.zip' }),
      row({
        revision: 'A',
        supersedes: replacing({
          bag: '7-0.zip',
          revision: '-',
          sha256: 'b'.repeat(64),
        }),
      }),
    ]);
    expect(other.map(({ supersededBy }) => supersededBy)).toEqual([[], []]);
  });

  test('goes by the file where no checksum is known, and never over numbers', () => {
    const rows = relateRows([
      row({ number: '7', revision: '-', path: 'vault/first.zip' }),
      row({ number: '8', revision: '-', path: 'other/first.zip' }),
      row({
        number: '7',
        revision: 'A',
        supersedes: replacing({ bag: '../first.zip' }),
      }),
    ]);
    expect(rows.map(({ path, supersededBy }) => [path, supersededBy])).toEqual([
      ['vault/first.zip', ['7 revision A']],
      ['7-A.zip', []],
      ['other/first.zip', []],
    ]);
  });

  test('goes by number and revision for folders, each successor named once', () => {
    const supersedes = replacing({ revision: '-' });
    const rows = relateRows([
      row({ kind: 'folder', sha256: null, revision: '-', path: 'shed' }),
      row({ kind: 'folder', sha256: null, revision: 'A', path: 'shed-2', supersedes }),
      row({ revision: 'A', supersedes }),
    ]);
    expect(rows[0]?.supersededBy).toEqual(['7 revision A']);
  });
});

test('bags of one number and revision that differ are pointed out on both; equal ones are copies', () => {
  const rows = relateRows([
    row({ revision: 'A', path: 'one.zip' }),
    row({ revision: 'A', path: 'two.zip', sha256: 'b'.repeat(64) }),
    row({ revision: 'B', path: 'three.zip' }),
    row({ revision: 'B', path: 'copy.zip' }),
    row({ revision: 'A', path: 'a.pdf', kind: 'pdf', sha256: 'c'.repeat(64) }),
  ]);
  expect(
    rows.filter(({ hasTwin }) => hasTwin).map(({ path, remarks }) => [path, remarks]),
  ).toEqual([
    ['one.zip', ['another bag of this number and revision differs: two.zip']],
    ['two.zip', ['another bag of this number and revision differs: one.zip']],
  ]);
});

test('rows stand by number as people count, then in the order of the record of revisions', () => {
  const rows = relateRows([
    row({ number: '10', revision: '-' }, ['-']),
    row({ number: '9', revision: 'P2' }, ['P9', 'P2']),
    row({ number: '9', revision: 'P9' }, ['P9']),
    row({ number: '9', revision: 'C1' }, ['P9', 'P2', 'C1']),
  ]);
  expect(rows.map(({ number, revision }) => `${number} ${revision}`)).toEqual([
    '9 P9',
    '9 P2',
    '9 C1',
    '10 -',
  ]);
});
