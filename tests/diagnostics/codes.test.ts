import { describe, expect, test } from 'vitest';
import { codes } from '../../src/diagnostics/index.ts';

describe('the codes', () => {
  test.each(Object.entries(codes))(
    '%s has an entry of whole sentences',
    (code, entry) => {
      expect(code).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
      expect(entry.meaning).toMatch(/^[A-Z`].*\.$/s);
      expect(entry.mend).toMatch(/^[A-Z`].*\.$/s);
      if (entry.example !== undefined)
        expect(entry.example.wrong.trim()).not.toBe(entry.example.right.trim());
    },
  );
});
