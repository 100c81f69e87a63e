import type { FindingKind } from './verdict.ts';
import type { MarkedFile, MarkedStep, MarkSummary } from './marked.ts';

/** The marks of some files together. */
export interface GroupSummary {
  readonly files: number;
  /** Files of which nothing could be marked. */
  readonly unmarked: number;
  readonly marks: MarkSummary;
  /** The kinds of slip in steps that are wrong or were not read, most frequent first. */
  readonly kinds: readonly SlipCount[];
}

/** How often a kind of slip was found, and where. */
export interface SlipCount {
  readonly kind: FindingKind;
  readonly count: number;
  /** The steps that it was found in, each once. */
  readonly places: readonly {
    readonly file: string;
    readonly member?: string;
    readonly step: number;
  }[];
}

/** The marks of one person, for whoever looks after the work. */
export interface PersonSummary extends GroupSummary {
  /** As the files name the person; empty where they do not. */
  readonly person: string;
}

/** The marks of a project, whole and by person, in the order in which people first come up. */
export interface WorkSummary {
  readonly whole: GroupSummary;
  readonly people: readonly PersonSummary[];
}

/** Sums up marked files. One slip that two explanations serve counts once, by the first of them. */
export function summarise(files: readonly MarkedFile[]): WorkSummary {
  const people = new Map<string, MarkedFile[]>();
  for (const file of files) {
    const person = file.prepared?.name ?? file.prepared?.initials ?? '';
    people.set(person, [...(people.get(person) ?? []), file]);
  }
  return {
    whole: groupOf(files),
    people: [...people].map(([person, own]) => ({ person, ...groupOf(own) })),
  };
}

const nothing: MarkSummary = { right: 0, wrong: 0, follows: 0, unread: 0 };

function groupOf(files: readonly MarkedFile[]): GroupSummary {
  return {
    files: files.length,
    unmarked: files.filter(({ fault }) => fault !== undefined).length,
    marks: files.reduce<MarkSummary>(
      (all, { summary }) => added(all, summary),
      nothing,
    ),
    kinds: kindsIn(files),
  };
}

function added(one: MarkSummary, other: MarkSummary): MarkSummary {
  return {
    right: one.right + other.right,
    wrong: one.wrong + other.wrong,
    follows: one.follows + other.follows,
    unread: one.unread + other.unread,
  };
}

function kindsIn(files: readonly MarkedFile[]): readonly SlipCount[] {
  const kinds = new Map<FindingKind, SlipCount>();
  for (const { file, member, steps } of files)
    for (const step of steps)
      for (const kind of slipsOf(step)) {
        const { count = 0, places = [] } = kinds.get(kind) ?? {};
        const place = {
          file,
          ...(member === undefined ? {} : { member }),
          step: step.step,
        };
        const isHere = places.some(
          (one) => one.file === file && one.step === step.step,
        );
        kinds.set(kind, {
          kind,
          count: count + 1,
          places: isHere ? places : [...places, place],
        });
      }
  return [...kinds.values()].sort((a, b) => b.count - a.count);
}

/** The slips of a step; a second explanation of the same slip is none. */
function slipsOf({ verdict, findings }: MarkedStep): readonly FindingKind[] {
  if (verdict !== 'wrong' && verdict !== 'unread') return [];
  return findings
    .filter(({ message }) => !message.startsWith('Or else'))
    .map(({ kind }) => kind);
}
