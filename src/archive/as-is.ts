import type { Diagnostic } from '../diagnostics/index.ts';

/** Why a package is not in order: its errors as sentences, each once, that stand on a cover without their places. */
export function asIsReasons(found: readonly Diagnostic[]): readonly string[] {
  const errors = found.filter(({ severity }) => severity === 'error');
  return [
    ...new Set(
      errors.map(({ message, member }) =>
        sentence(member === undefined ? message : `member ${member}: ${message}`),
      ),
    ),
  ];
}

function sentence(words: string): string {
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
}

/** An error that did not keep a package from being archived; remarks stay as they are. */
export function asRemark(found: Diagnostic): Diagnostic {
  if (found.severity === 'remark') return found;
  return {
    ...found,
    severity: 'remark',
    code: 'archived-as-is',
    message: `archived all the same: ${found.message}`,
  };
}
