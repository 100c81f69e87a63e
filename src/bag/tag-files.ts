import { digest } from '../world/index.ts';
import type { BagLine } from './bag.ts';
import { writeInfo } from './bag-info.ts';
import { writeManifest, type ManifestLine } from './manifest.ts';

/** Path inside a bag of the declaration (RFC 8493, 2.1.1). */
export const declarationPath: string = 'bagit.txt';
/** Path inside a bag of the lines about it (2.2.2). */
export const infoPath: string = 'bag-info.txt';
/** Path inside a bag of the list of its payload (2.1.3). */
export const manifestPath: string = 'manifest-sha256.txt';
/** Path inside a bag of the list of its tag files (2.2.1). */
export const tagManifestPath: string = 'tagmanifest-sha256.txt';
/** The folder of the payload, with its slash (2.1.2). */
export const payloadFolder: string = 'data/';

/** The tag files of a bag in the order in which they are laid, before the payload. */
export const tagPaths: readonly string[] = [
  declarationPath,
  infoPath,
  manifestPath,
  tagManifestPath,
];

/** The whole of bagit.txt (2.1.1). */
export const declaration: string =
  'BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n';

/** Payload-Oxum (2.2.2): bytes of the payload, a point, number of its files. */
export function payloadSum(sizes: readonly number[]): string {
  return `${sizes.reduce((sum, size) => sum + size, 0)}.${sizes.length}`;
}

/** Name of the line of bag-info.txt that holds it. */
export const sumLabel: string = 'Payload-Oxum';

/** The tag files of a bag, in the order in which they are laid. `payload` has the paths inside the bag. */
export function tagFilesOf(
  payload: readonly (ManifestLine & { readonly size: number })[],
  info: readonly BagLine[],
): readonly { readonly path: string; readonly bytes: Uint8Array }[] {
  const sum = payloadSum(payload.map(({ size }) => size));
  const listed = [
    { path: declarationPath, bytes: encoded(declaration) },
    {
      path: infoPath,
      bytes: encoded(writeInfo([...info, { label: sumLabel, value: sum }])),
    },
    { path: manifestPath, bytes: encoded(writeManifest(payload)) },
  ];
  const lines = listed.map(({ path, bytes }) => ({ path, sha256: digest(bytes) }));
  return [...listed, { path: tagManifestPath, bytes: encoded(writeManifest(lines)) }];
}

/** Text as a tag file holds it. */
export const encoded = (text: string): Uint8Array => new TextEncoder().encode(text);
