import { expect, test } from 'vitest';
import { digest } from '../../src/world/index.ts';
import { write } from '../support/paged-documents.ts';
import { sampleDocument, sampleOptions } from '../support/sample-document.ts';

// write-pdf.test.ts runs this file in other zones and languages and compares what it prints.
test('prints the digest of the sample, the same at every turn', async () => {
  const once = digest(await write(sampleDocument, sampleOptions));
  expect(digest(await write(sampleDocument, sampleOptions))).toBe(once);
  if (process.env.SHOW_DIGEST !== undefined) process.stdout.write(`\nsample ${once}\n`);
});
