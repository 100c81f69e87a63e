/** Something that is not as it was issued. */
export interface Damage {
  /** Path inside the bag, or the attachment's name inside the PDF; absent where it is the whole. */
  readonly path?: string;
  /** A sentence for the user. */
  readonly message: string;
}

/** A figure that the present version computes otherwise than it was archived. */
export interface Difference {
  /** Mark of the member; empty for what concerns the project as a whole. */
  readonly member: string;
  /** Which figure, a phrase: `result L, moment max`, `check deflection L A to B, ratio`; or the whole that is missing: `result L`, `the member`. */
  readonly what: string;
  /** As archived, with its unit; absent where the archive does not have it. */
  readonly archived?: string;
  /** As computed now; absent where the present version does not give it. */
  readonly computed?: string;
  /** |computed − archived| over the scale of its kind; absent for what is no number. */
  readonly share?: number;
}

/** What was found about one bag or PDF. */
export interface Verification {
  readonly path: string;
  readonly kind: 'bag' | 'pdf';
  /**
   * `intact`: as issued, and computed the same. `differs`: as issued, but this version computes something
   * else. `not recomputed`: as issued, but its inputs cannot be worked (they were archived so). `damaged`:
   * not as issued, or torn. `unreadable`: no bag or PDF of this program's, or one that was refused as dangerous.
   */
  readonly verdict: 'intact' | 'differs' | 'not recomputed' | 'damaged' | 'unreadable';
  /** SHA-256 of the whole file, as the register gives it; absent where it could not be read. */
  readonly sha256?: string;
  /** Number, title, revision and status, where they could be read. */
  readonly identity?: {
    readonly number: string | null;
    readonly title: string;
    readonly revision: string | null;
    readonly status: string | null;
  };
  /** Version that issued it and version that worked it again. */
  readonly versions?: { readonly issued: string; readonly present: string };
  readonly damage: readonly Damage[];
  readonly differences: readonly Difference[];
  /** How many figures were compared, and the greatest share by which any of them differs. */
  readonly compared?: { readonly figures: number; readonly greatest: number };
  /** What is told of the signed PDF beside the bound one, apart from the verdict; absent where there is none. */
  readonly signed?: {
    readonly comparison: 'same start' | 'not compared' | 'not as recorded';
    readonly message: string;
  };
  /** Remarks that change no verdict: archived as it is, a signed copy that could not be compared, and such. */
  readonly remarks: readonly string[];
}

/** A figure agrees where it differs by no more than this share of the greatest of its kind on the member. */
export const agreementTolerance: number = 1e-9;
