import { date } from '../../shape/date.ts';
import { optional, optionalOr, required } from '../../shape/field.ts';
import { listOf, oneOrMore } from '../../shape/list.ts';
import { mapOf, type Named } from '../../shape/map-of.ts';
import { numberFrom } from '../../shape/number.ts';
import { objectOf, type ObjectShape } from '../../shape/object.ts';
import { placed, type Placed, type Shape } from '../../shape/shape.ts';
import { oneOf, text } from '../../shape/text.ts';
import type { Worker, WorkedSigns } from '../../definitions.ts';

/** A step as written in the file. */
export interface StepEntry {
  readonly sum?: Placed<string>;
  readonly value?: Placed<string>;
  readonly part?: Placed<string>;
  readonly loads?: Placed<string>;
  readonly write?: Placed<string>;
  readonly so: readonly Placed<string>[];
  readonly note?: string;
}

/** A closing as written: who, and when. */
export interface ClosingEntry {
  readonly by: string;
  readonly date: string;
}

/** A reply as written. */
export interface ReplyEntry {
  readonly step: number;
  readonly line: string;
  readonly reply?: string;
  readonly by?: string;
  readonly date?: string;
  readonly closed?: ClosingEntry;
}

/** A worked file as written, steps and replies still to be read one by one. */
export interface WorkedFile {
  readonly member: Placed<string>;
  readonly loads?: Placed<string>;
  readonly prepared?: Worker;
  readonly signs: WorkedSigns;
  readonly names: readonly Named<string>[];
  readonly steps: readonly StepEntry[];
  readonly replies: readonly ReplyEntry[];
}

/** One step. */
export const stepShape: ObjectShape<StepEntry> = objectOf<StepEntry>(
  'a step: a map of sum or value, write and so',
  {
    sum: optional(
      placed(text),
      'the equilibrium sum: forces right, left, up or down, or moments about a point',
    ),
    value: optional(
      placed(text),
      'the value that is worked: moment at B, reaction A up',
    ),
    part: optional(placed(text), 'the part of the member that the sum is for: A to H'),
    loads: optional(placed(text), 'the case or combination of this step'),
    write: optional(placed(text), 'the line as it was written'),
    so: optionalOr(oneOrMore(placed(text)), [], 'what the worker concludes'),
    note: optional(text, 'a remark of the worker'),
  },
);

/** One reply or closing. */
export const replyShape: ObjectShape<ReplyEntry> = objectOf<ReplyEntry>(
  'a map of step, line, and reply or closed',
  {
    step: required(
      numberFrom({ from: 1, to: 10_000, whole: true }),
      'number of the step, counted from 1',
    ),
    line: required(text, 'the line that is answered, quoted as it was written'),
    reply: optional(text, 'the answer'),
    by: optional(text, 'initials of who answers'),
    date: optional(date, 'the day of the answer'),
    closed: optional(
      objectOf<ClosingEntry>('a map of by and date', {
        by: required(text, 'initials of the checker who closes the comment'),
        date: required(date, 'the day of the closing'),
      }),
      'closes the comment, by a named checker',
    ),
  },
);

const worker: Shape<Worker> = objectOf<Worker>('a map of name, initials and date', {
  name: optional(text, 'the name'),
  initials: optional(text, 'the initials'),
  date: optional(date, 'the day of the work'),
});

const signs: Shape<WorkedSigns> = objectOf<WorkedSigns>(
  'a map of moments, vertical and horizontal',
  {
    moments: optional(
      oneOf('counterclockwise', 'clockwise'),
      'which turn counts positive in moment sums',
    ),
    vertical: optional(oneOf('up', 'down'), 'which way counts positive up and down'),
    horizontal: optional(oneOf('right', 'left'), 'which way counts positive across'),
  },
);

/** `worked/*.yaml`. */
export const workedFile: ObjectShape<WorkedFile> = objectOf<WorkedFile>(
  'a map of member, names and steps',
  {
    member: required(placed(text), 'the mark of the member that the steps are for'),
    loads: optional(
      placed(text),
      'what the work is for: a case, `all`, or the mark of a combination',
    ),
    prepared: optional(worker, 'who worked the steps'),
    signs: optionalOr(signs, {}, "the worker's own positive senses"),
    names: optionalOr(
      mapOf(text, text, 'a map of symbols and what they stand for'),
      [],
      "what each of the worker's symbols stands for",
    ),
    steps: optionalOr(listOf(stepShape), [], 'the steps, in order'),
    replies: optionalOr(listOf(replyShape), [], 'replies to comments, and closings'),
  },
);
