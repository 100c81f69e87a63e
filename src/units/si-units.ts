import { dimensions } from './dimension-names.ts';
import { per, type UnitEntry } from './unit-entry.ts';

/* "SI brochure" is BIPM, The International System of Units, 9th edition (2019). */
const prefixed = 'SI brochure, table 7: SI prefixes';
const pascal = 'SI brochure, table 4: pascal = N/m²';

const system = 'si';
const force = dimensions.force;
const length = dimensions.length;
const pressure = dimensions.pressure;
const temperature = dimensions.temperature;

/** SI units: forces, pressures, lengths, temperature changes. */
export const siUnits: readonly UnitEntry[] = [
  { symbol: 'MN', dimension: force, inSi: 1e6, system, source: prefixed },
  { symbol: 'kN', dimension: force, inSi: 1e3, system, source: prefixed },
  {
    symbol: 'N',
    dimension: force,
    inSi: 1,
    system,
    source: 'SI brochure, table 4: newton',
  },
  {
    symbol: 'GPa',
    dimension: pressure,
    inSi: 1e9,
    system,
    shortFor: per('kN', 'mm', 2),
    source: `${pascal}; ${prefixed}`,
  },
  {
    symbol: 'MPa',
    dimension: pressure,
    inSi: 1e6,
    system,
    shortFor: per('N', 'mm', 2),
    source: `${pascal}; ${prefixed}`,
  },
  {
    symbol: 'kPa',
    dimension: pressure,
    inSi: 1e3,
    system,
    shortFor: per('kN', 'm', 2),
    source: `${pascal}; ${prefixed}`,
  },
  {
    symbol: 'Pa',
    dimension: pressure,
    inSi: 1,
    system,
    shortFor: per('N', 'm', 2),
    source: pascal,
  },
  {
    symbol: 'm',
    dimension: length,
    inSi: 1,
    system,
    source: 'SI brochure, table 2: metre',
  },
  { symbol: 'cm', dimension: length, inSi: 0.01, system, source: prefixed },
  { symbol: 'mm', dimension: length, inSi: 0.001, system, source: prefixed },
  {
    symbol: 'K',
    dimension: temperature,
    inSi: 1,
    system,
    source: 'SI brochure, table 2: kelvin',
  },
  {
    symbol: '°C',
    dimension: temperature,
    inSi: 1,
    system,
    source: 'SI brochure, 2.3.1: a difference of 1 °C is 1 K',
  },
];

/** Units of angle, common to both systems. */
export const angleUnits: readonly UnitEntry[] = [
  {
    symbol: 'rad',
    dimension: dimensions.angle,
    inSi: 1,
    system: 'both',
    source: 'SI brochure, table 4: radian',
  },
  {
    symbol: 'deg',
    aliases: ['°'],
    dimension: dimensions.angle,
    system: 'both',
    inSi: Math.PI / 180,
    source: 'SI brochure, table 8: degree = (π/180) rad',
  },
];
