import { digest } from '../world/index.ts';
import type { BagFinding } from './bag.ts';
import { readManifest, writeManifest } from './manifest.ts';
import {
  declaration,
  declarationPath,
  encoded,
  infoPath,
  manifestPath,
  tagManifestPath,
} from './tag-files.ts';
import type { WeighedFile } from './weigh-files.ts';

/** The tag manifest, and what is known already. */
export interface TagWitnesses {
  /** Its text; undefined where there is none that can be read. */
  readonly text: string | undefined;
  /** Whether there is a finding about the manifest itself, so that its digest needs no other. */
  readonly isManifestTold: boolean;
}

/** Tag files that a tag manifest lists. */
const listedPaths: readonly string[] = [declarationPath, infoPath, manifestPath];

/** Compares the tag files with the tag manifest (RFC 8493, 2.2.1). */
export function proveTags(
  files: ReadonlyMap<string, WeighedFile>,
  { text, isManifestTold }: TagWitnesses,
): readonly BagFinding[] {
  if (text === undefined)
    return [
      finding(
        'missing',
        tagManifestPath,
        `there is no ${tagManifestPath} that says what the tag files were`,
      ),
    ];
  const listed = new Map(
    readManifest(text).lines.map(({ path, sha256 }) => [path, sha256]),
  );
  const present = listedPaths.flatMap((path) => files.get(path) ?? []);
  const gone = listedPaths
    .filter((path) => !files.has(path))
    .map((path) => finding('missing', path, `${path} is not in the bag`));
  const known = [...gone, ...present.flatMap((file) => differing(file, listed))];
  const found = known.filter(({ path }) => path !== manifestPath || !isManifestTold);
  const isInForm = writeManifest(present) === text;
  return found.length > 0 || isInForm || isExplained(files, isManifestTold)
    ? found
    : [
        finding(
          'manifest',
          tagManifestPath,
          `${tagManifestPath} is not as it was written`,
        ),
      ];
}

/** Whether the tag manifest must differ from what is due for a reason that is told elsewhere. */
function isExplained(
  files: ReadonlyMap<string, WeighedFile>,
  isManifestTold: boolean,
): boolean {
  return (
    isManifestTold ||
    files.get(declarationPath)?.sha256 !== digest(encoded(declaration))
  );
}

function finding(kind: BagFinding['kind'], path: string, message: string): BagFinding {
  return { kind, path, message };
}

/** A tag file against the digest that the tag manifest gives for it. */
function differing(
  { path, sha256 }: WeighedFile,
  listed: ReadonlyMap<string, string>,
): readonly BagFinding[] {
  const due = listed.get(path);
  // What bagit.txt has to hold is known without any list; a list that leaves a file out is told as a whole.
  if (due === undefined || due === sha256 || path === declarationPath) return [];
  const message = `${path} and ${tagManifestPath} do not agree: its SHA-256 is ${sha256}, listed is ${due}`;
  return [finding('altered', path, message)];
}
