import type { RegisterRow } from './register-row.ts';

/** A register as JSON, format 1: `packages`, a row each, null where a package does not say. */
export function registerJson(rows: readonly RegisterRow[]): string {
  return `${JSON.stringify({ format: 1, packages: rows }, null, 2)}\n`;
}
