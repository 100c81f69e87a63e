/**
 * A path that a definition names, tidied, where it stays inside the project folder; undefined for
 * one that leaves it (`../`, an absolute path, a drive), whatever it points at.
 */
export function pathWithin(written: string): string | undefined {
  const parts = written.replaceAll('\\', '/').split('/');
  const leaves =
    parts.includes('..') ||
    parts[0] === '' ||
    /^[A-Za-z]:/.test(written) ||
    written.includes('\0');
  if (leaves) return undefined;
  const kept = parts.filter((part) => part !== '.' && part !== '');
  return kept.length === 0 ? undefined : kept.join('/');
}
