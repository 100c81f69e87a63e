/**
 * A check of bags that shares nothing with the program: a small reader of zips and the rules of RFC 8493 as
 * they stand there, section by section. It answers every rule that is broken; nothing for a valid bag.
 */
import { createHash } from 'node:crypto';
import { inflateRawSync } from 'node:zlib';

/** A file in a zip: how it is packed, and its bytes unpacked. */
export interface BookFile {
  readonly path: string;
  readonly method: number;
  readonly bytes: Buffer;
}

/** Files of a zip by its central directory (PKWARE APPNOTE 4.3.12 and 4.3.16), in its order. */
export function filesOfZip(given: Uint8Array): readonly BookFile[] {
  const zip = Buffer.from(given);
  const end = zip.lastIndexOf(Buffer.from('PK\x05\x06', 'latin1'));
  if (end < 0) throw new Error('no end of central directory');
  const count = zip.readUInt16LE(end + 10);
  let at = zip.readUInt32LE(end + 16);
  return Array.from({ length: count }, () => {
    if (zip.readUInt32LE(at) !== 0x02014b50) throw new Error('no directory header');
    const method = zip.readUInt16LE(at + 10);
    const packed = zip.readUInt32LE(at + 20);
    const name = zip.readUInt16LE(at + 28);
    const local = zip.readUInt32LE(at + 42);
    const path = zip.toString('utf8', at + 46, at + 46 + name);
    const start =
      local + 30 + zip.readUInt16LE(local + 26) + zip.readUInt16LE(local + 28);
    const bytes = zip.subarray(start, start + packed);
    at += 46 + name + zip.readUInt16LE(at + 30) + zip.readUInt16LE(at + 32);
    return { path, method, bytes: method === 8 ? inflateRawSync(bytes) : bytes };
  });
}

/** Every rule of RFC 8493 that the bag at the root of a zip breaks, with its section. */
export function brokenRules(zip: Uint8Array): readonly string[] {
  const files = new Map(filesOfZip(zip).map(({ path, bytes }) => [path, bytes]));
  return [
    ...declarationRules(files),
    ...payloadRules(files),
    ...tagRules(files),
    ...infoRules(files),
  ];
}

type Files = ReadonlyMap<string, Buffer>;

const broken = (isBroken: boolean, rule: string): readonly string[] =>
  isBroken ? [rule] : [];

/** 2.1.1: two lines, version first, no byte order mark. */
function declarationRules(files: Files): readonly string[] {
  const text = files.get('bagit.txt')?.toString('utf8');
  return [
    ...broken(text === undefined, '2.1.1: bagit.txt is required'),
    ...broken(
      text !== undefined &&
        !/^BagIt-Version: 1\.0\r?\n?\nTag-File-Character-Encoding: UTF-8\r?\n?$/.test(
          text,
        ),
      '2.1.1: bagit.txt must consist of exactly two lines',
    ),
  ];
}

/** Lines of a manifest, 2.1.3: checksum, blanks, path with CR, LF and % percent-encoded. */
function linesOf(files: Files, name: string): ReadonlyMap<string, string> | undefined {
  const text = files.get(name)?.toString('utf8');
  if (text === undefined) return undefined;
  const lines = text.split(/\r\n|\n|\r/).filter((line) => line !== '');
  return new Map(
    lines.map((line) => {
      const [, sum = '', path = ''] = /^([0-9a-f]{64})[ \t]+(.*)$/i.exec(line) ?? [];
      return [
        path.replace(/%(0A|0D|25)/gi, (code) => decodeURIComponent(code)),
        sum.toLowerCase(),
      ];
    }),
  );
}

const isRight = (files: Files, path: string, sum: string): boolean => {
  const bytes = files.get(path);
  return (
    bytes !== undefined && createHash('sha256').update(bytes).digest('hex') === sum
  );
};

/** 2.1.2, 2.1.3, 3: a payload folder, and a manifest that lists each of its files once and no other. */
function payloadRules(files: Files): readonly string[] {
  const listed = linesOf(files, 'manifest-sha256.txt');
  if (listed === undefined) return ['2.1.3: a payload manifest is required'];
  const payload = [...files.keys()].filter((path) => path.startsWith('data/'));
  return [
    ...payload.flatMap((path) => broken(!listed.has(path), `3: ${path} is not listed`)),
    ...[...listed].flatMap(([path, sum]) => [
      ...broken(!path.startsWith('data/'), `2.1.3: ${path} is no payload`),
      ...broken(!isRight(files, path, sum), `3: ${path} is not as listed`),
    ]),
  ];
}

/** 2.2.1: a tag manifest lists every payload manifest, no payload file, and not itself. */
function tagRules(files: Files): readonly string[] {
  const listed = linesOf(files, 'tagmanifest-sha256.txt');
  if (listed === undefined) return [];
  return [
    ...broken(
      !listed.has('manifest-sha256.txt'),
      '2.2.1: the payload manifest is not listed',
    ),
    ...[...listed].flatMap(([path, sum]) => [
      ...broken(
        /^(data\/|tagmanifest-)/.test(path),
        `2.2.1: ${path} must not be listed`,
      ),
      ...broken(!isRight(files, path, sum), `3: ${path} is not as listed`),
    ]),
  ];
}

/** 2.2.2: a line is a label, a colon, a blank and a value; Payload-Oxum, once, is bytes and files of the payload. */
function infoRules(files: Files): readonly string[] {
  const text = files.get('bag-info.txt')?.toString('utf8') ?? '';
  const lines = text.split('\n').filter((line) => line !== '');
  const payload = [...files].filter(([path]) => path.startsWith('data/'));
  const sum = payload.reduce((total, [, bytes]) => total + bytes.length, 0);
  const said = lines.filter((line) => line.startsWith('Payload-Oxum:'));
  return [
    ...lines.flatMap((line) =>
      broken(!/^([^\s:][^:]*: |[ \t])/.test(line), `2.2.2: no label in ${line}`),
    ),
    ...broken(said.length > 1, '2.2.2: Payload-Oxum must not be repeated'),
    ...said.flatMap((line) =>
      broken(
        line !== `Payload-Oxum: ${sum}.${payload.length}`,
        `2.2.2: ${line} is wrong`,
      ),
    ),
  ];
}
