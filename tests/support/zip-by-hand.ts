import { crc32, deflateRawSync } from 'node:zlib';

/** A file to be laid in a zip by hand, with whatever is to be wrong about it. */
export interface HandFile {
  readonly name: string | Buffer;
  readonly bytes: string | Uint8Array;
  /** Name in front of the bytes, where it is another than in the directory. */
  readonly localName?: string;
  readonly isDeflated?: boolean;
  /** What is laid as the deflated bytes, whatever it be. */
  readonly packed?: Uint8Array;
  /** Size unpacked that is claimed: in both places, or in front of the bytes alone. */
  readonly claimed?: number;
  readonly claimedInFront?: number;
  /** Mode as Unix writes it, 0o120777 for a link. */
  readonly mode?: number;
  readonly flags?: number;
  readonly method?: number;
  readonly extra?: Buffer;
  /** Where the directory says that the file begins. */
  readonly offset?: number;
}

/** A zip with exactly these files, in this order (PKWARE APPNOTE 4.3). */
export function zipByHand(
  files: readonly HandFile[],
  claimedCount?: number,
): Uint8Array {
  const heads: Buffer[] = [];
  const lines: Buffer[] = [];
  let at = 0;
  for (const file of files) {
    const packed = packedBytes(file);
    const size = file.claimed ?? Buffer.from(file.bytes).length;
    const name = Buffer.from(file.name);
    const localName = Buffer.from(file.localName ?? file.name);
    const fields = (unpacked: number, length: number): Buffer => {
      const data = Buffer.alloc(26);
      data.writeUInt16LE(20, 0);
      data.writeUInt16LE(file.flags ?? 0x800, 2);
      data.writeUInt16LE(file.method ?? (isPacked(file) ? 8 : 0), 4);
      data.writeUInt32LE(0x00226000, 6);
      data.writeUInt32LE(crc32(Buffer.from(file.bytes)), 10);
      data.writeUInt32LE(packed.length, 14);
      data.writeUInt32LE(unpacked, 18);
      data.writeUInt16LE(length, 22);
      return data;
    };
    const tail = Buffer.alloc(14);
    tail.writeUInt32LE(((file.mode ?? 0o100644) << 16) >>> 0, 6);
    tail.writeUInt32LE(file.offset ?? at, 10);
    const line = fields(size, name.length);
    line.writeUInt16LE(file.extra?.length ?? 0, 24);
    const head = Buffer.concat([
      Buffer.from('PK\x03\x04'),
      fields(file.claimedInFront ?? size, localName.length),
      localName,
      packed,
    ]);
    heads.push(head);
    lines.push(
      Buffer.concat([
        Buffer.from('PK\x01\x02\x3f\x03', 'latin1'),
        line,
        tail,
        name,
        file.extra ?? Buffer.alloc(0),
      ]),
    );
    at += head.length;
  }
  const directory = Buffer.concat(lines);
  const end = Buffer.alloc(22);
  end.write('PK\x05\x06', 'latin1');
  end.writeUInt16LE(claimedCount ?? files.length, 8);
  end.writeUInt16LE(claimedCount ?? files.length, 10);
  end.writeUInt32LE(directory.length, 12);
  end.writeUInt32LE(at, 16);
  return Uint8Array.from(Buffer.concat([...heads, directory, end]));
}

const isPacked = ({ isDeflated, packed }: HandFile): boolean =>
  isDeflated === true || packed !== undefined;

function packedBytes({ packed, bytes, isDeflated }: HandFile): Buffer {
  if (packed !== undefined) return Buffer.from(packed);
  return isDeflated === true ? deflateRawSync(bytes) : Buffer.from(bytes);
}
