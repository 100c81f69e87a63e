import { describe, expect, test } from 'vitest';
import {
  readRecord,
  recordOf,
  writeRecord,
  type ArchiveRecord,
} from '../../src/archive/index.ts';
import { readProject } from '../../src/project/index.ts';
import { issueShed, issueYaml } from '../support/issue.ts';

function recordFrom(yaml: string): ArchiveRecord {
  const { definition } = readProject(
    issueShed({ 'project.yaml': yaml }),
    'shed',
  ).value!;
  return recordOf({
    definition,
    results: {
      format: 1,
      project: { number: null, title: '', revision: null, units: 'us' },
      members: [],
    },
    sheets: 3,
    program: { name: 'sumzero', version: '0.0.0' },
    supersededSha256: 'f'.repeat(64),
    asIs: ['Revision A lacks its date.'],
    signed: { path: 'data/package.signed.pdf', comparison: 'same start' },
  });
}

const full = recordFrom(
  issueYaml('status: issued, supersedes: { number: "7", bag: a.zip }'),
);
const bare = recordFrom('project: { title: Potting shed }\nunits: us\n');

describe('record.json', () => {
  test.each([
    ['full', full],
    ['bare', bare],
  ])('a %s record is read back as it was written', (_, record) => {
    const text = writeRecord(record);
    expect(readRecord(text)).toEqual({ kind: 'record', record });
    expect(text.endsWith('}\n')).toBe(true);
  });

  test('says null, never nothing, where the project does not say', () => {
    expect(bare).toMatchObject({
      project: { number: null, client: null, office: null, discipline: 'structural' },
      status: 'preliminary',
      revision: null,
      revisions: [],
      people: { prepared: null, checked: null, approved: null },
      supersedes: null,
      totals: {
        members: 0,
        unsolved: 0,
        sheets: 3,
        checks: 0,
        failing: 0,
        governing: null,
      },
      closure: null,
    });
    expect(full.supersedes).toEqual({
      number: '7',
      revision: null,
      bag: 'a.zip',
      sha256: 'f'.repeat(64),
    });
  });

  test('keys of a later version are passed over', () => {
    const later = { ...full, weather: 'fair', totals: { ...full.totals, words: 9 } };
    expect(readRecord(JSON.stringify(later)).kind).toBe('record');
  });

  test.each([
    ['a key is missing', { ...full, status: undefined }, 'status'],
    [
      'a number is a text',
      { ...full, totals: { ...full.totals, sheets: '3' } },
      'totals.sheets',
    ],
    ['the format is another', { ...full, format: 2 }, 'format'],
    [
      'a person has no initials',
      { ...full, people: { ...full.people, checked: { name: 'R' } } },
      'people.checked.initials',
    ],
    [
      'a comparison is none of two',
      { ...full, signed: { path: 'x', comparison: 'fine' } },
      'signed.comparison',
    ],
  ])('where %s, the place is told', (_, record, path) => {
    const reading = readRecord(JSON.stringify(record));
    expect(
      reading.kind === 'misshapen' && reading.misfits.map((misfit) => misfit.path),
    ).toContain(path);
  });

  test('a text that is no JSON is told as such', () => {
    expect(readRecord('{')).toEqual({ kind: 'not-json' });
  });
});
