import type { Theme } from './theme.ts';

/**
 * A theme with some of its values changed. `changes` has the shape of the theme with only those
 * keys that differ, and has been checked against it where it was read (`theme.yaml`).
 */
export function layOver(
  theme: Theme,
  changes: Readonly<Record<string, unknown>>,
): Theme {
  return merged(theme, changes) as Theme;
}

function merged(base: unknown, changes: unknown): unknown {
  if (changes === undefined) return base;
  if (!isGroup(base) || !isGroup(changes)) return changes;
  return Object.fromEntries(
    Object.entries(base).map(([key, value]) => [key, merged(value, changes[key])]),
  );
}

/** A group of values, and no colour (a list of three numbers). */
function isGroup(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
