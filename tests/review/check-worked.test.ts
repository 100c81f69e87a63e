import { describe, expect, test } from 'vitest';
import { checkJson, summarise, type MarkedFile } from '../../src/review/index.ts';
import { markFiles } from './sheets/mark-sheets.ts';
import { otherMembers } from './sheets/other-members.ts';
import { simpleMembers } from './sheets/simple-beams.ts';

const members = { S1: simpleMembers.S1 ?? '', X1: otherMembers.X1 ?? '' };
const head = 'member: S1\nnames: { RA: reaction A up, RC: reaction C up }\n';
const turned =
  '  - { sum: moments about A, write: "8.4 kip * 6 ft + RC * 21 ft = 0", so: "RC = -2.4 kip" }\n';

function marked(text: string): MarkedFile {
  const [file] = markFiles(members, { 'worked/a.yaml': text });
  if (file === undefined) throw new Error('no file');
  return file;
}

describe('checkWorked', () => {
  test('marks one slip once, and writes the right line in the symbols of the worker', () => {
    const { steps, summary } = marked(
      `${head}steps:\n${turned}  - { sum: forces up, write: "RA + RC = 8.4 kip", so: "RA = 10.8 kip" }\n`,
    );
    expect(summary).toEqual({ right: 0, wrong: 1, follows: 1, unread: 0 });
    expect(steps[0]?.findings).toEqual([
      {
        kind: 'sign',
        term: '8.4 kip * 6 ft',
        message:
          'The load of 8.4 kip at B turns clockwise about A; with counterclockwise positive its sign is minus.',
      },
    ]);
    expect(steps[0]?.expected?.text).toMatch(
      /^RC \(21 ft\) [-−] 8\.4 kip \(6 ft\) = 0$/,
    );
  });

  test('says of the same slip where it was made first', () => {
    const { steps } = marked(`${head}steps:\n${turned}${turned}`);
    expect(steps[1]?.verdict).toBe('wrong');
    expect(steps[1]?.findings[0]?.message).toMatch(/The same as in step 1\.$/);
  });

  test('takes the loading with the fewest slips where none is said, and says so', () => {
    const text =
      'member: X1\nnames: { RC: reaction C up }\nsteps:\n  - { sum: moments about A, write: "RC*21 ft = 5.25 kip * 10.5 ft" }\n';
    const { loads, isLoadsChosen, steps } = marked(text);
    expect([loads, isLoadsChosen, steps[0]?.verdict]).toEqual(['D', true, 'right']);
    const stated = marked(text.replace('X1', 'X1\nloads: L'));
    expect([stated.loads, stated.isLoadsChosen]).toEqual(['L', false]);
    expect(stated.steps[0]?.verdict).toBe('wrong');
  });

  test('counts lines of the file from 1, and names the definition with its checksum', () => {
    const { steps, against } = marked(`${head}steps:\n${turned}${turned}`);
    expect(steps.map(({ line }) => line)).toEqual([4, 5]);
    expect(against?.file).toBe('members/S1.yaml');
    expect(against?.sha256).toMatch(/^[0-9a-f]{64}$/);
  });

  test('says of a plain magnitude which sense was meant', () => {
    const { steps } = marked(
      `${head}steps:\n  - { value: shear right of B, write: "2.4 kip", so: "V = 2.4 kip" }\n`,
    );
    expect(steps[0]?.verdict).toBe('right');
    expect(steps[0]?.remarks).toEqual([
      'given as a size; in the signs of the diagrams it is negative',
    ]);
  });
});

describe('the register of comments', () => {
  const reply = (line: string, more: string): string =>
    `replies:\n  - { step: 1, line: "${line}", ${more} }\n`;
  const line = '8.4 kip * 6 ft + RC * 21 ft = 0';
  const statusOf = (more: string, steps = turned): unknown =>
    marked(`${head}steps:\n${steps}${more}`).comments.map(({ status }) => status);

  test('a slip is an open comment until it is answered', () => {
    expect(statusOf('')).toEqual(['open']);
    const answer = 'reply: will mend, by: JR, date: 2031-03-11';
    expect(statusOf(reply(line, answer))).toEqual(['answered']);
    expect(statusOf(reply('another line', answer))).toEqual(['open']);
  });

  test('a step that is now right is reworked; only a named checker closes', () => {
    const right = turned.replace('"8.4', '"-8.4').replace('-2.4', '2.4');
    const answer = 'reply: mended, by: JR, date: 2031-03-11';
    expect(statusOf(reply(`-${line}`, answer), right)).toEqual(['reworked']);
    const closing = 'closed: { by: RT, date: 2031-03-12 }';
    expect(statusOf(reply(`-${line}`, closing), right)).toEqual(['closed']);
    expect(statusOf(reply(line, closing), right)).toEqual(['reworked']);
  });
});

describe('checkJson and summarise', () => {
  test('print marks in format 1, and faults of a file with their place', () => {
    const json = JSON.parse(
      checkJson(
        [marked(`${head}steps:\n${turned}`), marked('member: Z\nsteps: []\n')],
        () => 1,
      ),
    ) as { format: number; worked: Record<string, unknown>[] };
    expect(json.format).toBe(1);
    expect(json.worked[0]).toMatchObject({
      file: 'worked/a.yaml',
      member: 'S1',
      loads: 'L',
      steps: [{ step: 1, line: 4, verdict: 'wrong', findings: [{ kind: 'sign' }] }],
      summary: { right: 0, wrong: 1, follows: 0, unread: 0 },
    });
    expect(json.worked[1]).toMatchObject({
      error: { code: 'unknown-member', line: 1 },
    });
  });

  test('slips are counted by person and over the project, with their places', () => {
    const named = `prepared: { name: J. Rowan }\n${head}steps:\n${turned}`;
    const one = { file: 'worked/a.yaml', member: 'S1', step: 1 };
    const group = {
      files: 2,
      unmarked: 0,
      marks: { right: 0, wrong: 2, follows: 0, unread: 0 },
      kinds: [
        { kind: 'sign', count: 2, places: [one, { ...one, file: 'worked/b.yaml' }] },
      ],
    };
    const files = [marked(named), { ...marked(named), file: 'worked/b.yaml' }];
    expect(summarise(files)).toEqual({
      whole: group,
      people: [{ person: 'J. Rowan', ...group }],
    });
  });

  test('a file that cannot be marked is counted as one', () => {
    const { whole } = summarise([marked('member: Z\nsteps: []\n')]);
    expect(whole).toMatchObject({ files: 1, unmarked: 1 });
  });
});
