import { openBag, proveBag, type OpenBag } from '../../bag/index.ts';
import { payload } from '../payload-paths.ts';
import type { ArchiveRecord } from '../record.ts';
import { readRecord } from '../record-file.ts';
import type { Damage, Verification } from '../verification.ts';
import { attachmentDamage } from './attachment-damage.ts';
import { compareSigned } from './compare-signed.ts';
import { isObject, readJson, type Json } from './json.ts';
import { readWhole, readWithin } from './read-kept.ts';
import { recordDamage } from './record-damage.ts';
import type { Subject } from './subject.ts';
import { workAgain } from './work-again.ts';

/** Verifies a bag: proves it, holds what is inside the PDF against what lies beside it, and works it again. */
export async function verifyBag(subject: Subject): Promise<Verification> {
  const { world, path, sha256 } = subject;
  const { value: bag, diagnostics } = await openBag(world, path);
  if (bag === undefined) {
    const isTorn = diagnostics.some(({ code }) => code === 'bag-unreadable');
    return {
      ...found({ path, sha256 }, isTorn ? 'damaged' : 'unreadable'),
      damage: diagnostics.map(({ message }) => ({ message })),
    };
  }
  try {
    return await verifyOpened(subject, bag);
  } finally {
    bag.close();
  }
}

function found(
  about: Pick<Verification, 'path' | 'sha256' | 'identity' | 'versions'>,
  verdict: Verification['verdict'],
): Verification {
  return {
    ...about,
    kind: 'bag',
    verdict,
    damage: [],
    differences: [],
    remarks: [],
  };
}

async function verifyOpened(
  { world, path, sha256, program }: Subject,
  bag: OpenBag,
): Promise<Verification> {
  const damage = await proveBag(bag);
  // Read before anything is decided: a damaged bag too is told by its number, where that can be read.
  const record = await recordIn(bag);
  const about = {
    path,
    sha256,
    ...(record === undefined ? {} : aboutRecord(record, program.version)),
  };
  const damaged = (what: readonly Damage[]): Verification => ({
    ...found(about, 'damaged'),
    damage: what,
  });
  if (damage.length > 0) return damaged(damage.map(asDamage));
  if (record === undefined)
    return damaged([inPath(payload.record, 'it is not as this program writes it')]);
  const results = await resultsIn(bag);
  if ('message' in results) return damaged([results]);
  const inside = [
    ...recordDamage(record, results.value, bag.files),
    ...(await insideDamage(bag)),
  ];
  if (inside.length > 0) return damaged(inside);
  const files = await readWithin(bag, payload.definition);
  if ('message' in files) return damaged([files]);
  const signed = await compareSigned(bag, record);
  const { found: worked } = workAgain({
    world,
    files: files.files,
    archived: results.value,
    isAsIs: record.asIs.length > 0,
    status: record.status,
  });
  return {
    ...found(about, 'intact'),
    ...worked,
    ...(signed === undefined ? {} : { signed }),
    remarks: [
      ...record.asIs.map((why) => `archived as it is: ${why}`),
      ...worked.remarks,
    ],
  };
}

/** What travels inside the PDF against the same files beside it. */
async function insideDamage(bag: OpenBag): Promise<readonly Damage[]> {
  const pdf = await readWhole(bag, payload.package);
  if ('message' in pdf) return [pdf];
  const kept = bag.files
    .map(({ path }) => path)
    .filter((path) => path.startsWith(payload.definition))
    .map((path) => path.slice(payload.definition.length));
  return await attachmentDamage(pdf.bytes, {
    due: [...kept, 'results.json'],
    read: (name) =>
      readWhole(
        bag,
        name === 'results.json' ? payload.results : `${payload.definition}${name}`,
      ),
  });
}

async function recordIn(bag: OpenBag): Promise<ArchiveRecord | undefined> {
  const read = await readWhole(bag, payload.record);
  if ('message' in read) return undefined;
  const reading = readRecord(new TextDecoder().decode(read.bytes));
  return reading.kind === 'record' ? reading.record : undefined;
}

async function resultsIn(bag: OpenBag): Promise<{ readonly value: Json } | Damage> {
  const read = await readWhole(bag, payload.results);
  if ('message' in read) return read;
  const json = readJson(read.bytes);
  if ('problem' in json)
    return inPath(payload.results, `it is no JSON: ${json.problem}`);
  return isObject(json.value)
    ? json
    : inPath(payload.results, 'it holds no results of this program');
}

function aboutRecord(
  { project, revision, status, program }: ArchiveRecord,
  present: string,
): Required<Pick<Verification, 'identity' | 'versions'>> {
  const { number, title } = project;
  return {
    identity: { number, title, revision: revision?.mark ?? null, status },
    versions: { issued: program.version, present },
  };
}

const inPath = (path: string, message: string): Damage => ({ path, message });

const asDamage = ({ path, message }: Damage): Damage => ({
  ...(path === undefined ? {} : { path }),
  message,
});
