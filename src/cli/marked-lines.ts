import type { MarkedFile, MarkedStep, PersonSummary } from '../index.ts';
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
  const written = [step.claim, step.written, ...step.concluded, step.note]
    .filter((part) => part !== undefined)
    .join('; ');
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

/** The summary for whoever looks after the work: by person, how many steps got which mark, and the kinds of slip. */
export function peopleLines(people: readonly PersonSummary[], paint: Paint): string {
  const lines = people.map(({ person, files: count, marks, kinds }) => {
    const name = person === '' ? 'nobody named' : printable(person);
    const sheets = `${count} sheet${count === 1 ? '' : 's'}`;
    const steps = `${marks.right} right, ${marks.wrong} wrong, ${marks.follows} following, ${marks.unread} not read`;
    const slips = kinds.map(({ kind, count: times }) => `${kind} ${times}`).join(', ');
    return `  ${name}: ${sheets}; ${steps}${slips === '' ? '' : `; slips: ${slips}`}\n`;
  });
  return `${paint('strong', 'Summary')}\n${lines.join('')}`;
}
