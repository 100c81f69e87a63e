import type { BeamResults, Bound, MemberResults, Results } from '../index.ts';
import { changeOf, membersBefore } from './changes.ts';
import { printable } from './paint.ts';

type Member = Bound['worked']['members'][number];

/** What the lines of a run say: its members and figures, those of the run before. */
export interface Outcome {
  readonly members: readonly Member[];
  readonly now: Results;
  /** What results.json held before this run; undefined where there was none to compare with. */
  readonly before: Results | undefined;
  /** Writes a ratio of demand to capacity. */
  readonly writeRatio: (ratio: number) => string;
}

/** A line a member, set in columns: governing moment and reaction, ratio where one was judged, what changed. */
export function memberLines(outcome: Outcome): readonly string[] {
  const { now, before, members } = outcome;
  const known = membersBefore(before, now);
  const rows = now.members.map((figures) => {
    const member = members.find((one) => markOf(one) === figures.mark);
    const change =
      known === undefined ? '' : changeOf(figures, known.get(figures.mark));
    return [...identity(figures), ...governing(figures, member, outcome), change];
  });
  return [...inColumns(rows), ...goneLine(now, known)];
}

function markOf(member: Member): string {
  return member.kind === 'derived' ? member.derivation.mark : member.mark;
}

function identity({ mark, title }: MemberResults): readonly [string, string] {
  return [mark, title ?? ''];
}

function governing(
  figures: MemberResults,
  member: Member | undefined,
  { writeRatio }: Outcome,
): readonly [string, string, string] {
  if ('error' in figures) return [`no results: ${figures.error.code}`, '', ''];
  if (member?.kind !== 'derived') return ['', '', ''];
  const { moment, reaction } = member.derivation.summary;
  return [
    `M ${moment.text} (${moment.entry})`,
    `R ${reaction.text} at ${reaction.point} (${reaction.entry})`,
    ratioOf(figures, writeRatio),
  ];
}

/** The greatest ratio of the limits that were judged; nothing where none was. */
function ratioOf({ checks }: BeamResults, writeRatio: Outcome['writeRatio']): string {
  if (checks.length === 0) return '';
  const worst = checks.reduce((most, one) => (one.ratio > most.ratio ? one : most));
  const isPassed = checks.every(({ passes }) => passes);
  return `ratio ${writeRatio(worst.ratio)}${isPassed ? '' : ' NOT OK'}`;
}

/** Marks that the run before had and this one has not; part of a project leaves out others on purpose. */
function goneLine(
  now: Results,
  before: ReadonlyMap<string, MemberResults> | undefined,
): readonly string[] {
  const marks = now.members.map(({ mark }) => mark);
  const gone = [...(before?.keys() ?? [])].filter((mark) => !marks.includes(mark));
  return gone.length === 0
    ? []
    : [`No longer in the package: ${printable(gone.join(', '))}`];
}

/** Rows with their columns set in line; a column that is empty in every row is left out. */
function inColumns(rows: readonly (readonly string[])[]): readonly string[] {
  const shown = rows.map((row) =>
    row.map((text) => printable(text).replaceAll('\u00a0', ' ')),
  );
  const count = Math.max(0, ...shown.map((row) => row.length));
  const widths = Array.from({ length: count }, (_, at) =>
    Math.max(...shown.map((row) => (row[at] ?? '').length)),
  );
  return shown.map((row) =>
    row
      .flatMap((text, at) => (widths[at] === 0 ? [] : [text.padEnd(widths[at] ?? 0)]))
      .join('   ')
      .trimEnd(),
  );
}
