/**
 * Keeps what was issued, and proves it unchanged.
 *
 * ```
 * folder ────────── archiveProject ──▶ one bag: PDF, results.json, inputs, record.json      never overwritten
 * bag, PDF ──────── verify ──────────▶ Verification: whole? inside equal outside? computed the same today?
 * folders, bags ─── register ────────▶ one row a package, and which of them another supersedes
 * folder, bag, PDF  openPackage ─────▶ a world and a folder in it, so that compare and verify can work it
 * ```
 *
 * The payload of a bag, under `data/`:
 *
 * ```
 * package.pdf          as bound                  package.signed.pdf   as signed, where there is one
 * results.json         every figure              check-prints.pdf     marks on worked steps, of an issued package
 * record.json          what a machine can read   definition/…         the project folder, every file that was read
 * licences/…           of the fonts inside
 * ```
 *
 * An issued bag is never touched again: what replaces it says so, and the register turns that round.
 * Nothing here writes but `archive`, and that only a file that was not there.
 *
 * @module
 */
export { archiveProject } from './archive-project.ts';
export type { Archived, ArchiveOptions } from './archive-project.ts';
export { keepBag } from './bag-place.ts';
export { incompleteRevision } from './incomplete-revision.ts';
export type {
  ArchiveRecord,
  RecordedPerson,
  RecordedRatio,
  RecordedRevision,
} from './record.ts';
export { openPackage } from './open-package.ts';
export type { OpenedPackage } from './opened-package.ts';
export { register } from './register/register.ts';
export type { Register } from './register/register.ts';
export type {
  BoundState,
  RegisteredPerson,
  RegisterRow,
} from './register/register-row.ts';
export { registerCsv } from './register/register-csv.ts';
export { registerJson } from './register/register-json.ts';
export { readRecord, writeRecord } from './record-file.ts';
export type { RecordReading } from './record-file.ts';
export { recordOf } from './record-of.ts';
export type { Recorded } from './record-of.ts';
export type { Damage, Difference, Verification } from './verification.ts';
export { bagsBelow } from './verifying/bags-below.ts';
export type { BagsBelow } from './verifying/bags-below.ts';
export { verify } from './verifying/verify.ts';
export type { PresentProgram } from './verifying/subject.ts';
