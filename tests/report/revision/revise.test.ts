import { describe, expect, test } from 'vitest';
import { composePackage, workProject, writePlain } from '../../../src/index.ts';
import type { Part } from '../../../src/report/index.ts';
import { hasMarks } from '../../../src/report/revision/mark-blocks.ts';
import { memoryWorld } from '../../../src/world/index.ts';
import { inFolder, laterFiles, stageFiles, type Stage } from '../../support/revised.ts';

const program = { name: 'sumzero', version: '0.0.0' };

/** Parts of the later package by anchor, compared with the earlier one. */
function revised(
  later: Stage = {},
  earlier: Stage = {},
): Readonly<Record<string, Part | undefined>> {
  const world = memoryWorld({
    ...inFolder('then', stageFiles(earlier)),
    ...inFolder('now', laterFiles(later)),
  });
  const { report } = composePackage(world, workProject(world, 'now'), {
    program,
    superseded: {
      bag: '../kept/B.zip',
      sha256: 'c0ffee',
      worked: workProject(world, 'then'),
    },
  });
  return Object.fromEntries((report?.parts ?? []).map((part) => [part.anchor, part]));
}

const says = (part: Part | undefined): string => writePlain(part?.blocks ?? []);
const isMarked = (part: Part | undefined): boolean => hasMarks(part?.blocks ?? []);

describe('a revised package', () => {
  const parts = revised();

  test('has its revision told after the index, from which bag and to what', () => {
    expect(Object.keys(parts).slice(0, 4)).toEqual([
      'cover',
      'index',
      'revision',
      'basis',
    ]);
    const told = says(parts.revision);
    expect(told).toContain('c0ffee');
    expect(told).toMatch(/load .* on S2 at B +changed +8\.4 kip +9\.6 kip/);
    // 8.4 · 6 · 15/21 = 36 kip·ft, and 9.6 for 8.4 is one seventh more.
    expect(told).toMatch(/36\.00 kip·ft +41\.14 kip·ft +\+14\.3%/);
    expect(told).toMatch(/S4 +reactions that it carries from S2/);
  });

  test('marks what differs and nothing else', () => {
    expect(isMarked(parts['member-S2'])).toBe(true);
    expect(isMarked(parts['member-S4'])).toBe(true);
    expect(isMarked(parts['member-S3'])).toBe(false);
    expect(isMarked(parts.basis)).toBe(false);
    expect([parts.cover, parts.revision].some(isMarked)).toBe(false);
  });

  test('keeps the check of sheets that no change reaches, and opens that of the others', () => {
    expect(parts['member-S3']?.foot.checked).toBe('RT 2031-04-03, rev B');
    expect(parts['member-S2']?.foot.checked).toBe('');
    expect(parts['member-S4']?.foot.checked).toBe('');
    expect(parts.cover?.foot.checked).toBe('');
    expect(says(parts.cover)).toContain(
      'RT 2031-04-03, rev B on sheets that no change',
    );
  });

  test('is checked throughout where the checker has signed it', () => {
    const signed = revised({ checked: '2031-05-03' });
    expect(signed['member-S2']?.foot.checked).toBe('RT 2031-05-03');
    expect(signed['member-S3']?.foot.checked).toBe('RT 2031-05-03');
    expect(says(signed.cover)).not.toContain('on sheets that no change');
  });

  test('keeps no check of a revision that had none of its own', () => {
    const earlier = {
      revisions: ['{ mark: A, date: 2031-04-03 }', '{ mark: B, date: 2031-04-04 }'],
    };
    expect(revised({}, earlier)['member-S3']?.foot.checked).toBe('');
  });

  test('that changes nothing says so', () => {
    const same = revised({ size: '8.4 kip' });
    expect(isMarked(same['member-S2'])).toBe(false);
    expect(same['member-S2']?.foot.checked).toBe('RT 2031-04-03, rev B');
  });
});

test('a package whose changes cannot be told says so, and marks nothing', () => {
  const world = memoryWorld(inFolder('now', laterFiles()));
  const { report } = composePackage(world, workProject(world, 'now'), {
    program,
    superseded: { bag: '../kept/B.zip', why: 'there is no such file' },
  });
  const [, , revision, ...others] = report?.parts ?? [];
  expect(says(revision)).toContain('What changed is not told.');
  expect(says(revision)).toContain('there is no such file');
  expect(others.some(isMarked)).toBe(false);
});
