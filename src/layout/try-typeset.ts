/**
 * Runs a step of typesetting; undefined where the equation cannot be set. Expressions of the
 * report hold names that users chose, and a letter of theirs may have no glyph in the equation
 * faces: whoever calls this sets the equation's linear text instead, and says so.
 */
export function tryTypeset<Result>(step: () => Result): Result | undefined {
  try {
    return step();
  } catch (fault) {
    if (isTypesetFault(fault)) return undefined;
    throw fault;
  }
}

function isTypesetFault(fault: unknown): boolean {
  return (
    typeof fault === 'object' &&
    fault !== null &&
    'kind' in fault &&
    fault.kind === 'typeset-fault'
  );
}

/** What is remarked of an equation that is set as plain text. */
export function plainEquation(linear: string): string {
  return `The equation “${linear}” has a character that the equation faces lack; it is set as plain text.`;
}
