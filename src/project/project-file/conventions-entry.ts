import type { Stated } from '../definitions.ts';
import { defaulted, optional } from '../shape/field.ts';
import { objectOf } from '../shape/object.ts';
import { placed, type Placed, type Shape } from '../shape/shape.ts';
import { oneOf } from '../shape/text.ts';

/** `conventions:` as written. */
export interface ConventionsEntry {
  readonly moments: Stated<'counterclockwise' | 'clockwise'>;
  readonly horizontal: Stated<'right' | 'left'>;
  readonly vertical: Stated<'up' | 'down'>;
  readonly moment_diagram?: Placed<'compression' | 'tension'>;
}

/** `conventions:` of project.yaml. */
export const conventionsEntry: Shape<ConventionsEntry> = objectOf<ConventionsEntry>(
  'a map of positive senses',
  {
    moments: defaulted(
      oneOf('counterclockwise', 'clockwise'),
      'counterclockwise',
      'which turn counts positive in sums of moments',
    ),
    horizontal: defaulted(
      oneOf('right', 'left'),
      'right',
      'which way counts positive in sums of horizontal forces',
    ),
    vertical: defaulted(
      oneOf('up', 'down'),
      'up',
      'which way counts positive in sums of vertical forces',
    ),
    moment_diagram: optional(
      placed(oneOf('compression', 'tension')),
      'the side on which moments are drawn. Default: compression for us, tension for si',
    ),
  },
);
