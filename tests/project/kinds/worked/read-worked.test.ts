import { describe, expect, test } from 'vitest';
import { readWorked } from '../../../../src/project/kinds/worked/read-worked.ts';

const read = (text: string): ReturnType<typeof readWorked> =>
  readWorked({ path: 'worked/a.yaml', text, sha256: '' });

describe('readWorked', () => {
  test('reads steps with what is written and concluded, one conclusion or several', () => {
    const { steps, member, fault } = read(
      'member: S2\nsteps:\n  - { sum: forces up, write: "RA = P", so: [ "RA = 1 kip", "P = 1 kip" ] }\n  - { note: by symmetry }\n',
    );
    expect([member?.text, fault]).toEqual(['S2', undefined]);
    expect(steps[0]?.write?.text).toBe('RA = P');
    expect(steps[0]?.so.map(({ text }) => text)).toEqual(['RA = 1 kip', 'P = 1 kip']);
    expect(steps[1]?.note).toBe('by symmetry');
  });

  test('keeps a broken step to itself, and remarks on unknown keys', () => {
    const { steps, remarks, fault } = read(
      'member: S2\ncolour: red\nsteps:\n  - 17\n  - { sum: forces up, write: "RA = P" }\n',
    );
    expect(fault).toBeUndefined();
    expect(steps.map(({ faults }) => faults.length)).toEqual([1, 0]);
    expect(remarks.map(({ code }) => code)).toEqual(['unknown-key']);
  });

  test('says of a file without a member, or without YAML, what is wrong', () => {
    expect(read('steps: []\n').fault?.message).toContain('member');
    expect(read('member: [\n').fault?.severity).toBe('error');
  });

  test('a reply without a name and a day is left out, and said so', () => {
    const { replies, remarks } = read(
      'member: S2\nsteps: []\nreplies:\n  - { step: 1, line: "RA = P", reply: seen }\n  - { step: 1, line: "RA = P", reply: seen, by: JR, date: 2031-03-10 }\n',
    );
    expect(replies.map(({ by, closes }) => [by, closes])).toEqual([['JR', false]]);
    expect(remarks.map(({ code }) => code)).toContain('missing-key');
  });
});
