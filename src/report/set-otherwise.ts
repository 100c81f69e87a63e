import type { Diagnostic } from '../diagnostics/index.ts';

/** What layout could not set as it was asked, as a remark: a sentence becomes a message. */
export function setOtherwise(sentence: string): Diagnostic {
  return {
    severity: 'remark',
    code: 'set-otherwise',
    message: sentence
      .replace(/^\p{Lu}/u, (letter) => letter.toLowerCase())
      .replace(/\.$/u, ''),
    hints: [],
  };
}
