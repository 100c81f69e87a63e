import fc from 'fast-check';
import type { Project } from '../../../src/project/index.ts';
import { deriveMembers, workMembers } from '../../../src/derivation/index.ts';
import {
  markingContext,
  type MarkingContext,
} from '../../../src/review/marking-context.ts';
import type { BeamStructure } from '../../../src/statics/index.ts';
import { folderOf } from '../../support/beam-file.ts';
import { readFolder } from '../../support/folder.ts';
import { senseOf } from './line-terms.ts';
import { narratedSums, type NarratedSum } from './narrated-terms.ts';
import { valueSteps } from './value-steps.ts';
import { figures } from './write-line.ts';

/** What of the narrated sheet is left to taste. */
export const tastes = fc.record({
  system: fc.constantFrom('us', 'si' as const),
  bits: fc.array(fc.nat(1023), { minLength: 24, maxLength: 24 }),
  stations: fc.array(fc.integer({ min: 20, max: 980 }), { minLength: 2, maxLength: 2 }),
});

export type Taste = typeof tastes extends fc.Arbitrary<infer T> ? T : never;

/** A step of a sheet about to be written: terms still apart, so that a slip can be planted. */
export interface SheetStep {
  readonly head: string;
  readonly terms: readonly SheetTerm[];
  readonly ending: string;
  /** The symbol that it concludes, what it truly comes to in its unit, and how that is written. */
  readonly symbol: string;
  readonly count: number;
  readonly unit: string;
  /** Instead of the sum: `R = … = …`, as the derivation solves it. */
  readonly solved?: string;
}

export interface SheetTerm {
  readonly sign: 1 | -1;
  readonly text: string;
  /** The unknown that it repeats the earlier value of. */
  readonly repeats?: string;
  /** By what factor a slip has it repeated. */
  readonly outBy?: number;
  readonly isOpen: boolean;
  /** The number that leads it, in the sheet's units, its sign in it; 1 for an unknown. */
  readonly size: number;
  /** What that is multiplied by. */
  readonly factor: number;
}

/** A sheet that goes the way of the derivation. */
export interface Sheet {
  readonly head: string;
  readonly steps: readonly SheetStep[];
  readonly project: Project;
  readonly context: MarkingContext;
  readonly members: ReturnType<typeof deriveMembers>;
}

/** The sheet of a beam without hinges; undefined where nothing is narrated. */
export function narratedSheet(
  structure: BeamStructure,
  taste: Taste,
): Sheet | undefined {
  const files = folderOf(structure);
  const { value: project } = readFolder({
    ...files,
    'project.yaml': files['project.yaml']!.replace(
      'units: si',
      `units: ${taste.system}`,
    ),
  });
  const mark = structure.loads[0]?.case;
  if (project === undefined || mark === undefined) return undefined;
  const members = deriveMembers(project, workMembers(project, []));
  const [member] = members;
  if (member?.kind !== 'derived') return undefined;
  const context = markingContext(project, member.work, mark);
  if (context === undefined) return undefined;
  const sums = narratedSums(member, mark);
  const all = unknownsOf(context);
  const used = new Set(sums.map(({ symbol }) => symbol));
  const unknowns = new Map([...all].filter(([symbol]) => used.has(symbol)));
  if (unknowns.size < used.size || sums.length === 0) return undefined;
  const lengths = lengthNames(context, sums, taste);
  const names = [
    ...[...unknowns].map(([symbol, { means }]) => `${symbol}: ${means}`),
    ...lengths.names,
    'MX: moment at ' + stationText(context, taste, 0),
    'VX: shear at ' + stationText(context, taste, 1),
  ];
  return {
    head: `member: B1\nloads: ${mark}\nnames: { ${names.join(', ')} }\n`,
    steps: [
      ...sums.map((sum, at) => sumStep(sum, { unknowns, taste, at, lengths })),
      ...valueSteps(context, {
        unknowns,
        stations: taste.stations.map((_, at) => stationOf(context, taste, at)),
        units: unitsOf(taste),
      }),
    ],
    project,
    context,
    members,
  };
}

/** Units of a system, with how much one of each is. */
export interface SheetUnits {
  readonly force: readonly [name: string, si: number];
  readonly length: readonly [name: string, si: number];
}

function unitsOf({ system }: Taste): SheetUnits {
  return system === 'us'
    ? { force: ['kip', 4448.2216152605], length: ['ft', 0.3048] }
    : { force: ['kN', 1000], length: ['m', 1] };
}

/** A station of three decimals in the unit of the sheet. */
function stationOf({ structure }: MarkingContext, taste: Taste, at: number): number {
  const [first, last] = [structure.points[0]!.x, structure.points.at(-1)!.x];
  const [, unit] = unitsOf(taste).length;
  const x = first + (taste.stations[at]! / 1000) * (last - first);
  return Number((x / unit).toFixed(3)) * unit;
}

function stationText(context: MarkingContext, taste: Taste, at: number): string {
  const [name, unit] = unitsOf(taste).length;
  return `${Number((stationOf(context, taste, at) / unit).toFixed(3))} ${name}`;
}

