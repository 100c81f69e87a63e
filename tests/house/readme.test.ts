import { existsSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { commands } from '../../src/cli/commands.ts';
import {
  fileKinds,
  schemaFor,
  type FileKindName,
  type JsonSchema,
} from '../../src/index.ts';
import { readText, root } from './repository.ts';

const text = readText('README.md');
const { scripts } = JSON.parse(readText('package.json')) as {
  scripts: Record<string, string>;
};

/** What stands under a heading, to the next of its level or above. */
function section(title: string): string {
  const start = text.indexOf(`\n${title}\n`);
  expect(start, title).toBeGreaterThan(0);
  const level = title.indexOf(' ');
  const rest = text.slice(start + title.length + 2);
  const end = rest.search(new RegExp(`^#{1,${level}} `, 'm'));
  return end < 0 ? rest : rest.slice(0, end);
}

describe('README.md', () => {
  test('sets up by two commands and names scripts that exist', () => {
    const blocks = [...section('## Set up').matchAll(/```\n(.*)\n```/g)].map(
      ([, line]) => line,
    );
    expect(blocks).toEqual(['npm ci && npm run demo', 'npm ci && npm test']);
    const named = [...text.matchAll(/npm run ([\w:]+)/g)].map(
      ([, script]) => script ?? '',
    );
    expect(named.filter((script) => !(script in scripts))).toEqual([]);
    expect(scripts).toHaveProperty('test');
  });

  test('names every command with its arguments, and every option of bind', () => {
    const about = section('## Commands');
    for (const { name, takes } of commands)
      expect(about).toContain(`\`sumzero ${name} ${takes}\``);
    const bind = commands.find(({ name }) => name === 'bind');
    for (const option of Object.keys(bind?.options ?? {}))
      expect(about).toContain(option === 'output' ? '`-o FILE`' : `--${option}`);
  });

  test.each([
    ['project', '### project.yaml'],
    ['loads', '### loads.yaml'],
    ['beam', '### members/*.yaml: a beam'],
    ['worked', '### worked/*.yaml: steps worked by hand'],
  ] as const)('names every field of a %s file', (kind, heading) => {
    const about = section(heading);
    const words = new Set(about.match(/[A-Za-z_]+/g));
    expect(fieldsOf(schemaFor(kind)).filter((field) => !words.has(field))).toEqual([]);
  });

  test('names every kind of file that has a schema', () => {
    const kinds = (Object.keys(fileKinds) as FileKindName[]).filter(
      (kind) => schemaFor(kind) !== undefined,
    );
    expect(text).toContain(
      `schema of a kind of file: ${kinds.join(', ')}`.replace('schema', 'Schema'),
    );
  });

  test('links to files that are there', () => {
    const links = [...text.matchAll(/\]\((?!http)([^)]+)\)|`(fonts\/[^`]+)`/g)].map(
      ([, link, file]) => link ?? file ?? '',
    );
    expect(links.length).toBeGreaterThan(2);
    expect(links.filter((link) => !existsSync(new URL(link, root)))).toEqual([]);
  });
});

/** Keys of an object and of the objects directly in it, choices looked through, less those of loads not worked yet. */
function fieldsOf(
  schema: JsonSchema | undefined,
  depth: number = 0,
): readonly string[] {
  if (schema === undefined || depth > 2) return [];
  const inner = ['items', 'additionalProperties'].flatMap((key) =>
    schemasIn(schema[key]),
  );
  const choices = ['anyOf', 'oneOf'].flatMap((key) => schemasIn(schema[key]));
  const own = Object.entries(
    (schema.properties ?? {}) as Readonly<Record<string, JsonSchema>>,
  );
  return [
    ...own
      .filter(([, field]) => !('not' in field))
      .flatMap(([name, field]) => [name, ...fieldsOf(field, depth + 1)]),
    ...inner.flatMap((one) => fieldsOf(one, depth)),
    ...choices.flatMap((one) => fieldsOf(one, depth)),
  ];
}

function schemasIn(value: unknown): readonly JsonSchema[] {
  if (Array.isArray(value)) return value as readonly JsonSchema[];
  return typeof value === 'object' && value !== null ? [value as JsonSchema] : [];
}
