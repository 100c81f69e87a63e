import { describe, expect, test } from 'vitest';
import type { CrossSection } from '../../../src/project/definitions.ts';
import { crossSectionNames, findCrossSection } from '../../../src/standards/index.ts';
import { crossSections } from '../../../src/standards/cross-sections/find-cross-section.ts';
import type { TabulatedCrossSection } from '../../../src/standards/index.ts';

/** Area and strong-axis inertia of two flanges and a web, with root fillets where a radius is given. */
function plateModel(section: TabulatedCrossSection): { A: number; I: number } {
  const h = section.depth.si;
  const b = section.plates.flangeWidth.si;
  const t = section.plates.flangeThickness.si;
  const w = section.plates.webThickness.si;
  const r = section.plates.rootRadius?.si ?? 0;
  const web = h - 2 * t;
  const fillet = (1 - Math.PI / 4) * r * r;
  // Distance of a fillet's centroid from the corner that it fills, along either leg.
  const arm = web / 2 - 0.22337 * r;
  return {
    A: 2 * b * t + w * web + 4 * fillet,
    I: (b * h ** 3 - (b - w) * web ** 3) / 12 + 4 * fillet * arm * arm,
  };
}

const near = (value: number, expected: number, part: number): void => {
  expect(Math.abs(value / expected - 1)).toBeLessThan(part);
};

describe('built-in cross-sections', () => {
  const withRadius = crossSections.filter((s) => s.plates.rootRadius !== undefined);
  const without = crossSections.filter((s) => s.plates.rootRadius === undefined);

  test.each(withRadius.map((s) => [s.name, s] as const))(
    '%s agrees with its plates and fillets to half a per cent',
    (_name, section) => {
      const plates = plateModel(section);
      near(section.A.si, plates.A, 0.005);
      near(section.I.si, plates.I, 0.005);
    },
  );

  test.each(without.map((s) => [s.name, s] as const))(
    '%s agrees with its plates, fillets left out, to five per cent',
    (_name, section) => {
      const plates = plateModel(section);
      near(section.A.si, plates.A, 0.05);
      near(section.I.si, plates.I, 0.05);
    },
  );

  test.each(
    crossSections.flatMap((s) =>
      s.S === undefined ? [] : [[s.name, s, s.S] as const],
    ),
  )(
    '%s has the section modulus that its inertia and depth give',
    (_name, section, S) => {
      near(S.si, section.I.si / (section.depth.si / 2), 0.015);
    },
  );

  test.each(
    crossSections.flatMap((s) =>
      s.weight === undefined ? [] : [[s.name, s, s.weight] as const],
    ),
  )('%s weighs what its area of steel weighs', (_name, section, weight) => {
    const density = 76970; // 490 lb/ft³ in N/m³
    near(weight.si, section.A.si * density, 0.03);
  });

  test('every one has its source, and a name of its own', () => {
    expect(crossSections.every((s) => s.source !== '')).toBe(true);
    expect(new Set(crossSectionNames()).size).toBe(crossSectionNames().length);
  });
});

describe('findCrossSection', () => {
  test.each(['W12x26', 'w12X26', 'W12×26', 'W 12 x 26', ' w12x26 '])(
    'finds %s',
    (spelt) => {
      expect(findCrossSection(spelt)?.name).toBe('W12x26');
    },
  );

  test.each([
    ['IPE 300', 'IPE300'],
    ['HE 200 A', 'HEA200'],
    ['HEB-240', 'HEB240'],
  ])('reads %s as %s', (spelt, name) => {
    expect(findCrossSection(spelt)?.name).toBe(name);
  });

  test('finds nothing for a name that no table has', () => {
    expect(findCrossSection('W12x27')).toBeUndefined();
    expect(findCrossSection('')).toBeUndefined();
  });

  test('keeps the table’s own digits and unit for print', () => {
    // What a table gives is a cross-section of a project as it stands.
    const section: CrossSection | undefined = findCrossSection('W10x33');
    expect(section?.S).toMatchObject({ text: '35.0', compound: false });
    expect(section?.S?.unit.factors).toEqual([{ symbol: 'in', power: 3 }]);
    expect(section?.I?.si).toBeCloseTo(171 * 0.0254 ** 4, 12);
  });

  test('says where values were written down from memory', () => {
    expect(findCrossSection('W8x10')?.source).toContain('from memory');
    expect(findCrossSection('W44x335')?.source).not.toContain('from memory');
  });
});
