import type { Code, Diagnostic } from '../../diagnostics/index.ts';

/** An error about the folder as a whole, or about a file that has no text to point into. */
export function folderError(code: Code, message: string, hint: string): Diagnostic {
  return { severity: 'error', code, message, hints: [hint] };
}

/** A remark of the same kind; the hint may be left out. */
export function folderRemark(code: Code, message: string, hint?: string): Diagnostic {
  const hints = hint === undefined ? [] : [hint];
  return { severity: 'remark', code, message, hints };
}
