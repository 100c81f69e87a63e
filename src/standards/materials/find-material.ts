import { unitOf, type Unit } from '../../units/index.ts';
import { given } from '../given.ts';
import { tabulatedName } from '../tabulated-name.ts';
import type { TabulatedMaterial } from './material.ts';

const one = (symbol: string, power: number = 1): Unit => unitOf([{ symbol, power }]);
const perCubicMetre = unitOf([
  { symbol: 'kN', power: 1 },
  { symbol: 'm', power: -3 },
]);

const usSteel = {
  E: given('29000', one('ksi')),
  density: given('490', one('pcf')),
  expansion: given('6.5e-6', one('°F', -1)),
  source:
    'AISC 360-22, symbols (E); AISC Steel Construction Manual, part 17 (density, expansion); from memory',
};
const euSteel = {
  E: given('210', one('GPa')),
  density: given('78.5', perCubicMetre),
  expansion: given('12e-6', one('K', -1)),
  source:
    'EN 1993-1-1 3.2.6 (E, expansion); EN 1991-1-1 Table A.4, upper value (density); from memory',
};
const concrete = {
  density: given('25', perCubicMetre),
  expansion: given('10e-6', one('K', -1)),
  source:
    'EN 1992-1-1 Table 3.1 (E is E_cm) and 3.1.3(5) (expansion); EN 1991-1-1 Table A.1, reinforced (density); from memory',
};
const timber = {
  source:
    'EN 338 or EN 14080, mean modulus along the grain (E); EN 1991-1-1 Table A.3 (density); from memory',
};

/** Every built-in material. Strengths belong to limit states and are not here. */
export const materials: readonly TabulatedMaterial[] = [
  { name: 'A992', ...usSteel },
  { name: 'A36', ...usSteel },
  { name: 'A572', ...usSteel },
  { name: 'S235', ...euSteel },
  { name: 'S275', ...euSteel },
  { name: 'S355', ...euSteel },
  { name: 'S460', ...euSteel },
  { name: 'C25/30', E: given('31', one('GPa')), ...concrete },
  { name: 'C30/37', E: given('33', one('GPa')), ...concrete },
  {
    name: 'C24',
    E: given('11', one('GPa')),
    density: given('4.2', perCubicMetre),
    ...timber,
  },
  {
    name: 'GL24h',
    E: given('11.5', one('GPa')),
    density: given('3.7', perCubicMetre),
    ...timber,
  },
];

const byName: ReadonlyMap<string, TabulatedMaterial> = new Map(
  materials.map((entry) => [tabulatedName(entry.name), entry]),
);

/** The built-in material of a name, in any case; absent where the tables have none. */
export function findMaterial(name: string): TabulatedMaterial | undefined {
  return byName.get(tabulatedName(name));
}

/** Names of the built-in materials, for hints. */
export function materialNames(): readonly string[] {
  return materials.map((entry) => entry.name);
}
