import { digest } from '../world/index.ts';
import type { BagFinding } from './bag.ts';
import { readManifest, writeManifest } from './manifest.ts';
import { shown } from './safe-paths.ts';
import { encoded, manifestPath, tagManifestPath } from './tag-files.ts';
import type { WeighedFile } from './weigh-files.ts';

/** What is held against the payload. */
export interface PayloadWitnesses {
  /** The manifest as text; undefined where there is none that can be read. */
  readonly manifest: string | undefined;
  /** Digest that the tag manifest gives for the manifest. */
  readonly witness: string | undefined;
}

/** What was found about the payload, and whether the manifest itself has been told of already. */
export interface PayloadFindings {
  readonly findings: readonly BagFinding[];
  readonly isManifestTold: boolean;
}

/** Compares the payload with the manifest that lists it (RFC 8493, 2.1.3 and 3). */
export function provePayload(
  payload: readonly WeighedFile[],
  { manifest, witness }: PayloadWitnesses,
): PayloadFindings {
  if (manifest === undefined)
    return toldOf(
      'missing',
      `there is no ${manifestPath} that says what the payload was`,
    );
  const due = writeManifest(payload);
  if (manifest === due) return { findings: [], isManifestTold: false };
  // The list that these files give is the one that was witnessed: the files are whole, the list is not.
  if (witness === digest(encoded(due)))
    return toldOf(
      'manifest',
      `${manifestPath} is not as it was written; the payload is, as ${tagManifestPath} witnesses`,
    );
  const findings = compareLines(payload, manifest);
  const form = formFault(manifest);
  if (form === undefined) return { findings, isManifestTold: false };
  return {
    findings: [...findings, ...toldOf('manifest', form).findings],
    isManifestTold: true,
  };
}

const toldOf = (kind: BagFinding['kind'], message: string): PayloadFindings => ({
  findings: [{ kind, path: manifestPath, message }],
  isManifestTold: true,
});

/** Why a manifest is not written as `writeBag` writes what it lists; undefined where it is. */
function formFault(text: string): string | undefined {
  const { lines, unreadable } = readManifest(text);
  if (unreadable > 0)
    return `${manifestPath} holds lines that list no file: ${unreadable}`;
  return writeManifest(lines) === text
    ? undefined
    : `${manifestPath} lists its files in another form than it was written in: order, digits, blanks or line ends`;
}

function compareLines(
  payload: readonly WeighedFile[],
  manifest: string,
): readonly BagFinding[] {
  const { lines } = readManifest(manifest);
  const listed = new Map(lines.map(({ path, sha256 }) => [path, sha256]));
  const present = new Map(payload.map(({ path, sha256 }) => [path, sha256]));
  const missing = [...listed.keys()]
    .filter((path) => !present.has(path))
    .map((path): BagFinding => ({
      kind: 'missing',
      path,
      message: `${shown(path)} is not in the bag; ${manifestPath} lists it`,
    }));
  const otherwise = payload.flatMap(({ path, sha256 }): readonly BagFinding[] => {
    const due = listed.get(path);
    if (due === sha256) return [];
    return due === undefined
      ? [
          {
            kind: 'added',
            path,
            message: `${shown(path)} was added; ${manifestPath} does not list it`,
          },
        ]
      : [
          {
            kind: 'altered',
            path,
            message: `${shown(path)} is not what was written: its SHA-256 is ${sha256}, ${manifestPath} says ${due}`,
          },
        ];
  });
  return [...missing, ...otherwise];
}
