import type { Restraint, Support } from '../../statics/index.ts';

/** A restraint with its support. */
export interface SupportRestraint {
  readonly support: Support;
  readonly index: number;
  readonly restraint: Restraint;
}

/** Every restraint of a member, support by support. */
export function reactionsIn(supports: readonly Support[]): readonly SupportRestraint[] {
  return supports.flatMap((support) =>
    support.restraints.map((restraint, index) => ({ support, index, restraint })),
  );
}
