import { describe, expect, test } from 'vitest';
import type { MarkedFile, MarkedStep } from '../../../src/review/index.ts';
import { markFiles } from '../sheets/mark-sheets.ts';

const members = {
  S1: 'mark: S1\nkind: beam\npoints: { A: 0 ft, B: 6 ft, C: 21 ft }\nsupports: { A: pin, C: roller }\nloads: [ { case: L, point: 8.4 kip, at: B } ]\n',
  T1: 'mark: T1\nkind: beam\npoints: { A: 0 ft, B: 6 ft, D: 15 ft, C: 21 ft }\nsupports: { A: pin, C: roller }\nloads: [ { case: L, point: 8 kip, at: B }, { case: L, point: 8 kip, at: D }, { case: L, point: 5 kip, at: 10.5 ft } ]\n',
  W1: 'mark: W1\nkind: beam\npoints: { A: 0 ft, B: 12 ft, C: 20 ft }\nsupports: { A: pin, C: roller }\nloads: [ { case: L, uniform: 0.5 kip/ft, from: A, to: B } ]\n',
};

function file(member: keyof typeof members, steps: readonly string[]): MarkedFile {
  const text = `member: ${member}\nnames: { RA: reaction A up, RC: reaction C up, P: load L at B, MX: moment at 10 ft }\nsteps:\n${steps.map((step) => `  - { ${step} }\n`).join('')}`;
  const [marked] = markFiles(members, {
    'worked/a.yaml':
      member === 'S1'
        ? text
        : text.replace(', P: load L at B, MX: moment at 10 ft', ''),
  });
  return marked!;
}

function about(member: keyof typeof members, line: string): MarkedStep {
  return file(member, [`sum: moments about A, write: "${line}"`]).steps[0]!;
}

const said = ({ findings }: MarkedStep): readonly string[] =>
  findings.map(({ kind, message }) => `${kind}: ${message}`);

describe('what is said of a slip', () => {
  test.each([
    [
      '8.4 kip * 6 ft + RC * 21 ft = 0',
      'sign: The load of 8.4 kip at B turns clockwise about A; with counterclockwise positive its sign is minus.',
    ],
    [
      'RC * 21 ft = -8.4 kip * 6 ft',
      'sign: The load of 8.4 kip at B turns clockwise about A; on the right of the equals sign its sign is plus.',
    ],
    [
      '-8.4 kip * 15 ft + RC * 21 ft = 0',
      'lever-arm: 15 ft is measured from C; about A the arm of the load of 8.4 kip at B is 6 ft.',
    ],
    [
      '-8.4 kip * 7 ft + RC * 21 ft = 0',
      'lever-arm: 7 ft is not its arm; about A the arm of the load of 8.4 kip at B is 6 ft.',
    ],
    [
      'RC = 8.4 kip * 9/21',
      'lever-arm: 9 ft is not its arm; about A the arm of the load of 8.4 kip at B is 6 ft.',
    ],
    [
      '-9.4 kip * 6 ft + RC * 21 ft = 0',
      'magnitude: 9.4 kip is written for the load of 8.4 kip at B.',
    ],
    [
      '-54.4 kip ft + RC * 21 ft = 0',
      'magnitude: The load of 8.4 kip at B gives 50.4 kip·ft about A, not 54.4 kip·ft.',
    ],
    [
      '-8.4 kip * 72 ft + RC * 21 ft = 0',
      'unit: This is 12 times what the load of 8.4 kip at B gives: feet and inches look as if they were mixed.',
    ],
    [
      '-8.4 kip * 6 ft - 3.3 kip * 8 ft + RC * 21 ft = 0',
      'extra-term: Nothing that acts on the member gives this term about A.',
    ],
    [
      'RA * 6 ft - 8.4 kip * 6 ft + RC * 21 ft = 0',
      'extra-term: The reaction at A passes through A and has no moment there; 6 ft is measured from B.',
    ],
  ])('%s', (line, message) => {
    const step = about('S1', line);
    expect([step.verdict, ...said(step)]).toEqual(['wrong', message]);
  });

  test('a load left out is named with its arm', () => {
    const step = about('T1', 'RC * 21 ft - 8 kip * 6 ft - 5 kip * 10.5 ft = 0');
    expect(said(step)).toEqual([
      'missing-term: The load of 8 kip at D acts on the member, with an arm of 15 ft about A, and is left out.',
    ]);
  });

  test('on a part of the member it says so', () => {
    const { steps } = file('S1', [
      'sum: forces up, part: A to 10 ft, write: "RA - V = 0"',
    ]);
    expect(steps[0]?.verdict).toBe('unread');
    const declared = markFiles(members, {
      'worked/a.yaml':
        'member: S1\nnames: { RA: reaction A up, V: shear at 10 ft }\nsteps:\n  - { sum: forces up, part: A to 10 ft, write: "RA - V = 0" }\n',
    });
    expect(said(declared[0]!.steps[0]!)).toEqual([
      'missing-term: The load of 8.4 kip at B acts on this part and is left out.',
    ]);
  });

  test('a resultant of the right size at the wrong place', () => {
    expect(said(about('W1', 'RC * 20 ft - 6 kip * 4 ft = 0'))).toEqual([
      'resultant: The resultant of the rectangle from A to B has the right size but acts at the middle of its base (6 ft): about A its arm is 6 ft, not 4 ft.',
    ]);
  });

  test('and at the right place with another size, the intensity being right', () => {
    expect(said(about('W1', 'RC * 20 ft - 0.5 kip/ft * 10 ft * 6 ft = 0'))).toEqual([
      'resultant: The resultant of the rectangle from A to B is its area: 6 kip, not 5 kip.',
    ]);
  });

  test('another intensity is another load', () => {
    const [finding] = about(
      'W1',
      'RC * 20 ft - 0.6 kip/ft * 12 ft * 6 ft = 0',
    ).findings;
    expect(finding?.kind).toBe('magnitude');
  });
});

