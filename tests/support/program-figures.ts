import { resultsOf, workProject } from '../../src/index.ts';
import { memoryWorld } from '../../src/world/index.ts';
import { siProject } from './derived.ts';
import { beamYaml, shortProject } from './folder.ts';
import { si } from './in-words.ts';

/** What results.json of the whole program says of one case of one beam, in SI. */
export interface ProgramFigures {
  /** Vertical reaction at a support, up positive. */
  readonly up: (point: string) => number;
  /** Moment that a support gives, counterclockwise positive. */
  readonly turn: (point: string) => number;
  readonly greatest: (what: Curve) => { readonly value: number; readonly x: number };
  readonly least: (what: Curve) => { readonly value: number; readonly x: number };
  /** The value just left of one of the evenly spaced stations asked for; at the first, just right. */
  readonly at: (what: Curve | 'slope', x: number) => number;
}

type Curve = 'shear' | 'moment' | 'deflection';

interface Figure {
  readonly value: number;
  readonly unit: string;
}

interface Entry {
  readonly reactions: readonly {
    readonly point: string;
    readonly y: Figure;
    readonly moment: Figure;
  }[];
  readonly stations: readonly (Readonly<Record<string, Figure>> & {
    readonly x: Figure;
  })[];
}

/** How a beam of a publication is asked for. */
export interface Asked {
  readonly units: 'us' | 'si';
  /** How many parts the member is divided into for `at`. */
  readonly parts?: number;
}

/** Definition in, results.json out: the beam's file as the user would write it, and the figures printed of it. */
export function programFigures(
  rest: Readonly<Record<string, string>>,
  { units, parts = 1 }: Asked,
): ProgramFigures {
  const files = {
    'p/project.yaml': units === 'si' ? siProject : shortProject,
    'p/members/b1.yaml': beamYaml(rest),
  };
  const worked = workProject(memoryWorld(files), 'p');
  const errors = worked.diagnostics.filter(({ severity }) => severity === 'error');
  if (errors.length > 0)
    throw new Error(errors.map(({ message }) => message).join('\n'));
  const { members } = JSON.parse(resultsOf(worked, { stations: parts })) as {
    readonly members: readonly { readonly results?: Readonly<Record<string, Entry>> }[];
  };
  const [entry, ...more] = Object.values(members[0]?.results ?? {});
  if (entry === undefined || more.length > 0) throw new Error('not one case');
  const support = (point: string) =>
    entry.reactions.find((one) => one.point === point)!;
  const extreme = (what: Curve, end: 'max' | 'min') => {
    const found = (
      entry as unknown as Record<Curve, Record<'max' | 'min', Figure & { at: Figure }>>
    )[what][end];
    return { value: inSi(found), x: inSi(found.at) };
  };
  return {
    up: (point) => inSi(support(point).y),
    turn: (point) => inSi(support(point).moment),
    greatest: (what) => extreme(what, 'max'),
    least: (what) => extreme(what, 'min'),
    at: (what, x) => {
      const station = entry.stations.find((one) => Math.abs(inSi(one.x) - x) < 1e-9);
      if (station === undefined) throw new Error(`no station at ${x} m`);
      return inSi(station[what]!);
    },
  };
}

function inSi({ value, unit }: Figure): number {
  return value * si(`1 ${unit}`);
}
