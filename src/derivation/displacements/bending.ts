import type { Expression, Statement } from '../../equation/index.ts';

/** A stretch of the member over which the elastic curve is worked, stations in metres. */
export interface Worked {
  readonly from: number;
  readonly to: number;
}

/**
 * One term of E I v″ in singularity functions: size · ⟨x − at⟩ⁿ / n!, so that each integration raises n
 * by one and changes nothing else.
 */
export interface BendingTerm {
  readonly at: number;
  /** n: 0 for moments, 1 for forces, 2 for uniform load, 3 for load that varies. */
  readonly order: number;
  /** N·m, N, N/m or N/m², signed: positive sags. */
  readonly size: number;
  /** In letters, with the sign that stands before it. */
  readonly symbolic: { readonly sign: 1 | -1; readonly of: Expression };
  /** |size| in figures, `2.4 kip` or `0.5 (8.4 kip)`. */
  readonly numeric: Expression;
}

/** E I v″ of one case over a stretch. */
export interface Bending extends Worked {
  /** Flexural stiffness at the start, to which all moments are brought, N·m². */
  readonly EI: number;
  readonly terms: readonly BendingTerm[];
  /** How fast each load that varies changes along the member. */
  readonly rates: readonly Statement[];
}

/** A term from its letters, its figures and the sign that its letters carry. */
export function termOf(
  {
    at,
    order,
    sense,
  }: { readonly at: number; readonly order: number; readonly sense: 1 | -1 },
  of: {
    readonly symbolic: Expression;
    readonly numeric: Expression;
    readonly size: number;
  },
): BendingTerm {
  return {
    at,
    order,
    size: sense * of.size,
    symbolic: { sign: sense, of: of.symbolic },
    numeric: of.numeric,
  };
}