describe('two readings that cost the same', () => {
  test('are both named, in the findings and in words', () => {
    const { verdict, findings } = file('T1', [
      'sum: forces up, write: "RA + RC - 8 kip - 5 kip = 0"',
    ]).steps[0]!;
    expect(verdict).toBe('wrong');
    expect(findings).toEqual([
      {
        kind: 'missing-term',
        message: 'The load of 8 kip at D acts on the member and is left out.',
      },
      {
        kind: 'missing-term',
        message: 'Or else: The load of 8 kip at B acts on the member and is left out.',
      },
    ]);
  });

  test('what both say is said once', () => {
    const step = file('T1', ['sum: forces up, write: "RA - RC - 8 kip - 5 kip = 0"'])
      .steps[0]!;
    const signs = step.findings.filter(({ kind }) => kind === 'sign');
    expect(signs).toHaveLength(1);
    expect(
      step.findings.filter(({ message }) => message.startsWith('Or else')),
    ).toHaveLength(1);
  });
});

describe('the same number said twice', () => {
  test('a chain and its conclusion have one finding', () => {
    const { steps } = file('S1', [
      'sum: moments about A, write: "RC = 8.4 kip * 6 ft / 21 ft = 2.6 kip"',
      'sum: moments about A, write: "RC = 8.4 kip * 6 ft / 21 ft = 2.6 kip", so: "RC = 2.60 kip"',
      'sum: moments about A, write: "RC = 8.4 kip * 6 ft / 21 ft", so: "RC = 2.6 kip"',
    ]);
    for (const step of steps) {
      expect(step.verdict).toBe('wrong');
      expect(step.findings.map(({ kind }) => kind)).toEqual(['arithmetic']);
    }
  });
});

describe('a slip carried forward', () => {
  test('is marked once, through three steps after it', () => {
    const { steps, summary } = file('S1', [
      'sum: moments about A, write: "8.4 kip * 6 ft + RC * 21 ft = 0", so: "RC = -2.40 kip"',
      'sum: forces up, write: "RA + RC - P = 0", so: "RA = 10.8 kip"',
      'value: moment at B, write: "RA * 6 ft", so: "M = 64.8 kip ft"',
      'sum: moments about 10 ft, part: A to 10 ft, write: "-10.8 kip * 10 ft + 8.4 kip * 4 ft + MX = 0"',
    ]);
    expect(steps.map(({ verdict }) => verdict)).toEqual([
      'wrong',
      'follows',
      'follows',
      'follows',
    ]);
    expect(steps.slice(1).flatMap(({ findings }) => findings)).toEqual([]);
    expect(summary.wrong).toBe(1);
  });

  test('another value than the one concluded is carried wrongly, and the step is named', () => {
    const { steps } = file('S1', [
      'sum: moments about A, write: "RC * 21 ft = 8.4 kip * 6 ft", so: "RC = 2.40 kip"',
      'sum: forces up, write: "RA + 2.8 kip - P = 0", so: "RA = 5.6 kip"',
    ]);
    expect(steps.map(({ verdict }) => verdict)).toEqual(['right', 'wrong']);
    expect(said(steps[1]!)[0]).toBe(
      'carried: Step 1 concluded 2.4 kip for the reaction at C; here it is 2.8 kip.',
    );
  });

  test('the same slip again is wrong, as in step 1', () => {
    const slip = 'sum: moments about A, write: "8.4 kip * 6 ft + RC * 21 ft = 0"';
    const { steps } = file('S1', [slip, slip]);
    expect(steps[1]?.verdict).toBe('wrong');
    expect(said(steps[1]!)[0]).toMatch(/as in step 1\.$/);
  });
});

describe('the tolerance of a conclusion', () => {
  // 50.4 kip ft over 21 ft is 2.40 kip; one unit in the third figure is 0.01 kip.
  test.each([
    ['2.40', 'right'],
    ['2.41', 'right'],
    ['2.39', 'right'],
    ['2.42', 'wrong'],
    ['2.38', 'wrong'],
  ])('%s kip for 2.40 kip is %s', (value, verdict) => {
    const { steps } = file('S1', [
      `sum: moments about A, write: "RC * 21 ft = 8.4 kip * 6 ft", so: "RC = ${value} kip"`,
    ]);
    expect(steps[0]?.verdict).toBe(verdict);
  });
});

describe('a line that is too long', () => {
  const junk = Array.from(
    { length: 38 },
    (_, at) => `${at + 3.3} kip * ${at / 7 + 1} ft`,
  );
  const own = Array.from({ length: 45 }, () => '- 8.4 kip * 0.1333333333 ft').join(' ');

  test('and wrong says how far its sides are apart, and what to do', () => {
    const step = about('S1', `RC*21 ft - ${junk.join(' - ')} = 0`);
    expect(step.verdict).toBe('wrong');
    expect(said(step)).toHaveLength(1);
    expect(said(step)[0]).toMatch(
      /^arithmetic: The line is too long to be explained; its sides differ by [\d,.]+ kip·ft\. 39 terms are too many to say which of them is wrong: break the line up into subtotals, each on a line of its own\.$/,
    );
  });

  test('and right is right', () => {
    expect(about('S1', `RC * 21 ft ${own} = 0`).verdict).toBe('right');
  });
});
