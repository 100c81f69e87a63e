import { describe, expect, test } from 'vitest';
import { identifyFile } from '../../src/pdf/file-identity.ts';

describe('the identity of a file', () => {
  test('is the same for the same inputs and another for others', () => {
    expect(identifyFile('a')).toEqual(identifyFile('a'));
    expect(identifyFile('a').id).not.toEqual(identifyFile('b').id);
  });

  test('is sixteen bytes and two UUIDs made from names', () => {
    const { id, documentId, instanceId } = identifyFile('inputs');
    expect(id).toHaveLength(16);
    const uuid =
      /^uuid:[0-9a-f]{8}-[0-9a-f]{4}-3[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/u;
    expect(documentId).toMatch(uuid);
    expect(instanceId).toMatch(uuid);
    expect(documentId).not.toBe(instanceId);
  });
});
