import { expect } from 'vitest';

/**
 * Quantities as publications print them, for tests that are checked against the page. The factors
 * stand here once more, apart from the program's own table, so that a slip there does not hide.
 */
const worth: Readonly<Record<string, number>> = {
  m: 1,
  mm: 1e-3,
  cm: 1e-2,
  ft: 0.3048,
  in: 0.0254,
  N: 1,
  kN: 1e3,
  lb: 4.4482216152605,
  kip: 4448.2216152605,
  psi: 4.4482216152605 / 0.0254 ** 2,
  ksi: 4448.2216152605 / 0.0254 ** 2,
  MPa: 1e6,
  GPa: 1e9,
  deg: Math.PI / 180,
  rad: 1,
};

/** The SI number that a text such as `12 lb/in`, `30 kN m` or `8356e4 mm^4` stands for. */
export function si(text: string): number {
  const { number, unit } = split(text);
  return number * unit;
}

/** Holds a value to a printed text: no further from it than half of its last printed place. */
export function expectPrinted(value: number, printed: string): void {
  const { number, unit, lastPlace } = split(printed);
  const shown = value / unit;
  expect(
    Math.abs(shown - number),
    `${shown} printed as ${printed}`,
  ).toBeLessThanOrEqual(0.5 * lastPlace * (1 + 1e-6));
}

/** Holds a value to a text that is exact, though it prints few digits: the answer is a round number. */
export function expectExactly(value: number, text: string): void {
  const { number, unit } = split(text);
  const shown = value / unit;
  expect(Math.abs(shown - number), `${shown}, exactly ${text}`).toBeLessThanOrEqual(
    1e-9 * Math.max(1, Math.abs(number)),
  );
}

function split(text: string): { number: number; unit: number; lastPlace: number } {
  const match = /^(-?\d+(?:\.(\d+))?(?:e(-?\d+))?)(?: (.+))?$/.exec(text);
  if (match === null) throw new RangeError(`not a printed quantity: ${text}`);
  const [, number = '', decimals = '', exponent = '0', unit = ''] = match;
  return {
    number: Number(number),
    unit: unit === '' ? 1 : unitWorth(unit),
    lastPlace: 10 ** (Number(exponent) - decimals.length),
  };
}

function unitWorth(unit: string): number {
  const [over = '', under] = unit.split('/');
  const product = (factors: string): number =>
    factors.split(' ').reduce((all, factor) => {
      const [symbol = '', power = '1'] = factor.split('^');
      const one = worth[symbol];
      if (one === undefined) throw new RangeError(`not a unit: ${factor}`);
      return all * one ** Number(power);
    }, 1);
  return product(over) / (under === undefined ? 1 : product(under));
}
