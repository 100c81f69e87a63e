import { describe, expect, test } from 'vitest';
import { markFiles } from './sheets/mark-sheets.ts';
import { simpleMembers } from './sheets/simple-beams.ts';

const members = { S1: simpleMembers.S1 ?? '' };
const good = '  - { sum: forces up, write: "RA + RC = 8.4 kip" }\n';

function marksOf(write: string): ReturnType<typeof markFiles>[number] {
  const text = `member: S1\nsteps:\n${good}  - sum: moments about A\n    write: ${JSON.stringify(write)}\n${good}`;
  const [file] = markFiles(members, { 'worked/a.yaml': text });
  return file!;
}

const lines: Readonly<Record<string, string>> = {
  'brackets that do not close': '((RA * 6 ft = 0',
  'brackets that do not open': 'RA * 6 ft)) = 0',
  'ten thousand characters': 'RC * 21 ft '.repeat(1000),
  'ten thousand digits': `${'9'.repeat(10_000)} kip = 0`,
  'a division by nothing': 'RC * 21 ft - 8.4 kip * 6 ft / 0 = 0',
  'a name of the language': '__proto__ * 6 ft = 0',
  'a property of the language': 'constructor + toString = 0',
  'ten thousand brackets': `${'('.repeat(5000)}RC${')'.repeat(5000)} = 0`,
  'control characters': 'RC \u0007\u001b[2J * 21 ft = 0',
  'nothing but signs': '+-*/^=',
  'a tower of powers': '2^9^9^9^9 kip = RC',
  'an unknown of its own square': 'RC * RC * 21 ft = 0',
  'only an equals sign': '=',
  'a division by a difference of nothing': 'RC / (6 ft - 6 ft) = 0',
  'a root of less than nothing': 'RC = sqrt(-4) * 1 kip',
  'a thousand equals signs': 'RC = '.repeat(380),
  'a word in another alphabet that nobody declared': 'RC * длина = 0',
};

describe('hostile lines', () => {
  for (const [title, line] of Object.entries(lines))
    test(`${title}: not read, said why, and the steps around it stand`, () => {
      const start = performance.now();
      const { steps } = marksOf(line);
      expect(steps.map(({ verdict }) => verdict)).toEqual(['right', 'unread', 'right']);
      expect(steps[1]?.findings[0]?.message).toMatch(/^[A-Z`].*\.$/su);
      expect(steps[1]?.findings[0]?.message ?? '').not.toMatch(/\p{Cc}/u);
      expect(performance.now() - start).toBeLessThan(2000);
    });

  test('a line of forty terms that fit nothing is answered within two seconds', () => {
    const loads = Array.from(
      { length: 14 },
      (_, at) => `{ case: L, point: ${(at + 1) * 1.37} kip, at: ${at + 2} ft }`,
    );
    const member = `mark: S9\nkind: beam\npoints: { A: 0 ft, C: 21 ft }\nsupports: { A: pin, C: roller }\nloads: [ ${loads.join(', ')} ]\n`;
    const terms = Array.from(
      { length: 38 },
      (_, at) => `${at + 3.3} kip * ${at / 7 + 1} ft`,
    );
    const text = `member: S9\nsteps:\n  - { sum: moments about A, write: "RC*21 ft - ${terms.join(' - ')} = 0" }\n`;
    const start = performance.now();
    const [file] = markFiles({ S9: member }, { 'worked/a.yaml': text });
    expect(['wrong', 'unread']).toContain(file?.steps[0]?.verdict);
    expect(performance.now() - start).toBeLessThan(4000);
  });
});

/** A text in two bytes a character with its mark in front, as some editors save it. */
function utf16(text: string): Uint8Array {
  return new Uint8Array(
    Array.from(`\ufeff${text}`).flatMap((character) => {
      const code = character.charCodeAt(0);
      return [code % 256, code >> 8];
    }),
  );
}

describe('hostile files', () => {
  const other = `member: S1\nsteps:\n${good}`;
  const files: Readonly<Record<string, string | Uint8Array>> = {
    'no YAML': 'member: [ S1\n  steps: {',
    'a list': '- 1\n- 2\n',
    'Latin-1': new Uint8Array([...new TextEncoder().encode('member: S1 # '), 0xe9, 10]),
    'UTF-16': utf16(other),
    'a zero byte': `member: S1\u0000\nsteps:\n${good}`,
    'a thousand brackets': `member: ${'['.repeat(1000)}`,
    nothing: '',
    'a member that nobody knows': 'member: Z9\nsteps: []\n',
    'a loading that nobody knows': `member: S1\nloads: W\nsteps:\n${good}`,
  };
  for (const [title, text] of Object.entries(files))
    test(`${title}: a fault of that file, and the others are marked`, () => {
      const marked = markFiles(members, {
        'worked/a.yaml': text,
        'worked/b.yaml': other,
      });
      expect(marked.map(({ file }) => file)).toEqual([
        'worked/a.yaml',
        'worked/b.yaml',
      ]);
      expect(marked[0]?.fault?.message).toBeTruthy();
      expect(marked[1]?.steps.map(({ verdict }) => verdict)).toEqual(['right']);
    });

  test('a step that is no map spoils no other', () => {
    const text = `member: S1\nsteps:\n${good}  - 17\n${good}`;
    const [file] = markFiles(members, { 'worked/a.yaml': text });
    expect(file?.steps.map(({ verdict }) => verdict)).toEqual([
      'right',
      'unread',
      'right',
    ]);
  });

  test('a symbol may have any name', () => {
    const text = `member: S1\nnames: { __proto__: reaction C up, constructor: reaction A up }\nsteps:\n  - { sum: forces up, write: "__proto__ + constructor = 8.4 kip", so: "__proto__ = 2.4 kip" }\n`;
    const [file] = markFiles(members, { 'worked/a.yaml': text });
    expect(file?.steps.map(({ verdict }) => verdict)).toEqual(['right']);
  });
});
