import type { OpenFile } from '../world/index.ts';

/** A file to be kept: its path inside the payload, without `data/`, with forward slashes. */
export interface KeptFile {
  readonly path: string;
  readonly bytes: Uint8Array;
}

/** A line of bag-info.txt (RFC 8493, 2.2.2): a label such as `Bagging-Date` and its value. */
export interface BagLine {
  readonly label: string;
  readonly value: string;
}

/** What goes into a bag. */
export interface BagContents {
  /** In any order; the bag is laid out in the order of code units. Two files of one path are an exception. */
  readonly payload: readonly KeptFile[];
  /** Lines of bag-info.txt in their order; `Payload-Oxum` is added. */
  readonly info: readonly BagLine[];
}

/** A bag found to be a sound zip whose names can do no harm; its contents are not proved yet. */
export interface OpenBag {
  /** Every file of the bag with its path inside it (`data/package.pdf`, `bagit.txt`) and its size in bytes, in the zip's order. */
  readonly files: readonly { readonly path: string; readonly size: number }[];
  /** Lines of bag-info.txt, in their order. */
  readonly info: readonly BagLine[];
  /** The bytes of one file, by its path inside the bag; undefined where the bag has none of that path. Throws for a file that cannot be read as the zip says. */
  readonly read: (path: string) => Promise<Uint8Array | undefined>;
  /** SHA-256 of one file, read piece by piece: it never stands in memory whole. */
  readonly digestOf: (path: string) => Promise<string | undefined>;
  /** One file piece by piece, undefined where the bag has none of that path. Throws on the way as `read` does. */
  readonly piecesOf: (path: string) => AsyncIterable<Uint8Array> | undefined;
  /** The zip itself, byte by byte. */
  readonly zip: Pick<OpenFile, 'size' | 'readAt'>;
  /** Lets go of the zip; nothing can be read afterwards. */
  readonly close: () => void;
}

/** What is wrong with a bag. */
export interface BagFinding {
  /** `container`: the zip around the files is not as it was written, though every file may be. */
  readonly kind:
    'missing' | 'added' | 'altered' | 'manifest' | 'declaration' | 'container';
  /** Path inside the bag, where it is one file's. */
  readonly path?: string;
  /** A sentence for the user: what was expected, what is there. */
  readonly message: string;
}
