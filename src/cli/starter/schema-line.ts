/**
 * The comment by which editors find the schema of a YAML file, a path from the file itself; the
 * YAML language server of several editors reads it.
 */
export function schemaLine(path: string): string {
  return `# yaml-language-server: $schema=${path}`;
}
