import { schemaLine } from './schema-line.ts';
import type { Units } from './units.ts';

/** loads.yaml of a new project. */
export function starterLoads(units: Units): string {
  const { dead, live, category, sets, source } = figures[units];
  return `${schemaLine('.schemas/loads.json')}
# Load cases: their kind decides how combinations factor them.
cases:
  D: { title: Dead, kind: dead }
  L: { title: Floor, kind: live${category}${source} }

# Loads per area; a member that takes one gives the width that it carries.
areas:
  floor: { D: ${dead}, L: ${live} }

# Named sets of combinations, each printed with its clause; your own may be added:
#   { mark: "D + 0.5L", factors: { D: 1, L: 0.5 }, for: service }
combinations: [ ${sets} ]
`;
}

const figures: Readonly<
  Record<
    Units,
    Readonly<Record<'dead' | 'live' | 'category' | 'sets' | 'source', string>>
  >
> = {
  us: {
    dead: '15 psf',
    live: '40 psf',
    category: '',
    source: ', source: the client',
    sets: 'asce7-strength, asce7-allowable',
  },
  si: {
    dead: '0.7 kN/m^2',
    live: '2 kN/m^2',
    category: ', category: A',
    source: ', source: the client',
    sets: 'en1990-uls, en1990-sls',
  },
};
