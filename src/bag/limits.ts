/** Bytes of a zip at most, and of its files unpacked together: 4 GiB, beyond which a zip needs fields of 64 bits that `writeBag` does not write. */
export const greatestBag: number = 0xffff_ffff;

/** Files at most. A member has one file; no package comes near, and a directory of so many is read in a second. */
export const mostFiles: number = 10_000;

/** Bytes of one file that is read whole, at most: 512 MiB, a signed PDF with pictures many times over. */
export const greatestFile: number = 536_870_912;

/** Bytes of a manifest or of bag-info.txt at most: ten thousand files with the longest of paths fit. */
export const greatestTagFile: number = 16_777_216;

/** Bytes of a folder that is read whole, at most: definition files of 1 MB and the pictures of the title block. */
export const greatestFolder: number = 268_435_456;

/** Bytes of one path in UTF-8 at most; file systems end at 4096 or before. */
export const longestPath: number = 1024;

/** A deflated file may unpack to this many times its size; text reaches 30, a bomb 1000 (RFC 1951 allows 1032). */
export const greatestRatio: number = 200;

/** Bytes that a deflated file may unpack to whatever its ratio: a short file of blanks is no bomb. */
export const harmlessSize: number = 1_048_576;
