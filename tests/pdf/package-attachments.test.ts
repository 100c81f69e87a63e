import { expect, test } from 'vitest';
import { packageAttachments } from '../../src/pdf/index.ts';

const empty = new Uint8Array();

test('every source travels under its path with what it is, and the figures last', () => {
  const paths = [
    'project.yaml',
    'worked/b1.yaml',
    'images/Logo.PNG',
    'images/site.jpeg',
    'images/constructor',
    'report-templates/cover.hbs',
  ];
  const attached = packageAttachments(
    paths.map((path) => ({ path, bytes: empty })),
    '{}\n',
  );
  expect(
    attached.map(({ name, mime, relationship }) => [name, mime, relationship]),
  ).toEqual([
    ['project.yaml', 'application/yaml', 'Source'],
    ['worked/b1.yaml', 'application/yaml', 'Source'],
    ['images/Logo.PNG', 'image/png', 'Source'],
    ['images/site.jpeg', 'image/jpeg', 'Source'],
    ['images/constructor', 'application/octet-stream', 'Source'],
    ['report-templates/cover.hbs', 'text/plain', 'Source'],
    ['results.json', 'application/json', 'Data'],
  ]);
  expect(new Set(attached.map(({ description }) => description)).size).toBe(5);
});
