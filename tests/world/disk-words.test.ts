import { describe, expect, test } from 'vitest';
import { failureName, failureWords } from '../../src/world/disk-words.ts';

describe('a refusal of the disk', () => {
  test('is put into plain words', () => {
    expect(failureWords({ code: 'ENOSPC' })).toBe('the disk is full');
    expect(failureWords({ code: 'EROFS' })).toBe('the disk can only be read');
    expect(failureWords({ code: 'EACCES' })).toBe('permission is denied');
  });

  test('keeps its short name where it is not known', () => {
    expect(failureWords({ code: 'EXDEV' })).toBe('the system refused it (EXDEV)');
    expect(failureWords('broken')).toBe('the system refused it (no reason given)');
    expect(failureName({ code: 3 })).toBe('');
    expect(failureName(null)).toBe('');
  });
});
