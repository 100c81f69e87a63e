import type { Difference, Verification } from '../index.ts';
import type { Verified } from './lane.ts';
import { printable, type Paint, type Role } from './paint.ts';

/** More lines than this about one bag are left to `--json`. */
const mostLines = 12;

type Verdict = Verification['verdict'] | 'failed';

const roles: Readonly<Record<Verdict, Role>> = {
  intact: 'good',
  differs: 'error',
  'not recomputed': 'remark',
  damaged: 'error',
  unreadable: 'error',
  failed: 'error',
};

/** The verdict on a bag; `failed` where the program itself failed on it. */
export function verdictOn(verified: Verified): Verdict {
  return 'failure' in verified ? 'failed' : verified.verification.verdict;
}

/** The line on one bag, verdict, number, revision and path, and below it what is to be told; remarks on an intact one only `inFull`. */
export function verificationLines(
  verified: Verified,
  paint: Paint,
  inFull: boolean,
): string {
  const verdict = verdictOn(verified);
  const identity = 'failure' in verified ? undefined : verified.verification.identity;
  const who =
    identity === undefined
      ? ''
      : [identity.number ?? identity.title, identity.revision ?? '']
          .filter((part) => part !== '')
          .join(' ');
  const head = [
    paint(roles[verdict], verdict.padEnd(14)),
    printable(who).replaceAll('\n', ' ').padEnd(16),
    printable(verified.path).replaceAll('\n', ' '),
  ].join('  ');
  const below =
    'failure' in verified
      ? verified.failure.split('\n')
      : detailsOf(verified.verification, inFull);
  return [head, ...below.map((line) => `    ${printable(line)}`), ''].join('\n');
}

function detailsOf(found: Verification, inFull: boolean): readonly string[] {
  const { damage, differences, signed, remarks, verdict } = found;
  const isTold = inFull || verdict !== 'intact';
  return [
    ...shortened(
      damage.map(({ path, message }) =>
        path === undefined ? message : `${path}: ${message}`,
      ),
    ),
    ...(differences.length === 0 ? [] : [differenceHead(found)]),
    ...shortened(differences.toSorted(greatestFirst).map(differenceLine)),
    ...(signed !== undefined && (isTold || signed.comparison === 'not as recorded')
      ? [signed.message]
      : []),
    ...(isTold ? remarks : []),
  ];
}

function differenceHead({ differences, compared, versions }: Verification): string {
  const [issued, present] = [versions?.issued ?? 'unknown', versions?.present ?? ''];
  const of = compared === undefined ? '' : ` of ${compared.figures} figures`;
  const count = `${differences.length}${of}`;
  return `as issued by version ${issued}, but version ${present} computes differently: ${count}`;
}

/** What is no number first, then the greatest share. */
function greatestFirst(one: Difference, other: Difference): number {
  const [ours, theirs] = [one.share ?? Infinity, other.share ?? Infinity];
  return ours === theirs ? 0 : theirs - ours;
}

function differenceLine({
  member,
  what,
  archived,
  computed,
  share,
}: Difference): string {
  const subject = member === '' ? what : `${member}, ${what}`;
  const percent =
    share === undefined ? '' : ` (${Number((100 * share).toPrecision(2))} %)`;
  return `${subject}: ${archived ?? 'nothing'} archived, ${computed ?? 'nothing'} now${percent}`;
}

function shortened(lines: readonly string[]): readonly string[] {
  return lines.length <= mostLines
    ? lines
    : [
        ...lines.slice(0, mostLines),
        `and ${lines.length - mostLines} more; --json prints them all`,
      ];
}
