import type { Expression, Statement } from '../../equation/index.ts';
import type { Place } from './shared.ts';

/** One stretch between key stations, with its functions. */
export interface SegmentFact {
  readonly from: Place;
  readonly to: Place;
  /** V(x), M(x), and N(x) where there is any, a line each. */
  readonly functions: Statement;
}

/** Facts of the internal forces of one case. */
export type InternalStep =
  | {
      readonly kind: 'segments';
      readonly segments: readonly SegmentFact[];
      readonly form: 'forces' | 'running';
    }
  | {
      readonly kind: 'zero-shear';
      readonly places: readonly {
        readonly from: Place;
        readonly to: Place;
        readonly statement: Statement;
      }[];
    }
  | {
      readonly kind: 'areas';
      /** Units of the columns, as text: cells are numbers without them. */
      readonly units: { readonly force: string; readonly moment: string };
      readonly rows: readonly {
        readonly place: Place;
        readonly shearLeft: Expression;
        readonly shearRight: Expression;
        readonly momentLeft: Expression;
        readonly momentRight: Expression;
        /** Area of the shear diagram up to the next row. */
        readonly area?: Expression;
      }[];
      readonly hasCouples: boolean;
    }
  | { readonly kind: 'extremes'; readonly statement: Statement };
