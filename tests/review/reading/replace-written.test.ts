import { expect, test } from 'vitest';
import { readLine } from '../../../src/review/reading/read-line.ts';
import { replaceWritten } from '../../../src/review/reading/replace-written.ts';

test('a part is replaced wherever it stands, and all else is left as it was', () => {
  const link = readLine('a + sqrt(a^2 * 3) / (b - a)', ['a', 'b']).readings?.[0]
    ?.links[0];
  if (link === undefined) throw new Error('it cannot be read');
  const other = replaceWritten(link, (part) =>
    part.kind === 'name' && part.name === 'a' ? { ...part, name: 'c' } : undefined,
  );
  const text = JSON.stringify(other);
  expect(text.match(/"name":"c"/gu)).toHaveLength(3);
  expect(text).not.toContain('"name":"a"');
  expect(JSON.stringify(link)).toContain('"name":"a"');
});
