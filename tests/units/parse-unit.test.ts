import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseUnit, unitText } from '../../src/units/index.ts';

describe('units as people write them', () => {
  test.each([
    ['kip ft', 'kip ft'],
    ['kip-ft', 'kip ft'],
    ['k-ft', 'kip ft'],
    ['kip·ft', 'kip ft'],
    ['kip⋅ft', 'kip ft'],
    ['kip*ft', 'kip ft'],
    ['kN × m', 'kN m'],
    ['lb ft', 'lb ft'],
    ['kip in', 'kip in'],
    ['kips/ft', 'kip/ft'],
    ['#/ft', 'lb/ft'],
    ['klf', 'klf'],
    ['plf', 'plf'],
    ['N/mm', 'N/mm'],
    ['kN/mm', 'kN/mm'],
    ['kN m/rad', 'kN m/rad'],
    ['kip ft/rad', 'kip ft/rad'],
    ['in^4', 'in^4'],
    ['in⁴', 'in^4'],
    ['in4', 'in^4'],
    ['mm²', 'mm^2'],
    ['lb/ft^2', 'lb/ft^2'],
    ['kN/m²', 'kN/m^2'],
    ['1/K', '1/K'],
    ['1 / °F', '1/°F'],
    ['/K', '1/K'],
    ['K^-1', '1/K'],
    ['K⁻¹', '1/K'],
    ['kN/m/rad', 'kN/(m rad)'],
    ['kN/(m rad)', 'kN/(m rad)'],
    ['°', 'deg'],
    ['deg', 'deg'],
    ['°C', '°C'],
    ['F', '°F'],
    ['  ', '1'],
  ])('%s is %s', (written, data) => {
    const { unit } = parseUnit(written);
    expect(unit).toBeDefined();
    expect(unitText(unit!, 'data')).toBe(data);
  });

  test.each([
    ['kN/m rad', 'malformed', 'rad'],
    ['kip/', 'malformed', ''],
    ['kip--ft', 'malformed', '-'],
    ['kip)', 'malformed', ')'],
    ['kip/(ft', 'malformed', ''],
    ['ft^0', 'malformed', 'ft^0'],
    ['ft^99', 'malformed', 'ft^99'],
    ['kip 5', 'malformed', '5'],
    ['fto', 'unknown-unit', 'fto'],
    ['kip ftt', 'unknown-unit', 'ftt'],
    ['1/', 'malformed', ''],
    ['1', 'malformed', '1'],
    ['constructor', 'unknown-unit', 'constructor'],
  ])('%s is refused at its fault', (written, kind, place) => {
    const { fault } = parseUnit(written);
    expect(fault?.kind).toBe(kind);
    expect(written.slice(fault!.start, fault!.end)).toBe(place);
  });

  test('any text gives a unit or a fault inside it', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 30 }), (text) => {
        const { fault } = parseUnit(text);
        if (fault === undefined) return;
        expect(fault.start).toBeGreaterThanOrEqual(0);
        expect(fault.end).toBeGreaterThanOrEqual(fault.start);
        expect(fault.end).toBeLessThanOrEqual(text.length);
      }),
    );
  });
});
