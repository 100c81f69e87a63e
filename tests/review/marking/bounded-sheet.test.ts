import { describe, expect, test } from 'vitest';
import { deriveMembers, workMembers } from '../../../src/derivation/index.ts';
import { readWorked } from '../../../src/project/kinds/worked/read-worked.ts';
import {
  effortOfLine,
  freshEffort,
  isSpent,
  leastEffort,
  lineEffort,
  sheetEffort,
  shareOf,
  spend,
} from '../../../src/review/matching/effort.ts';
import { markFile } from '../../../src/review/marking/mark-file.ts';
import { soundFolder } from '../../support/folder.ts';

const loads = Array.from(
  { length: 14 },
  (_, at) => `{ case: ${'ABCDEFGH'[at % 8]!}, point: ${at + 1} kip, at: ${at + 2} ft }`,
);
const project = soundFolder({
  'loads.yaml': `cases: { ${'A B C D E F G H'
    .split(' ')
    .map((mark) => `${mark}: { kind: live }`)
    .join(', ')} }\n`,
  'members/s9.yaml': `mark: S9\nkind: beam\npoints: { A: 0 ft, C: 21 ft }\nsupports: { A: pin, C: roller }\nloads: [ ${loads.join(', ')} ]\n`,
});
const [member] = deriveMembers(project, workMembers(project, []));
if (member?.kind !== 'derived') throw new Error('no member');
const { work } = member;

const hostile = Array.from(
  { length: 26 },
  (_, at) => `${at + 3.3} kip * ${(at / 7 + 1).toFixed(3)} ft`,
).join(' - ');
const long = Array.from({ length: 60 }, (_, at) => {
  const about = (at % 20) + 0.5;
  return `  - { sum: moments about ${about} ft, write: "RC * ${21 - about} ft - ${hostile} = 0" }\n`;
});
const exact = loads.map((_, at) => `${at + 1} kip * ${at + 2} ft`).join(' - ');
const right = `  - { sum: moments about A, write: "RC * 21 ft - ${exact} = 0" }\n`;
const slipped = right.replace('- 4 kip', '+ 4 kip');

function marked(
  head: string,
  steps: readonly string[],
  limit?: number,
): {
  readonly verdicts: readonly string[];
  readonly said: string;
  readonly spent: number;
} {
  const text = `member: S9\n${head}names: { RA: reaction A up, RC: reaction C up }\nsteps:\n${steps.join('')}`;
  const file = readWorked({ path: 'worked/a.yaml', text, sha256: '' }, 'us');
  const effort = freshEffort(limit ?? sheetEffort);
  const found = markFile(file, { project, work, lineOf: () => 1 }, effort)!;
  return {
    verdicts: found.steps.map(({ verdict }) => verdict),
    said: found.steps
      .at(-1)!
      .findings.map(({ message }) => message)
      .join(' '),
    spent: effort.spent,
  };
}

// One look at what a number may stand for is the most that is done between two looks at the bound.
const room = 40_000;

describe('the effort of a sheet is bounded, counted in comparisons', () => {
  test('sixty hostile lines spend no more than a sheet and what each line may at the least', () => {
    const { spent, verdicts } = marked('loads: all\n', long);
    expect(new Set(verdicts)).toEqual(new Set(['wrong']));
    expect(spent).toBeGreaterThan(lineEffort);
    expect(spent).toBeLessThan(sheetEffort + 60 * 2 * leastEffort + room);
  });

  test('nor under eight cases, where the sheet does not say which', () => {
    const { spent } = marked('', long.slice(0, 12));
    expect(spent).toBeLessThan(sheetEffort + 9 * 12 * 4 * leastEffort + room);
  });

  test('once it is spent a true line is right and a false one is told how far it is out', () => {
    const { verdicts, said } = marked('loads: all\n', [long[0]!, right, long[1]!], 1);
    expect(verdicts).toEqual(['wrong', 'right', 'wrong']);
    expect(said).toMatch(
      /^With the lines beside it this one is too long to be explained; its sides differ by [\d.]+ kip·ft\. 27 terms are too many to say which of them is wrong: break the line up/u,
    );
  });

  test('and a line of fifteen terms with a turned sign is still explained', () => {
    expect(marked('loads: all\n', [long[0]!, slipped], 1).said).toContain(
      'The load of 4 kip at 5 ft turns clockwise about A',
    );
  });

  test('and a short line with one slip is still explained', () => {
    const short = `  - { sum: moments about A, loads: A, write: "RC * 21 ft - 1 kip * 2 ft + 9 kip * 10 ft = 0" }\n`;
    expect(marked('loads: all\n', [long[0]!, short], 1).said).toContain(
      'turns clockwise about A',
    );
  });
});

describe('efforts', () => {
  test('spending a line spends its sheet', () => {
    const sheet = freshEffort(10_000);
    const line = effortOfLine(sheet);
    expect(spend(line, 9000)).toBe(true);
    expect(sheet.spent).toBe(9000);
    expect(effortOfLine(sheet).limit).toBe(leastEffort);
  });

  test('a share is what is left over so many', () => {
    const sheet = freshEffort(100);
    const share = shareOf(sheet, 4);
    expect(share.limit).toBe(25);
    spend(share, 25);
    expect(isSpent(share)).toBe(true);
    expect(isSpent(sheet)).toBe(false);
    expect(shareOf(sheet, 3).limit).toBe(25);
  });
});
