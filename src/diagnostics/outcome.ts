import type { Diagnostic } from './diagnostic.ts';

/** A result together with everything noticed on the way; `value` is absent when errors stopped it. */
export interface Outcome<T> {
  readonly value?: T;
  readonly diagnostics: readonly Diagnostic[];
}

/** True when a list holds at least one error, remarks not counted. */
export function hasErrors(diagnostics: readonly Diagnostic[]): boolean {
  return diagnostics.some((diagnostic) => diagnostic.severity === 'error');
}
