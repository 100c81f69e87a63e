import type { Diagnostic } from '../../src/diagnostics/index.ts';
import { openReading } from '../../src/project/reading.ts';
import type { Shape } from '../../src/project/shape/shape.ts';
import { readYaml } from '../../src/project/yaml/read-yaml.ts';
import type { Tree } from '../../src/project/yaml/tree.ts';

/** What a shape makes of a YAML text: the value, and findings as `code start-end message`. */
export function readAs<T>(
  shape: Shape<T>,
  text: string,
): { readonly value: T | undefined; readonly findings: readonly string[] } {
  const found: Diagnostic[] = [];
  const reading = openReading({ path: 'f.yaml', text }, found);
  const tree = readYaml(reading);
  const value = tree === undefined ? undefined : shape.read(tree, reading);
  return { value, findings: found.map((one) => inShort(one)) };
}

/** The tree of a YAML text, and findings in the same form. */
export function treeOf(text: string): {
  readonly tree: Tree | undefined;
  readonly findings: readonly string[];
} {
  const found: Diagnostic[] = [];
  const tree = readYaml(openReading({ path: 'f.yaml', text }, found));
  return { tree, findings: found.map((one) => inShort(one)) };
}

const inShort = ({ code, span, message }: Diagnostic): string =>
  `${code} ${span?.start ?? ''}-${span?.end ?? ''} ${message}`;
