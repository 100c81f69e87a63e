import { digest } from '../world/index.ts';
import type { BagFinding, OpenBag } from './bag.ts';
import { greatestTagFile } from './limits.ts';
import { readManifest } from './manifest.ts';
import { proveContainer } from './prove-container.ts';
import { provePayload } from './prove-payload.ts';
import { proveTags } from './prove-tags.ts';
import { shown } from './safe-paths.ts';
import {
  declaration,
  declarationPath,
  encoded,
  infoPath,
  manifestPath,
  payloadFolder,
  payloadSum,
  sumLabel,
  tagManifestPath,
  tagPaths,
} from './tag-files.ts';
import { weighFiles, type WeighedFile } from './weigh-files.ts';

/**
 * Whether a bag is complete and valid (RFC 8493, 3) and byte for byte what `writeBag` lays: an empty list
 * for a whole bag. Every file is read, piece by piece. One fault gives one finding; the zip around the files is
 * compared only where every file is in order. A bag that was forged throughout, lists, digests and all, is
 * whole: what it is must then be known from elsewhere, by the digest of the bag itself.
 */
export async function proveBag(bag: OpenBag): Promise<readonly BagFinding[]> {
  const { weighed, unreadable } = await weighFiles(bag);
  const files = new Map(weighed.map((file) => [file.path, file]));
  const payload = weighed.filter(({ path }) => path.startsWith(payloadFolder));
  const manifest = await textOf(bag, manifestPath);
  const tagManifest = await textOf(bag, tagManifestPath);
  const listed = readManifest(tagManifest ?? '').lines;
  const about = provePayload(payload, {
    manifest,
    // The tag manifest is a witness that stands apart from the manifest.
    witness: listed.find(({ path }) => path === manifestPath)?.sha256,
  });
  const findings = [
    ...unreadable.map((path): BagFinding => ({
      kind: 'altered',
      path,
      message: `${shown(path)} cannot be unpacked as the zip says`,
    })),
    ...proveDeclaration(files.get(declarationPath)),
    ...about.findings,
    ...proveTags(files, { text: tagManifest, isManifestTold: about.isManifestTold }),
    ...foreign(weighed),
  ];
  const told = withoutUnreadable(findings, unreadable);
  if (told.length > 0) return told;
  const sum = proveSum(bag, payload);
  return sum.length > 0 ? sum : proveContainer(bag.zip, weighed);
}

/** A file that cannot be read is told of once, and not as missing too. */
function withoutUnreadable(
  findings: readonly BagFinding[],
  unreadable: readonly string[],
): readonly BagFinding[] {
  return findings.filter(
    ({ path }, index) =>
      index < unreadable.length || path === undefined || !unreadable.includes(path),
  );
}

/** A tag file as text; undefined where the bag has none, or one that no manifest can be. */
async function textOf(bag: OpenBag, path: string): Promise<string | undefined> {
  const size = bag.files.find((file) => file.path === path)?.size;
  if (size === undefined || size > greatestTagFile) return undefined;
  const bytes = await bag.read(path).catch(() => undefined);
  return bytes === undefined
    ? undefined
    : new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes);
}

function proveDeclaration(file: WeighedFile | undefined): readonly BagFinding[] {
  if (file === undefined || file.sha256 === digest(encoded(declaration))) return [];
  const message = `${declarationPath} does not hold the two lines of a bag of version 1.0 in UTF-8`;
  return [{ kind: 'declaration', path: declarationPath, message }];
}

function foreign(weighed: readonly WeighedFile[]): readonly BagFinding[] {
  return weighed
    .filter(({ path }) => !path.startsWith(payloadFolder) && !tagPaths.includes(path))
    .map(({ path }) => ({
      kind: 'added',
      path,
      message: `${shown(path)} does not belong to the bag`,
    }));
}

function proveSum(
  bag: OpenBag,
  payload: readonly WeighedFile[],
): readonly BagFinding[] {
  const said = bag.info
    .filter(({ label }) => label === sumLabel)
    .map(({ value }) => value);
  const sum = payloadSum(payload.map(({ size }) => size));
  if (said.length === 1 && said[0] === sum) return [];
  const message =
    said.length === 0
      ? `${infoPath} does not say how large the payload is (${sumLabel}: ${sum})`
      : `${infoPath} says ${sumLabel}: ${said.map(shown).join(' and ')}; the payload holds ${sum}`;
  return [{ kind: 'declaration', path: infoPath, message }];
}