/** An unknown of the member by its symbol on the sheet. */
export interface SheetUnknown {
  readonly means: string;
  readonly si: number;
  readonly point: string;
  readonly index: number;
}

function unknownsOf({
  structure,
  result,
}: MarkingContext): ReadonlyMap<string, SheetUnknown> {
  const found = new Map<string, SheetUnknown>();
  for (const [at, { point, restraints }] of structure.supports.entries())
    for (const [index, restraint] of restraints.entries()) {
      const sense = senseOf({ structure }, point, index);
      const letter =
        restraint.kind === 'moment'
          ? 'M'
          : sense === 'right' || sense === 'left'
            ? 'H'
            : restraints.some((one) => one.kind === 'force' && one !== restraint)
              ? 'V'
              : 'R';
      const si = result.reactions[at]?.components[index] ?? 0;
      const unknown = { means: `reaction ${point} ${sense}`, si, point, index };
      // The sheet names a lone force of a support R, beside a horizontal one R as well.
      for (const own of letter === 'V' ? ['V', 'R'] : [letter])
        found.set(`${own}_${point}`, unknown);
    }
  return found;
}

interface Lengths {
  readonly names: readonly string[];
  /** The name of an arm of a term in a sum; undefined where it has none. */
  readonly nameOf: (sum: NarratedSum, symbol: string) => string | undefined;
}

/** Arms of reactions get a name, `a0: length P1 to P2`, where a taste asks for that. */
function lengthNames(
  { structure }: MarkingContext,
  sums: readonly NarratedSum[],
  taste: Taste,
): Lengths {
  const names = new Map<string, string>();
  for (const { claim, terms } of sums) {
    const about = claim.replace('moments about ', '');
    for (const { stands } of terms) {
      const point = stands.split('_')[1] ?? '';
      const isArm =
        about !== claim &&
        about !== point &&
        /^[RV]_/u.test(stands) &&
        structure.supports.some((one) => one.point === point);
      const isTaken = (taste.bits[names.size % 24]! & 512) !== 0;
      if (isArm && isTaken) names.set(`${about} to ${point}`, `a${names.size}`);
    }
  }
  return {
    names: [...names].map(([ends, name]) => `${name}: length ${ends}`),
    nameOf: ({ claim }, symbol) =>
      names.get(`${claim.replace('moments about ', '')} to ${symbol.split('_')[1]}`),
  };
}

function sumStep(
  sum: NarratedSum,
  of: {
    readonly unknowns: ReadonlyMap<string, SheetUnknown>;
    readonly taste: Taste;
    readonly at: number;
    readonly lengths: Lengths;
  },
): SheetStep {
  const { unknowns, taste, at, lengths } = of;
  const bits = taste.bits[at % 24]!;
  const found = unknowns.get(sum.symbol)!;
  const isMoment = found.means.endsWith('clockwise');
  const { force, length } = unitsOf(taste);
  const unit = isMoment ? `${force[0]} ${length[0]}` : force[0];
  const count = found.si / force[1] / (isMoment ? length[1] : 1);
  const terms = sum.terms.map((term): SheetTerm => {
    const isKnown = unknowns.has(term.stands);
    const isOpen = term.lead === term.stands;
    const named = isOpen ? lengths.nameOf(sum, term.stands) : undefined;
    const isWhole = named !== undefined && /^\(\S+ (?:ft|m)\)$/u.test(term.rest);
    const rest = isWhole ? ` * ${named}` : term.rest === '' ? '' : ` ${term.rest}`;
    const isRepeat = isKnown && !isOpen;
    return {
      sign: term.sign,
      text: `${isRepeat ? '{}' : term.lead}${rest}`,
      ...(isRepeat ? { repeats: term.stands } : {}),
      isOpen,
      // A share or a power of ten is not taken apart: the truth is concluded there.
      size: isOpen ? 1 : numberIn(term.lead, /^\(?(-?[\d.]+) [a-zA-Z ·]+\)?$/u),
      factor: term.rest === '' ? 1 : numberIn(term.rest, /^\(([\d.]+) (?:ft|m)\)$/u),
    };
  });
  const turned = terms.map((term): SheetTerm => ({
    ...term,
    sign: (bits & 1) === 0 ? term.sign : term.sign === 1 ? -1 : 1,
  }));
  const order = turned
    .map((term, index) => ({ term, by: (taste.bits[(index * 5 + at) % 24]! * 7) % 13 }))
    .sort((a, b) => a.by - b.by)
    .map(({ term }) => term);
  const middle = sum.solution.slice(0, -1).at(-1);
  const isSolved = (bits & 6) === 6 && middle !== undefined;
  return {
    head: `sum: ${sum.claim}`,
    terms: order,
    ending: (bits & 8) === 0 ? ' = 0' : '',
    symbol: sum.symbol,
    count,
    unit,
    ...(isSolved
      ? { solved: `${sum.symbol} = ${middle} = ${figures(count, 3)} ${unit}` }
      : {}),
  };
}

function numberIn(text: string, pattern: RegExp): number {
  return Number(pattern.exec(text)?.[1]);
}
