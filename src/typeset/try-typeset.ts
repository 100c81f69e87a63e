/** An equation as TeX and as linear text. */
export interface WrittenEquation {
  readonly tex: string;
  readonly linear: string;
}

/**
 * Runs a step of typesetting; undefined where the equation cannot be set as it is meant. Expressions
 * hold names that users chose, and a letter of theirs may have no glyph in the equation faces: the
 * typesetter then refuses it, or its TeX has a question mark that the equation has not. Whoever
 * calls this sets the linear text instead, and says so.
 */
export function tryTypeset<Result>(
  equations: readonly WrittenEquation[],
  step: () => Result,
): Result | undefined {
  if (equations.some(hasLostLetter)) return undefined;
  try {
    return step();
  } catch (fault) {
    if (isTypesetFault(fault)) return undefined;
    throw fault;
  }
}

function hasLostLetter({ tex, linear }: WrittenEquation): boolean {
  return tex.includes('?') && !linear.includes('?');
}

function isTypesetFault(fault: unknown): boolean {
  return (
    typeof fault === 'object' &&
    fault !== null &&
    'kind' in fault &&
    fault.kind === 'typeset-fault'
  );
}
