/**
 * An equation that cannot be set: a mistake in the TeX, a construct that this room does not
 * know, a character without a glyph. A programmer's mistake, told by exception: the package
 * writes its own TeX and must never drop a sign of it silently.
 */
export class TypesetFault extends Error {
  /** Tells this error from others without `instanceof`. */
  readonly kind: 'typeset-fault' = 'typeset-fault' as const;
  /** What could not be set, in words: `the character "µ" (U+00B5)`. */
  readonly construct: string;
  /** The whole equation, as it was asked for. */
  readonly tex: string;

  /** Names the construct; `inEquation` adds the equation where it is known. */
  constructor(construct: string, tex: string = '') {
    super(
      tex === '' ? `Cannot set ${construct}.` : `Cannot set ${construct} in "${tex}".`,
    );
    this.name = 'TypesetFault';
    this.construct = construct;
    this.tex = tex;
  }
}

/** Refuses a construct from deep inside an equation, where its TeX is not known. */
export function refuse(construct: string): never {
  throw new TypesetFault(construct);
}

/** Runs a step of typesetting and puts the equation's TeX into any fault that it throws. */
export function inEquation<Result>(tex: string, step: () => Result): Result {
  try {
    return step();
  } catch (error) {
    if (error instanceof TypesetFault) throw new TypesetFault(error.construct, tex);
    throw error;
  }
}
