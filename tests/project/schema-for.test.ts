import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { fileKinds, schemaFor, type FileKindName } from '../../src/project/index.ts';
import { fitsSchema } from '../support/fits-schema.ts';

const demos = new URL('../../demo-projects/', import.meta.url).pathname;
const kinds = Object.keys(fileKinds) as readonly FileKindName[];

describe('the schema of a kind of file', () => {
  test('is there for every kind that is supported, and says which draft it follows', () => {
    const found = kinds.filter((kind) => schemaFor(kind) !== undefined);
    expect(found).toEqual(['project', 'loads', 'theme', 'beam', 'worked']);
    for (const kind of found)
      expect(schemaFor(kind)).toMatchObject({
        $schema: 'https://json-schema.org/draft/2020-12/schema',
        type: 'object',
        additionalProperties: false,
      });
  });

  test('describes every key in words, down to the last', () => {
    const undescribed = kinds.flatMap((kind) =>
      keysWithoutWords(schemaFor(kind), kind),
    );
    expect(undescribed).toEqual([]);
  });

  test('states the defaults that the reader takes', () => {
    expect(schemaFor('project')).toMatchObject({
      required: ['project', 'units'],
      properties: {
        figures: { default: 4, type: 'integer' },
        lengths: { default: 'decimal' },
        project: { properties: { status: { default: 'preliminary' } } },
      },
    });
    expect(schemaFor('beam')).toMatchObject({
      required: ['mark', 'kind', 'points', 'supports'],
    });
  });

  test('holds patterns that are regular expressions', () => {
    for (const pattern of kinds.flatMap((kind) => patternsOf(schemaFor(kind))))
      expect(() => new RegExp(pattern, 'u')).not.toThrow();
  });

  test.each(['quarry-road-depot', 'tarn-boathouse'])(
    'is met by every file of the demo project %s',
    (name) => {
      const files: (readonly [FileKindName, string])[] = [
        ['project', 'project.yaml'],
        ['loads', 'loads.yaml'],
        ...readdirSync(`${demos}${name}/members`).map(
          (file) => ['beam', `members/${file}`] as const,
        ),
      ];
      for (const [kind, path] of files) {
        const value: unknown = parse(readFileSync(`${demos}${name}/${path}`, 'utf8'));
        expect([path, fitsSchema(value, schemaFor(kind) ?? {})]).toEqual([path, []]);
      }
    },
  );

  test('refuses what the reader refuses for its form', () => {
    const beam = schemaFor('beam') ?? {};
    const good = {
      mark: 'B1',
      kind: 'beam',
      points: { A: 0, B: '6 ft' },
      supports: { A: 'fixed' },
    };
    expect(fitsSchema(good, beam)).toEqual([]);
    for (const bad of [
      { ...good, mark: 'B.1' },
      { ...good, kind: 'truss' },
      { ...good, points: { A: 0, B: 6 } },
      { ...good, supports: { A: 'pinned' } },
      { ...good, titel: 'x' },
      { ...good, loads: [{ case: 'L', couple: '9 kip ft', at: 'B' }] },
      { ...good, loads: [{ case: 'L', axles: [8] }] },
      { ...good, loads: [{ temperature: { difference: '20 K', rise: '30 K' } }] },
      { ...good, loads: [{ temperature: { depth: '400 mm' } }] },
      { mark: 'B1', kind: 'beam', supports: {} },
    ])
      expect(fitsSchema(bad, beam)).not.toEqual([]);
  });
});

type Node = Readonly<Record<string, unknown>>;
const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null;

function keysWithoutWords(schema: unknown, path: string): readonly string[] {
  if (!isNode(schema)) return [];
  const properties = isNode(schema.properties) ? schema.properties : {};
  const own = Object.entries(properties)
    .filter(
      ([, value]) =>
        !isNode(value) ||
        typeof value.description !== 'string' ||
        value.description.length < 5,
    )
    .map(([key]) => `${path}.${key}`);
  const inner = Object.entries(schema).flatMap(([key, value]) =>
    keysWithoutWords(value, `${path}.${key}`),
  );
  return [...own, ...inner];
}

function patternsOf(schema: unknown): readonly string[] {
  if (!isNode(schema)) return [];
  const own = typeof schema.pattern === 'string' ? [schema.pattern] : [];
  return [...own, ...Object.values(schema).flatMap(patternsOf)];
}
