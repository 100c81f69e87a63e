import { dimensions } from './dimension-names.ts';
import { per, type UnitEntry } from './unit-entry.ts';

/*
 * "SP 811" is NIST Special Publication 811 (2008 edition), A. Thompson and B. N. Taylor, Guide for the Use of
 * the International System of Units; its appendix B.8 lists factors alphabetically, exact ones in bold.
 */
const composed = 'SP 811, B.8: from the exact foot and pound-force';

const foot = 0.3048;
const inch = 0.0254;
/** 0.45359237 kg × 9.80665 m/s² has exactly this value. */
const poundForce = 4.4482216152605;
const kip = 4448.2216152605;

const system = 'us';
const force = dimensions.force;
const length = dimensions.length;
const perLength = dimensions['force-per-length'];
const pressure = dimensions.pressure;

/** US customary units: forces, what is made of them, lengths, temperature changes. */
export const usUnits: readonly UnitEntry[] = [
  {
    symbol: 'kip',
    aliases: ['kips', 'k'],
    dimension: force,
    inSi: kip,
    system,
    source: 'SP 811, B.8: kip = 1000 lbf',
  },
  {
    symbol: 'lb',
    aliases: ['lbs', 'lbf', '#'],
    dimension: force,
    system,
    inSi: poundForce,
    source:
      'SP 811, B.8: lbf = 0.453 592 37 kg (avoirdupois pound, 1959) × 9.806 65 m/s² (standard gravity, CGPM 1901), exactly',
  },
  {
    symbol: 'klf',
    dimension: perLength,
    inSi: kip / foot,
    system,
    shortFor: per('kip', 'ft'),
    source: composed,
  },
  {
    symbol: 'plf',
    dimension: perLength,
    inSi: poundForce / foot,
    system,
    shortFor: per('lb', 'ft'),
    source: composed,
  },
  {
    symbol: 'ksf',
    dimension: pressure,
    inSi: kip / foot ** 2,
    system,
    shortFor: per('kip', 'ft', 2),
    source: composed,
  },
  {
    symbol: 'psf',
    dimension: pressure,
    inSi: poundForce / foot ** 2,
    system,
    shortFor: per('lb', 'ft', 2),
    source: composed,
  },
  {
    symbol: 'ksi',
    dimension: pressure,
    inSi: kip / inch ** 2,
    system,
    shortFor: per('kip', 'in', 2),
    source: composed,
  },
  {
    symbol: 'psi',
    dimension: pressure,
    inSi: poundForce / inch ** 2,
    system,
    shortFor: per('lb', 'in', 2),
    source: composed,
  },
  {
    symbol: 'pcf',
    dimension: dimensions['unit-weight'],
    system,
    inSi: poundForce / foot ** 3,
    shortFor: per('lb', 'ft', 3),
    source: composed,
  },
  {
    symbol: 'ft',
    dimension: length,
    inSi: foot,
    system,
    source: 'SP 811, B.6: international foot (1959), 0.3048 m exactly',
  },
  {
    symbol: 'in',
    dimension: length,
    inSi: inch,
    system,
    source: 'SP 811, B.8: inch = ft/12, 0.0254 m exactly',
  },
  {
    symbol: 'yd',
    dimension: length,
    inSi: 0.9144,
    system,
    source: 'SP 811, B.8: yard = 3 ft, 0.9144 m exactly',
  },
  {
    symbol: '°F',
    aliases: ['F'],
    dimension: dimensions.temperature,
    system,
    inSi: 5 / 9,
    source:
      'SP 811, B.8: degree Fahrenheit (temperature interval) = K/1.8, exactly; no offset',
  },
];
