import { describe, expect, test } from 'vitest';
import {
  namedCombinations,
  nationalValueNames,
  type CombinationCase,
  type NamedSetRequest,
} from '../../../src/standards/index.ts';

const G: CombinationCase = { mark: 'G', kind: 'dead' };
const Q: CombinationCase = { mark: 'Q', kind: 'live', category: 'A' };
const W: CombinationCase = { mark: 'W', kind: 'wind' };
const S: CombinationCase = { mark: 'S', kind: 'snow' };

const list = (
  cases: readonly CombinationCase[],
  request: Omit<NamedSetRequest, 'name'> = {},
) =>
  namedCombinations(
    { name: 'en1990-uls', ...request },
    { cases, alternatives: [], standards: [] },
  );
const marks = (...parameters: Parameters<typeof list>): string[] =>
  list(...parameters).combinations.map((entry) => entry.mark);

describe('en1990-uls', () => {
  test('leads with each variable action in turn, and lets one that relieves be left out', () => {
    const expected = [
      '1.35G',
      '1.35G + 1.5Q',
      '1.35G + 1.5W',
      '1.35G + 1.5Q + 0.9W',
      '1.35G + 1.5W + 1.05Q',
    ];
    expect(marks([G, Q, W])).toEqual([
      ...expected,
      ...expected.map((mark) => mark.replace('1.35G', 'G')),
    ]);
  });

  test('says which action leads', () => {
    const entry = list([G, Q, W]).combinations.find(
      (c) => c.mark === '1.35G + 1.5W + 1.05Q',
    );
    expect(entry?.clauses).toEqual(['EN 1990:2002+A1 6.4.3.2 (6.10), W leading']);
  });

  test.each([
    ['A', 1.05],
    ['B', 1.05],
    ['C', 1.05],
    ['D', 1.05],
    ['E', 1.5],
    ['F', 1.05],
    ['G', 1.05],
  ])('accompanies with psi0 of category %s', (category, factor) => {
    const found = marks([G, { mark: 'Q', kind: 'live', category }, W]);
    expect(found).toContain(`1.35G + 1.5W + ${factor}Q`);
  });

  test('leaves a roof of category H out where it does not lead', () => {
    const found = marks([G, { mark: 'R', kind: 'roof-live', category: 'h' }, S]);
    expect(found.filter((mark) => mark.startsWith('1.35G'))).toEqual([
      '1.35G',
      '1.35G + 1.5R',
      '1.35G + 1.5S',
      '1.35G + 1.5R + 0.75S',
    ]);
  });

  test('takes all imposed floor loads as one action', () => {
    const found = marks([G, Q, { mark: 'Q2', kind: 'live', category: 'E' }, W]);
    expect(found).toContain('1.35G + 1.5Q + 1.5Q2 + 0.9W');
    expect(found).toContain('1.35G + 1.5W + 1.05Q + 1.5Q2');
    expect(found).not.toContain('1.35G + 1.5Q');
  });

  test('factors earth apart from dead load', () => {
    expect(marks([G, { mark: 'H', kind: 'earth' }])).toEqual([
      '1.35G + 1.35H',
      'G + 1.35H',
      '1.35G + H',
      'G + H',
    ]);
  });

  test('leads with one wind at a time and names that one', () => {
    const winds: CombinationCase[] = [
      { mark: 'W1', kind: 'wind' },
      { mark: 'W2', kind: 'wind' },
    ];
    const { combinations } = list([G, ...winds]);
    expect(combinations.slice(1, 3)).toMatchObject([
      {
        mark: '1.35G + 1.5W1',
        clauses: ['EN 1990:2002+A1 6.4.3.2 (6.10), W1 leading'],
      },
      {
        mark: '1.35G + 1.5W2',
        clauses: ['EN 1990:2002+A1 6.4.3.2 (6.10), W2 leading'],
      },
    ]);
  });

  test('works 6.10a and 6.10b together on request', () => {
    expect(marks([G, Q, W], { expression: '6.10ab' })).toEqual([
      '1.35G',
      '1.35G + 1.05Q',
      '1.35G + 0.9W',
      '1.35G + 1.05Q + 0.9W',
      'G',
      'G + 1.05Q',
      'G + 0.9W',
      'G + 1.05Q + 0.9W',
      '1.15G',
      '1.15G + 1.5Q',
      '1.15G + 1.5W',
      '1.15G + 1.5Q + 0.9W',
      '1.15G + 1.5W + 1.05Q',
      'G + 1.5Q',
      'G + 1.5W',
      'G + 1.5Q + 0.9W',
      'G + 1.5W + 1.05Q',
    ]);
  });

  test('takes national values, and says so', () => {
    const found = list([G, Q, W], { national: { gamma_G_sup: 1.2, psi0_wind: 0.5 } });
    expect(found.combinations.map((entry) => entry.mark)).toContain(
      '1.2G + 1.5Q + 0.75W',
    );
    expect(found.notes.map((note) => note.text)).toContain(
      'In place of recommended values the project gives gamma_G_sup = 1.2, psi0_wind = 0.5.',
    );
  });

  test.each([
    [{ gamma_g: 1.2 }, 'gamma_g is no national value of EN 1990'],
    [{ xi: -1 }, 'xi must be a number from 0 to 10'],
    [{ xi: Number.NaN }, 'xi must be a number from 0 to 10'],
  ])('refuses the national values %j', (national, message) => {
    const found = list([G, Q], { national });
    expect(found.combinations).toEqual([]);
    expect(found.problems[0]?.message).toContain(message);
  });

  test('knows a national value for every row of the table', () => {
    expect(nationalValueNames).toContain('psi0_A');
    expect(nationalValueNames).toContain('psi2_temperature');
    expect(nationalValueNames).toHaveLength(4 + 3 * 11);
  });

  test('does not reduce an imposed load of no known category, and says so', () => {
    for (const category of [undefined, 'Z']) {
      const bare = { mark: 'Q', kind: 'live' as const };
      const found = list([G, category === undefined ? bare : { ...bare, category }, W]);
      expect(found.combinations.map((entry) => entry.mark)).toContain(
        '1.35G + 1.5W + 1.5Q',
      );
      expect(found.notes.some((n) => n.text.startsWith('No category'))).toBe(true);
    }
  });

  test('warns that EQU is not included', () => {
    expect(
      list([G]).notes.some((n) => n.kind === 'caution' && n.text.includes('EQU')),
    ).toBe(true);
  });

  test('tells of cases that it does not take', () => {
    const rest = (['rain', 'fluid', 'seismic', 'settlement'] as const).map((kind) => ({
      mark: kind,
      kind,
    }));
    expect(
      list([G, ...rest, { mark: 'X' }]).untaken.map((entry) => entry.case),
    ).toEqual(['rain', 'fluid', 'seismic', 'settlement', 'X']);
  });

  test('refuses more combinations than anybody can read', () => {
    const winds = Array.from({ length: 300 }, (_, index) => ({
      mark: `W${index}`,
      kind: 'wind' as const,
    }));
    const found = list([G, Q, ...winds]);
    expect(found.combinations).toEqual([]);
    expect(found.problems.map((problem) => problem.kind)).toEqual(['too-many']);
  });
});
