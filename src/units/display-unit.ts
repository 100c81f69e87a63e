import { unitOf } from './unit-algebra.ts';
import type { Unit } from './unit.ts';

/** What a figure on a sheet stands for, as far as the choice of its unit goes. */
export type Display =
  | 'force'
  | 'length'
  | 'moment'
  | 'force-per-length'
  | 'pressure'
  | 'deflection'
  | 'stress'
  | 'angle'
  | 'direction'
  | 'stiffness'
  | 'rotational-stiffness'
  | 'rigidity'
  | 'area'
  /** A length times a length, as under an influence line for moment. */
  | 'area-under-line'
  | 'section-modulus'
  | 'inertia'
  | 'unit-weight'
  | 'temperature'
  | 'expansion'
  | 'pure';

const one = (symbol: string, power: number = 1): Unit => unitOf([{ symbol, power }]);
const product = (a: string, b: string, power: number): Unit =>
  unitOf([
    { symbol: a, power: 1 },
    { symbol: b, power },
  ]);
const perRadian = (a: string, b: string): Unit =>
  unitOf([
    { symbol: a, power: 1 },
    { symbol: b, power: 1 },
    { symbol: 'rad', power: -1 },
  ]);

const units: Readonly<Record<'us' | 'si', Readonly<Record<Display, Unit>>>> = {
  us: {
    force: one('kip'),
    length: one('ft'),
    moment: product('kip', 'ft', 1),
    'force-per-length': product('kip', 'ft', -1),
    pressure: one('psf'),
    deflection: one('in'),
    stress: one('ksi'),
    angle: one('rad'),
    direction: one('deg'),
    stiffness: product('kip', 'in', -1),
    'rotational-stiffness': perRadian('kip', 'ft'),
    rigidity: product('kip', 'ft', 2),
    area: one('in', 2),
    'area-under-line': one('ft', 2),
    'section-modulus': one('in', 3),
    inertia: one('in', 4),
    'unit-weight': one('pcf'),
    temperature: one('°F'),
    expansion: one('°F', -1),
    pure: unitOf([]),
  },
  si: {
    force: one('kN'),
    length: one('m'),
    moment: product('kN', 'm', 1),
    'force-per-length': product('kN', 'm', -1),
    pressure: product('kN', 'm', -2),
    deflection: one('mm'),
    stress: one('MPa'),
    angle: one('rad'),
    direction: one('deg'),
    stiffness: product('kN', 'mm', -1),
    'rotational-stiffness': perRadian('kN', 'm'),
    rigidity: product('kN', 'm', 2),
    area: one('mm', 2),
    'area-under-line': one('m', 2),
    'section-modulus': one('mm', 3),
    inertia: one('mm', 4),
    'unit-weight': product('kN', 'm', -3),
    temperature: one('K'),
    expansion: one('K', -1),
    pure: unitOf([]),
  },
};

/** The unit in which a project of a system prints something: moments in kip·ft or kN·m, deflections in in or mm … */
export function displayUnit(system: 'us' | 'si', what: Display): Unit {
  return units[system][what];
}
