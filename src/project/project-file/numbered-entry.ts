import type { Assumption, Reference } from '../definitions.ts';
import { optional, optionalOr, required } from '../shape/field.ts';
import { objectOf } from '../shape/object.ts';
import type { Shape } from '../shape/shape.ts';
import { nameOf, text, truth } from '../shape/text.ts';

const id: Shape<string> = nameOf(
  'an id',
  /^[^\s,[\]{}]{1,20}$/u,
  'ids are short and hold no space or comma',
);

/** One entry of `assumptions:` of project.yaml. */
export const assumptionEntry: Shape<Assumption> = objectOf<Assumption>(
  'an assumption: a map of id and text',
  {
    id: required(id, 'its short name'),
    text: required(text, 'the assumption'),
    basis: optional(text, 'what it rests on'),
    confirmed: optionalOr(truth, false, 'whether it has been confirmed'),
    track: optional(text, 'where its confirmation is tracked'),
  },
);

/** One entry of `references:` of project.yaml. */
export const referenceEntry: Shape<Reference> = objectOf<Reference>(
  'a reference: a map of id and text',
  {
    id: required(id, 'its short name'),
    text: required(text, 'the document'),
  },
);
