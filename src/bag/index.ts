/**
 * A BagIt bag in a zip: written, read, proved.
 *
 * ```
 * KeptFile[] ── writeBag ──▶ bytes          equal files, equal bytes, on any machine and in any time zone
 * path ──────── openBag ───▶ OpenBag        refuses what could do harm: names, sizes, links, bombs
 * OpenBag ───── proveBag ──▶ BagFinding[]   complete, valid, every byte as it was laid; empty for a whole bag
 * OpenBag ───── payloadOf ─▶ files          one folder of the payload, to be worked as a project
 * ```
 *
 * The layout is RFC 8493: `bagit.txt`, `bag-info.txt`, `manifest-sha256.txt`, `tagmanifest-sha256.txt` and
 * the payload under `data/`, files stored, not deflated, so that what is kept can be read with a pencil
 * and a hexadecimal table. No folder stands around them. Reading goes piece by piece.
 *
 * @module
 */
export type { BagContents, BagFinding, BagLine, KeptFile, OpenBag } from './bag.ts';
export { openBag } from './open-bag.ts';
export { payloadOf } from './payload-of.ts';
export { proveBag } from './prove-bag.ts';
export { pathFaults } from './safe-paths.ts';
export type { PathFault } from './safe-paths.ts';
export { writeBag } from './write-bag.ts';
