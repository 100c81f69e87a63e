import { readFileSync, readdirSync } from 'node:fs';
import { readProject, type Project } from '../../src/project/index.ts';
import { memoryWorld } from '../../src/world/index.ts';

/** Files of a demo project, by path inside it. */
export type Files = Readonly<Record<string, string>>;

/** An edit of one file: a text that stands there once, and what replaces it. */
export type Edit = readonly [file: string, from: string, to: string];

/** The definition files of a demo project. */
export function demoFiles(name: string): Files {
  const root = new URL(`../../demo-projects/${name}/`, import.meta.url);
  const paths = readdirSync(root, { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('.yaml'))
    .sort();
  return Object.fromEntries(
    paths.map((path) => [path, readFileSync(new URL(path, root), 'utf8')]),
  );
}

/** Files with edits made one after the other; throws where the text to replace does not stand there exactly once. */
export function edited(files: Files, edits: readonly Edit[]): Files {
  return edits.reduce<Files>((done, [file, from, to]) => {
    const text = done[file] ?? '';
    const parts = text.split(from);
    if (parts.length !== 2)
      throw new Error(`${file} holds ${parts.length - 1} times: ${from}`);
    return { ...done, [file]: parts.join(to) };
  }, files);
}

/** The project of some files; throws where it cannot be read at all. */
export function projectOf(files: Files): Project {
  const world = memoryWorld(
    Object.fromEntries(
      Object.entries(files).map(([path, text]) => [`p/${path}`, text]),
    ),
  );
  const { value, diagnostics } = readProject(world, 'p');
  if (value === undefined)
    throw new Error(
      diagnostics.map(({ code, message }) => `${code}: ${message}`).join('\n'),
    );
  return value;
}
