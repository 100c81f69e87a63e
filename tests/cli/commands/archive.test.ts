import { describe, expect, test } from 'vitest';
import { digest } from '../../../src/world/index.ts';
import { ran } from '../../support/command-line.ts';
import { completeRow, issueShed, issueYaml } from '../../support/issue.ts';

describe('archive', () => {
  test('keeps a bag and tells where, its checksum, what it holds and what it supersedes; then refuses to touch it', async () => {
    const world = issueShed({
      'project.yaml': issueYaml(
        'status: preliminary, supersedes: { number: "2031-014", revision: "-" }',
        `[ ${completeRow.replace('mark: A, date: 2031-03-14', 'mark: "-", date: 2031-01-20')}, ${completeRow} ]`,
      ),
    });
    const { code, out, err } = await ran(['archive', 'shed'], world);
    expect([code, err]).toEqual([0, '']);
    const bag = world.files.get('shed/issued/2031-014-A.zip')!;
    const sheets = / {2}sheets {6}\d+/u.exec(out)?.[0] ?? 'no sheets';
    expect(out.split('\n')).toEqual([
      'Archived: shed/issued/2031-014-A.zip',
      `  SHA-256     ${digest(bag)}`,
      '  revision    A, preliminary, 2031-03-14',
      sheets,
      '  holds       package.pdf, results.json, record.json, definition/ (2 files), licences/ (2 files)',
      '  supersedes  2031-014, revision -',
      '',
    ]);
    const again = await ran(['archive', 'shed'], world);
    expect([again.code, again.out]).toEqual([1, '']);
    expect(again.err).toContain('a new issue is a new revision  [archive-exists]');
    expect(again.err).toMatch(
      /1 error\. Nothing was written\. sumzero explain archive-exists tells more\.\n$/u,
    );
    expect(world.files.get('shed/issued/2031-014-A.zip')).toEqual(bag);
    // The bag in the folder is no file of the project: another issue says nothing of it.
    const other = await ran(['archive', 'shed', '-o', 'copy.zip'], world);
    expect([other.code, other.err]).toEqual([0, '']);
    expect(world.files.get('copy.zip')).toEqual(bag);
  }, 120_000);

  test('shows what is missing at its place and writes nothing; --as-is keeps it and says so', async () => {
    const world = issueShed({
      'project.yaml': issueYaml(
        'status: for review',
        '[ { mark: A, date: 2031-03-14 } ]',
      ),
    });
    const refused = await ran(['archive', 'shed'], world);
    expect([refused.code, refused.out]).toEqual([1, '']);
    expect(refused.err).toContain(
      'Error in shed/project.yaml:5:14: revision A lacks a note of what was changed, the reason, who prepared it, who checked it and the sheets affected  [revision-incomplete]',
    );
    expect([...world.files.keys()].filter((path) => path.endsWith('.zip'))).toEqual([]);
    const kept = await ran(['archive', 'shed', '--as-is'], world);
    expect(kept.code).toBe(0);
    expect(kept.out).toContain('  as it is    Revision A lacks a note');
    expect(kept.err).toContain('archived all the same: revision A lacks');
    expect(world.files.has('shed/issued/2031-014-A.zip')).toBe(true);
  }, 60_000);

  test('keeps a signed copy that cannot be compared, and remarks on it', async () => {
    const world = issueShed({ 'scan.pdf': '%PDF-1.4 scanned' });
    const { code, out, err } = await ran(
      ['archive', 'shed', '--signed', 'shed/scan.pdf'],
      world,
    );
    expect(code).toBe(0);
    expect(out).toContain('  signed      not compared with package.pdf');
    expect(err).toContain('[signed-not-compared]');
  }, 60_000);

  test.each([
    [['archive'], 'archive needs the folder of a project'],
    [['archive', 'shed', 'a.zip'], 'archive takes one folder, and a.zip is a second'],
    [['archive', 'none'], 'there is no folder none  [not-a-folder]'],
    [['archive', 'shed', '--asis'], 'there is no option --asis'],
  ])('%j is refused', async (args, words) => {
    const { code, out, err } = await ran(args, issueShed());
    expect([code, out]).toEqual([1, '']);
    expect(err).toContain(words);
  });
});
