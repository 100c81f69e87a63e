import { byForm } from './shape/choice.ts';
import { mapOf, type Named } from './shape/map-of.ts';
import type { Shape } from './shape/shape.ts';
import { nameOf, text } from './shape/text.ts';

/** A member's mark: no dot, dash or space, so that `B2.A.5` is point A.5 of member B2. */
export const memberMark: Shape<string> = nameOf(
  'a mark',
  /^[^\s.,:;/\\#+*&<>"'`()[\]{}-]{1,20}$/u,
  'marks are short and hold no dot, dash, space or other punctuation',
);

/** A load case's mark: no spaces, no + - or *, and no digit first, so that `1.2D` reads as 1.2 times D. */
export const caseMark: Shape<string> = nameOf(
  "a case's mark",
  /^[^\s.,:;/\\#+*&<>"'`()[\]{}\d-][^\s.,:;/\\#+*&<>"'`()[\]{}-]{0,19}$/u,
  'marks of cases are short, begin with a letter and hold no space, +, - or *',
);

/** A deflection limit as written, `L/360` or a length, by the entry that it is for. */
export type LimitEntry = string;

/** `deflection_limits`, of the project and of a member. */
export const limitsMap: Shape<readonly Named<LimitEntry>[]> = mapOf(
  text,
  byForm({ text }),
  'a map of cases and limits',
);
