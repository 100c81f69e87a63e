import { schemaLine } from './schema-line.ts';
import type { Units } from './units.ts';

/** members/b1.yaml of a new project: a joist with an overhang. */
export function starterJoist(units: Units): string {
  const { joistSpan, overhang, spacing, railing } = figures[units];
  return `${schemaLine('../.schemas/beam.json')}
mark: B1                       # the short name that sheets and other members use
title: Floor joist
kind: beam

# Stations along the axis from left to right; + counts from the point before.
points:   { A: 0 ${units === 'us' ? 'ft' : 'm'}, B: ${joistSpan}, C: +${overhang} }
supports: { A: pin, B: roller }

# Loads act down unless they say otherwise, on the whole member unless they say where.
loads:
  - { area: floor, width: ${spacing}, uses: A1 }
  - { case: D, point: ${railing}, at: C, note: Railing }
`;
}

/** members/g1.yaml of a new project: a girder that carries the joist. */
export function starterGirder(units: Units): string {
  const { girderSpan, third, twoThirds, girderWeight } = figures[units];
  return `${schemaLine('../.schemas/beam.json')}
mark: G1
title: Girder under the joists
kind: beam

points:   { A: 0 ${units === 'us' ? 'ft' : 'm'}, B: ${girderSpan} }
supports: { A: pin, B: roller }

loads:
  - { case: D, uniform: ${girderWeight}, note: Own weight }
  # What joist B1 delivers at its support B, case by case; the sheets refer to one another.
  - { reaction: B1.B, at: [ ${third}, ${twoThirds} ] }
`;
}

type Key =
  | 'joistSpan'
  | 'overhang'
  | 'spacing'
  | 'railing'
  | 'girderSpan'
  | 'third'
  | 'twoThirds'
  | 'girderWeight';

const figures: Readonly<Record<Units, Readonly<Record<Key, string>>>> = {
  us: {
    joistSpan: '12 ft',
    overhang: '3 ft',
    spacing: '16 in',
    railing: '60 lb',
    girderSpan: '18 ft',
    third: '6 ft',
    twoThirds: '12 ft',
    girderWeight: '20 plf',
  },
  si: {
    joistSpan: '3.6 m',
    overhang: '0.9 m',
    spacing: '400 mm',
    railing: '0.3 kN',
    girderSpan: '5.4 m',
    third: '1.8 m',
    twoThirds: '3.6 m',
    girderWeight: '0.3 kN/m',
  },
};
