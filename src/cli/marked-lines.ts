import type {
  GroupSummary,
  MarkedFile,
  MarkedStep,
  SlipCount,
  WorkSummary,
} from '../index.ts';
import { printable, type Paint, type Role } from './paint.ts';

const roles: Readonly<Record<MarkedStep['verdict'], Role>> = {
  right: 'good',
  wrong: 'error',
  follows: 'remark',
  unread: 'remark',
};

/** A marked file on the terminal: each step as written with its mark, and under a wrong one why and what belongs there. */
export function markedLines(file: MarkedFile, paint: Paint): string {
  const by = file.prepared?.name ?? file.prepared?.initials;
  const about = [
    file.member,
    file.loads === undefined ? undefined : loadsWords(file),
    by === undefined ? undefined : `by ${by}`,
  ].filter((part) => part !== undefined);
  const head = `${paint('strong', printable(file.file))}  ${printable(about.join(', '))}\n`;
  if (file.fault !== undefined) return `${head}  not marked: see below\n\n`;
  return `${head}${file.steps.map((step) => stepLines(step, paint)).join('')}\n`;
}

function loadsWords({ loads, isLoadsChosen }: MarkedFile): string {
  return `for ${loads ?? ''}${isLoadsChosen ? ' (not said; the reading with the fewest slips)' : ''}`;
}

function stepLines(step: MarkedStep, paint: Paint): string {
  const { verdict, findings, remarks, expected } = step;
  const written = writtenLine(step);
  const lines = [
    `  ${String(step.step).padStart(2)}  ${paint(roles[verdict], verdict.padEnd(7))}  ${printable(written)}`,
    ...findings.map(
      ({ kind, term, message }) =>
        `      ${paint('quiet', kind)}${term === undefined ? '' : ` at ${printable(term)}`}: ${printable(message)}`,
    ),
    ...remarks.map((remark) => `      ${paint('quiet', printable(remark))}`),
    ...(expected === undefined
      ? []
      : [`      belongs there: ${printable(expected.text)}`]),
  ];
  return `${lines.join('\n')}\n`;
}

/** A step as it was written, in one line: `forces up on A to H: RA - VH = 0, so VH = 2 kip`. */
function writtenLine({ claim, part, written, concluded, note }: MarkedStep): string {
  const about = [claim, part === undefined ? undefined : `on ${part}`]
    .filter((one) => one !== undefined)
    .join(' ');
  const so = concluded.length === 0 ? undefined : `so ${concluded.join(', ')}`;
  const said = [written, so, note].filter((one) => one !== undefined).join(', ');
  return [about, said].filter((one) => one !== '').join(': ');
}

/** The summary for whoever looks after the work: how many steps got which mark, the kinds of slip and where they are, then the same by person. */
export function summaryLines({ whole, people }: WorkSummary, paint: Paint): string {
  const slips = whole.kinds.map((one) => `  ${slipLine(one)}\n`);
  const names = people.map(({ person }) =>
    person === '' ? 'nobody named' : printable(person),
  );
  const width = Math.max(0, ...names.map((name) => name.length));
  const persons = people.map((group, index) => {
    const kinds = group.kinds.map(({ kind, count }) => `${kind} ${count}`).join(', ');
    const tail = kinds === '' ? '' : `; ${kinds}`;
    return `  ${(names[index] ?? '').padEnd(width)}  ${groupLine(group)}${tail}\n`;
  });
  return [
    `${paint('strong', 'Summary')}\n  ${groupLine(whole)}\n`,
    ...(slips.length === 0 ? [] : [`${paint('strong', 'Slips')}\n`, ...slips]),
    `${paint('strong', 'By person')}\n`,
    ...persons,
  ].join('');
}

/** So many places of a kind of slip are named. */
const mostPlaces = 6;

function slipLine({ kind, count, places }: SlipCount): string {
  const named = places
    .slice(0, mostPlaces)
    .map(({ file, member, step }) => `${printable(member ?? file)} step ${step}`);
  const more = places.length - named.length;
  const rest = more > 0 ? [`${more} more`] : [];
  return `${String(count).padStart(3)} ${kind}: ${[...named, ...rest].join(', ')}`;
}

function groupLine({ files, unmarked, marks }: GroupSummary): string {
  const steps = marks.right + marks.wrong + marks.follows + marks.unread;
  const told = [
    `${marks.right} right`,
    ...(marks.wrong === 0 ? [] : [`${marks.wrong} wrong`]),
    ...(marks.follows === 0 ? [] : [`${marks.follows} following from a slip`]),
    ...(marks.unread === 0 ? [] : [`${marks.unread} not read`]),
  ].join(', ');
  const lost =
    unmarked === 0 ? '' : `; ${counted(unmarked, 'sheet')} not marked at all`;
  return `${counted(files, 'sheet')}, ${counted(steps, 'step')}: ${told}${lost}`;
}

function counted(count: number, word: string): string {
  return `${count} ${word}${count === 1 ? '' : 's'}`;
}
