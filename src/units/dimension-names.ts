import { dimension, sameDimension, type Dimension } from './dimension.ts';

/** The dimensions that calculations here speak of, by name. */
export type DimensionName =
  | 'pure'
  | 'length'
  | 'area'
  | 'volume'
  | 'inertia'
  | 'force'
  | 'force-per-length'
  | 'pressure'
  | 'unit-weight'
  | 'moment'
  | 'rotational-stiffness'
  | 'rigidity'
  | 'angle'
  | 'temperature'
  | 'expansion'
  | 'curvature';

interface DimensionEntry {
  readonly dimension: Dimension;
  /** How a sentence speaks of such a quantity, with its article. */
  readonly words: string;
  /** Units that one would write, US first, in the order in which hints name them. */
  readonly units: readonly string[];
}

const entries: Readonly<Record<DimensionName, DimensionEntry>> = {
  pure: { dimension: dimension({}), words: 'a plain number', units: [] },
  length: {
    dimension: dimension({ length: 1 }),
    words: 'a length',
    units: ['ft', 'in', 'm', 'mm'],
  },
  area: {
    dimension: dimension({ length: 2 }),
    words: 'an area',
    units: ['in^2', 'ft^2', 'mm^2', 'cm^2'],
  },
  volume: {
    dimension: dimension({ length: 3 }),
    words: 'a length cubed',
    units: ['in^3', 'mm^3', 'cm^3'],
  },
  inertia: {
    dimension: dimension({ length: 4 }),
    words: 'a length to the fourth power',
    units: ['in^4', 'mm^4', 'cm^4'],
  },
  force: {
    dimension: dimension({ force: 1 }),
    words: 'a force',
    units: ['kip', 'lb', 'kN', 'N'],
  },
  'force-per-length': {
    dimension: dimension({ force: 1, length: -1 }),
    words: 'a force per length',
    units: ['kip/ft', 'plf', 'kip/in', 'kN/m', 'N/mm'],
  },
  pressure: {
    dimension: dimension({ force: 1, length: -2 }),
    words: 'a force per area',
    units: ['psf', 'ksi', 'kN/m^2', 'MPa', 'GPa'],
  },
  'unit-weight': {
    dimension: dimension({ force: 1, length: -3 }),
    words: 'a force per volume',
    units: ['pcf', 'kN/m^3'],
  },
  moment: {
    dimension: dimension({ force: 1, length: 1 }),
    words: 'a moment',
    units: ['kip ft', 'kip in', 'lb ft', 'kN m', 'N m'],
  },
  'rotational-stiffness': {
    dimension: dimension({ force: 1, length: 1, angle: -1 }),
    words: 'a moment per angle',
    units: ['kip ft/rad', 'kN m/rad'],
  },
  rigidity: {
    dimension: dimension({ force: 1, length: 2 }),
    words: 'a bending stiffness',
    units: ['kip ft^2', 'kip in^2', 'kN m^2'],
  },
  angle: {
    dimension: dimension({ angle: 1 }),
    words: 'an angle',
    units: ['deg', 'rad'],
  },
  temperature: {
    dimension: dimension({ temperature: 1 }),
    words: 'a temperature change',
    units: ['F', 'K'],
  },
  expansion: {
    dimension: dimension({ temperature: -1 }),
    words: 'a strain per temperature change',
    units: ['1/F', '1/K'],
  },
  curvature: {
    dimension: dimension({ length: -1 }),
    words: 'a curvature',
    units: ['1/ft', '1/in', '1/m'],
  },
};

const byName = (name: DimensionName): Dimension => entries[name].dimension;

/** The named dimensions, so that a reader can say what it expects: `dimensions.length`. */
export const dimensions: Readonly<Record<DimensionName, Dimension>> = {
  pure: byName('pure'),
  length: byName('length'),
  area: byName('area'),
  volume: byName('volume'),
  inertia: byName('inertia'),
  force: byName('force'),
  'force-per-length': byName('force-per-length'),
  pressure: byName('pressure'),
  'unit-weight': byName('unit-weight'),
  moment: byName('moment'),
  'rotational-stiffness': byName('rotational-stiffness'),
  rigidity: byName('rigidity'),
  angle: byName('angle'),
  temperature: byName('temperature'),
  expansion: byName('expansion'),
  curvature: byName('curvature'),
};

/** A dimension in words with its article, for messages: `a force per length`. */
export function nameDimension(of: Dimension): string {
  const entry = entryOf(of);
  if (entry !== undefined) return entry.words;
  const bases = [
    ['N', of.force],
    ['m', of.length],
    ['K', of.temperature],
    ['rad', of.angle],
  ] as const;
  const factors = bases
    .filter(([, power]) => power !== 0)
    .map(([symbol, power]) => (power === 1 ? symbol : `${symbol}^${power}`));
  return `a quantity in ${factors.join(' ')}`;
}

/** Units in which people write a quantity of a dimension, as they would be typed; none for a plain number. */
export function unitsThatFit(of: Dimension): readonly string[] {
  return entryOf(of)?.units ?? [];
}

function entryOf(of: Dimension): DimensionEntry | undefined {
  return Object.values(entries).find((entry) => sameDimension(entry.dimension, of));
}
