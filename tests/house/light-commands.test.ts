import { posix } from 'node:path';
import { describe, expect, test } from 'vitest';
import { readText } from './repository.ts';

/** Every file and package that is loaded with a source file, `await import` left out. */
function loadedWith(
  path: string,
  seen: ReadonlySet<string> = new Set(),
): ReadonlySet<string> {
  if (seen.has(path) || !path.startsWith('src/')) return new Set([...seen, path]);
  const statements = readText(path).matchAll(
    /^(?:import|export) (?!type )[^;]*?from '([^']+)';/gms,
  );
  const bare = readText(path).matchAll(/^import '([^']+)';/gm);
  let all: ReadonlySet<string> = new Set([...seen, path]);
  for (const [, from = ''] of [...statements, ...bare])
    all = loadedWith(
      from.startsWith('.') ? posix.join(posix.dirname(path), from) : from,
      all,
    );
  return all;
}

describe('starting the program', () => {
  const loaded = [...loadedWith('src/cli/main.ts')];

  test('loads the command line, the world and the diagnostics alone', () => {
    const rooms = new Set(
      loaded
        .filter((one) => one.startsWith('src/'))
        .map((one) => one.split('/')[1] ?? ''),
    );
    expect([...rooms].toSorted()).toEqual(['cli', 'diagnostics', 'world']);
  });

  test('loads no outside package', () => {
    expect(
      loaded.filter((one) => !one.startsWith('src/') && !one.startsWith('node:')),
    ).toEqual([]);
  });
});

test('solving loads neither fonts nor the typesetter, layout or PDF', () => {
  const loaded = [...loadedWith('src/index.ts')];
  const heavy = ['typeset', 'layout', 'pdf'].flatMap((room) =>
    loaded.filter((one) => one.startsWith(`src/${room}/`)),
  );
  expect(heavy).toEqual([]);
  expect(loaded.filter((one) => ['katex', 'fontkit', 'pdfkit'].includes(one))).toEqual(
    [],
  );
});
