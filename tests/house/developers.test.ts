import { existsSync, readdirSync } from 'node:fs';
import { createRequire } from 'node:module';
import { describe, expect, test } from 'vitest';
import { readText, root } from './repository.ts';
import { captionOf, rooms, storeys } from './storeys.ts';

const require = createRequire(import.meta.url);
const text = readText('DEVELOPERS.md');
const scripts = (
  JSON.parse(readText('package.json')) as { scripts: Record<string, string> }
).scripts;

/** The rows of a table, cell by cell, by the words of its head. */
function tableUnder(head: string): readonly (readonly string[])[] {
  const lines = text.slice(text.indexOf(`| ${head}`)).split('\n');
  const end = lines.findIndex((line) => !line.startsWith('|'));
  return lines.slice(2, end).map((line) =>
    line
      .split('|')
      .slice(1, -1)
      .map((cell) => cell.trim()),
  );
}

describe('DEVELOPERS.md', () => {
  test('names only paths that exist', () => {
    const paths = [
      ...text.matchAll(
        /`((?:src|tests|report-templates|fonts|demo-projects|\.config|\.ci)\/[^`*…]*)`/g,
      ),
    ]
      .map(([, path]) => path ?? '')
      .concat([...text.matchAll(/^.*│.*?(src\/\w+)/gm)].map(([, path]) => path ?? ''));
    expect(paths.length).toBeGreaterThan(60);
    expect(paths.filter((path) => !existsSync(new URL(path, root)))).toEqual([]);
  });

  test('shows the storeys that the lint of imports enforces', () => {
    const drawn =
      /```storeys\n([\s\S]*?)```/.exec(text)?.[1]?.trimEnd().split('\n') ?? [];
    const shown = drawn.map((line) => line.trim().split(/\s+/).slice(1));
    expect(shown.toReversed()).toEqual(storeys);
  });

  test('captions every room with the first sentence of its door', () => {
    const captions = tableUnder('room | caption');
    expect(
      Object.fromEntries(captions.map(([room = '', caption]) => [room, caption])),
    ).toEqual(Object.fromEntries(rooms.map((room) => [room, captionOf(room)])));
  });

  test('gives each outside package the room that the lint of imports gives it', () => {
    const { dependencies } = JSON.parse(readText('package.json')) as {
      dependencies: object;
    };
    const { forbidden } = require('../../.config/dependency-cruiser.cjs') as {
      readonly forbidden: readonly { readonly name: string }[];
    };
    const rules = forbidden.map(({ name }) => name);
    const listed = tableUnder('package | room').flatMap(([packages = '', room = '']) =>
      [...packages.matchAll(/`([^`]+)`/g)].map(
        ([, name]) => [name ?? '', room] as const,
      ),
    );
    for (const [name, room] of listed)
      expect(rules).toContain(`only-${room}-uses-${name}`);
    expect(listed.map(([name]) => name).sort()).toEqual(
      Object.keys(dependencies).sort(),
    );
  });

  test('lists every script of package.json and no other', () => {
    const named = [...text.matchAll(/`npm (?:run )?([\w:]+)`/g)].map(
      ([, script]) => script ?? '',
    );
    expect([...new Set(named)].sort()).toEqual(
      Object.keys(scripts)
        .filter((script) => script !== 'prepack')
        .sort(),
    );
  });
});

test('every room that is built stands on a storey', () => {
  const built = rooms.toSorted();
  const folders = readdirSync(new URL('src/', root), { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => name);
  expect(folders.toSorted()).toEqual(built);
});
