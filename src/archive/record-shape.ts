import { shapes, type Shape } from '../results/index.ts';

const { list, number, object, orNull, text, whole } = shapes;
const noText = orNull(text);
const truth: Shape = { kind: 'boolean' };

const revision: Shape = object({
  mark: text,
  date: noText,
  note: noText,
  reason: noText,
  prepared: noText,
  checked: noText,
  sheets: noText,
});

const person: Shape = object({
  name: text,
  initials: text,
  date: noText,
  licence: noText,
});

const ratio: Shape = object({
  member: text,
  check: text,
  ratio: number,
  passes: truth,
});

/** The shape of record.json, format 1; keys beyond these are passed over, as a later version may write more. */
export const recordShape: Shape = object({
  format: { kind: 'exactly', value: 1 },
  program: object({ name: text, version: text }),
  project: object({
    number: noText,
    title: text,
    discipline: text,
    client: noText,
    location: noText,
    office: noText,
    stage: noText,
  }),
  status: text,
  revision: orNull(revision),
  revisions: list(revision),
  people: object({
    prepared: orNull(person),
    checked: orNull(person),
    approved: orNull(person),
  }),
  supersedes: orNull(
    object({ number: noText, revision: noText, bag: noText, sha256: noText }),
  ),
  totals: object({
    members: whole,
    unsolved: whole,
    sheets: whole,
    checks: whole,
    failing: whole,
    governing: orNull(ratio),
  }),
  closure: orNull(
    object({ member: text, result: text, equation: text, share: number }),
  ),
  asIs: list(text),
  signed: orNull(
    object({
      path: text,
      comparison: { kind: 'text', among: ['same start', 'not compared'] },
    }),
  ),
});
