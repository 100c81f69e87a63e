import { readdirSync, readFileSync } from 'node:fs';

/** The top folder of the repository. */
export const root: URL = new URL('../../', import.meta.url);

/** The text of a file of the repository. */
export function readText(path: string): string {
  return readFileSync(new URL(path, root), 'utf8');
}

/** Every file below a folder of the repository, as paths from the top. */
export function filesBelow(folder: string): readonly string[] {
  return readdirSync(new URL(`${folder}/`, root), { withFileTypes: true })
    .flatMap((entry) =>
      entry.isDirectory()
        ? filesBelow(`${folder}/${entry.name}`)
        : [`${folder}/${entry.name}`],
    )
    .sort();
}

/** The files of the top folder. */
export function topFiles(): readonly string[] {
  return readdirSync(root, { withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map(({ name }) => name);
}
