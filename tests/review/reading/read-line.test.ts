import { describe, expect, test } from 'vitest';
import { readLine } from '../../../src/review/reading/read-line.ts';
import { linearForm } from '../../../src/review/reading/linear-form.ts';

/** What an expression comes to in SI, by its first reading. */
function worth(text: string): number | undefined {
  const link = readLine(text, []).readings?.[0]?.links[0];
  return link === undefined
    ? undefined
    : linearForm(link, () => undefined).form?.constant;
}

const kip = 4448.2216152605;
const ft = 0.3048;

describe('readLine', () => {
  test.each([
    ['8.4 kip * 6 ft', 8.4 * kip * 6 * ft],
    ['8.4 kip (6 ft)', 8.4 * kip * 6 * ft],
    ['8.4 k × 6 ft', 8.4 * kip * 6 * ft],
    ['8.4 kips·6 ft', 8.4 * kip * 6 * ft],
    ['36 k-ft', 36 * kip * ft],
    ['36 kip-ft', 36 * kip * ft],
    ['52 kN·m', 52_000],
    ['1,250 lb', 1.25 * kip],
    ['250 plf * 4 ft', kip],
    [`12'-6"`, 12.5 * ft],
    ['6 1/2 in', (6.5 / 12) * ft],
    ['−(3 m)²', -9],
    ['sqrt(16)', 4],
    ['sin 30', 0.5],
    ['cos(60 deg)', 0.5],
  ])('reads %s', (text, si) => {
    expect(worth(text)).toBeCloseTo(si, 6);
  });

  test('reads 20/2 ft in both ways', () => {
    const worths = readLine('20/2 ft', []).readings?.map(
      ({ links: [link] }) =>
        link && linearForm(link, () => undefined).form?.constant.toFixed(3),
    );
    expect(worths).toContain((10 * ft).toFixed(3));
    expect(worths).toContain((10 / ft).toFixed(3));
  });

  test('splits a chain at its equals signs, and takes a direction in words from its end', () => {
    const [line] =
      readLine('RC = 50.4 kip ft / 21 ft = 2.4 kip down', ['RC']).readings ?? [];
    expect(line?.links.length).toBe(3);
    expect(line?.direction).toBe('down');
  });

  test('names the place where a line cannot be read', () => {
    const { fault } = readLine('RA + @', ['RA']);
    expect(fault).toMatchObject({ kind: 'syntax', start: 5, end: 6 });
    expect(readLine('(RA', ['RA']).fault?.kind).toBe('syntax');
  });

  test('a declared name beats a unit, except straight after a number', () => {
    const [line] = readLine('m * 3 m', ['m']).readings ?? [];
    const [link] = line?.links ?? [];
    expect(link?.kind === 'product' && link.factors.map(({ kind }) => kind)).toEqual([
      'name',
      'number',
    ]);
  });
});
