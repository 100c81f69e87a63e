import { basename, dirname, join, resolve } from 'node:path';
import type { Diagnostic } from '../diagnostics/index.ts';
import type { World } from '../world/index.ts';

/** Where a package and its figures go. */
export interface OutputPaths {
  readonly pdf: string;
  readonly json: string;
}

/** Why a file of the package cannot be written where it was asked for, found before anything is worked; undefined where it seems that it can. */
export function outputProblem(
  world: World,
  folder: string,
  { pdf, json }: OutputPaths,
): Diagnostic | undefined {
  if (resolve(pdf) === resolve(json))
    return writeFailed(pdf, 'the PDF and its figures cannot have one name');
  for (const path of [pdf, json]) {
    if (/\.(ya?ml|hbs)$/iu.test(path))
      return writeFailed(
        path,
        'a file of that kind is a definition, and is never overwritten',
      );
    if (world.list(path) !== undefined)
      return writeFailed(path, 'there is a folder of that name');
    const target = dirname(path);
    // Where the project folder itself is missing, reading it says so better.
    if (resolve(target) !== resolve(folder) && world.list(target) === undefined)
      return writeFailed(
        path,
        `there is no folder ${target}`,
        `make the folder ${target} first, or choose another place`,
      );
  }
  return undefined;
}

/** Where the check prints of an issued package go: beside its PDF, and with its name where that is another. */
export function checkPrintsBeside(pdf: string): string {
  const name = basename(pdf).replace(/\.pdf$/iu, '');
  const own = name === 'package' ? 'check-prints.pdf' : `${name}.check-prints.pdf`;
  return join(dirname(pdf), own);
}

/** What came of writing. */
export interface Written {
  /** Empty where all went well. */
  readonly failed: readonly Diagnostic[];
  /** Whether the package was written and its figures were not. */
  readonly isHalfWritten: boolean;
}

/** Writes the files, the package first: where a disk is full, nothing has been replaced yet. */
export function writeOutputs(
  world: World,
  { pdf, json }: OutputPaths,
  bytes: {
    readonly pdf: Uint8Array;
    readonly json: string;
    readonly checkPrints?: Uint8Array;
  },
): Written {
  const sheets = world.write(pdf, bytes.pdf);
  if ('refused' in sheets)
    return {
      failed: [writeFailed(pdf, sheets.refused, elsewhere('-o'))],
      isHalfWritten: false,
    };
  const figures = world.write(json, new TextEncoder().encode(bytes.json));
  if ('refused' in figures)
    return {
      failed: [writeFailed(json, figures.refused, elsewhere('--json'))],
      isHalfWritten: true,
    };
  if (bytes.checkPrints === undefined) return { failed: [], isHalfWritten: false };
  const beside = checkPrintsBeside(pdf);
  const prints = world.write(beside, bytes.checkPrints);
  return 'refused' in prints
    ? { failed: [writeFailed(beside, prints.refused)], isHalfWritten: true }
    : { failed: [], isHalfWritten: false };
}

function elsewhere(option: string): string {
  return `choose another place with ${option} FILE, or mend what the message names`;
}

function writeFailed(path: string, why: string, hint?: string): Diagnostic {
  return {
    severity: 'error',
    code: 'write-failed',
    message: `${basename(path)} cannot be written to ${dirname(path)}: ${why}`,
    hints: [hint ?? 'choose another name or place'],
  };
}
