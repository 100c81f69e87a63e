import { describe, expect, test } from 'vitest';
import { schemaFor } from '../../../src/index.ts';
import { ran } from '../../support/command-line.ts';

describe('schema', () => {
  test('writes the schema of a kind as JSON', async () => {
    const { code, out } = await ran(['schema', 'beam']);
    expect(code).toBe(0);
    expect(JSON.parse(out)).toEqual(JSON.parse(JSON.stringify(schemaFor('beam'))));
  });

  test('lists the kinds that can be read', async () => {
    const { out } = await ran(['schema']);
    expect(out).toMatch(/^project {2}project\.yaml: /);
    for (const line of out.trimEnd().split('\n'))
      expect((await ran(['schema', line.split(' ')[0] ?? ''])).code).toBe(0);
  });

  test('says of a kind that is foreseen and not read yet that it is not', async () => {
    expect((await ran(['schema', 'written'])).err).toContain(
      'files of the kind written are not read yet',
    );
  });

  test('suggests the nearest kind', async () => {
    const { code, err } = await ran(['schema', 'beem']);
    expect(code).toBe(1);
    expect(err).toContain('write beam');
    expect((await ran(['schema', 'toString'])).err).toContain('there is no kind');
  });
});
