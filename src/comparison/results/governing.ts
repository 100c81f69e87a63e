import type { ComparedFigure } from '../comparison.ts';
import type {
  BeamResults,
  EndsFigures,
  EntryResults,
  EnvelopeFigures,
  Figure,
  GoverningFigure,
  RangeEntryResults,
} from '../../results/index.ts';

/** A governing value of a member: what it is, and how large. */
export interface Governing {
  /** A phrase: `greatest moment, strength`. */
  readonly what: string;
  /** Values of one kind share a scale below which nothing is told. */
  readonly kind: 'moment' | 'shear' | 'deflection' | 'x' | 'y' | 'turn';
  readonly figure: ComparedFigure;
}

/** Which values of two states of a member stand in pairs. */
export interface EnvelopeWords {
  /** True where both sides have envelopes of combinations; else the envelope over whatever there is compares. */
  readonly isSplit: boolean;
  /** True where limits on deflection are judged on both sides. */
  readonly isLimited: boolean;
}

/** How the governing values of two states of a member are told, so that they stand in pairs. */
export function wordsFor(one: BeamResults, other: BeamResults): EnvelopeWords {
  const isSplit = [one, other].every(
    ({ envelopes }) => envelopes.strength !== null || envelopes.service !== null,
  );
  const isLimited = [one, other].every(({ checks }) =>
    checks.some(({ name }) => name === 'deflection'),
  );
  return { isSplit, isLimited };
}

/**
 * The values of a member that govern: moments and shears of its envelopes, its deflection, its
 * reactions over all entries. `pointName` reads a point in the names of the later side.
 */
export function governing(
  member: BeamResults,
  { isSplit, isLimited }: EnvelopeWords,
  pointName: (name: string) => string,
): readonly Governing[] {
  const { envelope, envelopes } = member;
  const actions = isSplit
    ? [
        ...envelopeValues(envelopes.strength, ', strength'),
        ...envelopeValues(envelopes.service, ', service'),
      ]
    : envelopeValues(envelope, '');
  return [
    ...actions,
    ...deflectionValue(member, isLimited),
    ...reactions(member, pointName),
  ];
}

function envelopeValues(
  envelope: EnvelopeFigures | null,
  of: string,
): readonly Governing[] {
  if (envelope === null) return [];
  const told = (kind: 'moment' | 'shear', end: 'max' | 'min'): Governing => ({
    what: `${end === 'max' ? 'greatest' : 'least'} ${kind}${of}`,
    kind,
    figure: governingFigure(envelope[kind][end]),
  });
  return [
    told('moment', 'max'),
    told('moment', 'min'),
    told('shear', 'max'),
    told('shear', 'min'),
  ];
}

function governingFigure({ value, unit, result, at }: GoverningFigure): ComparedFigure {
  return { value, unit, entry: result, at: { value: at.value, unit: at.unit } };
}

/** The deflection nearest to its limit, or farthest beyond; where none is judged the greatest of any entry. */
function deflectionValue(
  { checks, results }: BeamResults,
  isLimited: boolean,
): readonly Governing[] {
  const limits = checks.filter(({ name }) => name === 'deflection');
  const [worst] = [...limits].sort((one, other) => other.ratio - one.ratio);
  if (isLimited && worst !== undefined) {
    const { demand, combination, at } = worst;
    const figure: ComparedFigure = {
      ...plain(demand),
      entry: combination,
      ...(at === undefined ? {} : { at: plain(at) }),
    };
    return [{ what: 'governing deflection', kind: 'deflection', figure }];
  }
  const all = Object.entries(results).flatMap(([entry, { deflection }]) =>
    deflection === undefined
      ? []
      : [deflection.max, deflection.min].map((end) => ({
          ...plain(end),
          entry,
          at: plain(end.at),
        })),
  );
  const figure = extreme(
    all,
    (one, other) => Math.abs(one.value) > Math.abs(other.value),
  );
  return figure === undefined
    ? []
    : [{ what: 'greatest deflection', kind: 'deflection', figure }];
}

const components = { x: 'x', y: 'y', moment: 'turn' } as const;

function reactions(
  { results }: BeamResults,
  pointName: (name: string) => string,
): readonly Governing[] {
  const entries = Object.entries(results);
  const points = entries[0]?.[1].reactions.map(({ point }) => point) ?? [];
  return points.flatMap((point) =>
    (['x', 'y', 'moment'] as const).flatMap((component): readonly Governing[] => {
      const ends = entries.flatMap(([entry, found]) =>
        endsOf(found, point, component).map((one): ComparedFigure => ({
          ...one,
          entry,
        })),
      );
      const greatest = extreme(ends, (one, other) => one.value > other.value);
      const least = extreme(ends, (one, other) => one.value < other.value);
      if (greatest === undefined || least === undefined) return [];
      const name = `reaction ${component} at ${pointName(point)}`;
      const kind = components[component];
      return [
        { what: `greatest ${name}`, kind, figure: greatest },
        { what: `least ${name}`, kind, figure: least },
      ];
    }),
  );
}

/** What an entry gives of a component: one value, or its greatest and least. */
function endsOf(
  { reactions: all }: EntryResults | RangeEntryResults,
  point: string,
  component: 'x' | 'y' | 'moment',
): readonly Figure[] {
  const given: Figure | EndsFigures | null | undefined = all.find(
    (one) => one.point === point,
  )?.[component];
  if (given === null || given === undefined) return [];
  return 'max' in given ? [plain(given.max), plain(given.min)] : [plain(given)];
}

/** The first that no other goes beyond. */
function extreme(
  figures: readonly ComparedFigure[],
  isBeyond: (one: ComparedFigure, other: ComparedFigure) => boolean,
): ComparedFigure | undefined {
  const [first, ...rest] = figures;
  if (first === undefined) return undefined;
  return rest.reduce((most, one) => (isBeyond(one, most) ? one : most), first);
}

const plain = ({ value, unit }: Figure): Figure => ({ value, unit });
