import {
  call,
  cancelUnits,
  name,
  number,
  product,
  withConversion,
  type Expression,
  type Statement,
  type Symbol,
} from '../../equation/index.ts';
import type { BeamLoad, BeamPlace, CarriedReaction } from '../../project/index.ts';
import { displayUnit, type GivenQuantity } from '../../units/index.ts';
import type { Load } from '../../statics/index.ts';
import type { MemberContext } from '../case-context.ts';
import { acuteAngle, wordOf, wordsOfDirection } from '../direction.ts';
import { isWorkedOut } from '../load-figures.ts';
import { asGiven, tidy, value } from '../printing.ts';
import type { LoadRow, OriginFact, Place } from '../steps.ts';
import { unitOfLoad } from './narrate-loads.ts';

/** A place of the file, its station as given where it is one. */
export function placeOf({ printing }: MemberContext, place: BeamPlace): Place {
  const station =
    place.given === undefined
      ? tidy(printing, 'length', place.x)
      : asGiven(place.given);
  return { station, ...(place.point === undefined ? {} : { point: place.point }) };
}

/** A load as the given list shows it, with where it comes from. */
export function loadRow(
  context: MemberContext,
  id: string,
  carried: ReadonlyMap<string, CarriedReaction>,
): LoadRow {
  const defined = context.defined.get(id);
  if (defined === undefined) return carriedRow(context, id, carried.get(id));
  const symbol =
    defined.kind === 'distributed'
      ? context.symbols.intensity(id)
      : context.symbols.load(id);
  const origin = originOf(context, defined, symbol);
  const projected = projectedFact(context, defined, symbol);
  return {
    symbol,
    case: defined.case,
    ...placed(context, defined),
    ...(defined.note === undefined ? {} : { note: defined.note }),
    uses: defined.uses,
    ...(origin === undefined ? {} : { origin }),
    ...(projected === undefined ? {} : { projected }),
    ...(defined.factor === undefined
      ? {}
      : {
          factor: {
            times: number(defined.factor.factor),
            because: defined.factor.because,
            product: factored(context, defined, symbol),
          },
        }),
  };
}

/** A slanted load given per length square to its direction, brought to a length of beam: `w = 3 kN/m sin(60°)`. */
function projectedFact(
  context: MemberContext,
  load: BeamLoad,
  symbol: Symbol,
): Statement | undefined {
  if (load.kind !== 'distributed' || load.per !== 'projection') return undefined;
  const { printing } = context;
  const angle = (load.direction.degrees * Math.PI) / 180;
  const slant = acuteAngle(printing, [Math.cos(angle), Math.sin(angle)]);
  const sine = Math.abs(Math.sin(slant.quantity.si));
  if (Math.abs(sine - 1) < 1e-12) return undefined;
  const factor = load.factor?.factor ?? 1;
  const lines = endsOf(load).map((size) => {
    const given = tidy(printing, 'force-per-length', factor * size.si);
    const worked = tidy(printing, 'force-per-length', factor * size.si * sine);
    return {
      left: name(symbol),
      chain: [
        { sign: '=' as const, of: product(given, call('sin', slant)) },
        { sign: '=' as const, of: worked },
      ],
    };
  });
  return { lines };
}

/** The sizes of a load that differ: one, or those at its two ends. */
function endsOf(load: BeamLoad): readonly GivenQuantity[] {
  if (load.kind !== 'distributed') return [load.size];
  const [start, end] = load.sizes;
  return start.si === end.si ? [start] : [start, end];
}

/** What kind of load it is, how great, where and which way. */
function placed(
  context: MemberContext,
  load: BeamLoad,
): Pick<LoadRow, 'kind' | 'sizes' | 'at' | 'from' | 'to' | 'direction'> {
  switch (load.kind) {
    case 'point':
      return {
        kind: 'force',
        sizes: [asGiven(load.size)],
        at: placeOf(context, load.at),
        direction: directionText(load.direction),
      };
    case 'couple':
      return {
        kind: 'couple',
        sizes: [asGiven(load.size)],
        at: placeOf(context, load.at),
        direction: load.turn,
      };
    case 'distributed': {
      const [start, end] = load.sizes;
      const isUniform = start.si === end.si;
      return {
        kind: isUniform ? 'uniform' : 'varying',
        sizes: (isUniform ? [start] : [start, end]).map((size) =>
          sizeAsPrinted(context, load, size),
        ),
        from: placeOf(context, load.start),
        to: placeOf(context, load.end),
        direction: directionText(load.direction),
      };
    }
  }
}

/** As given; a product of the program's own (area load, self-weight) rounded like any result. */
function sizeAsPrinted(
  { printing }: MemberContext,
  load: BeamLoad,
  size: GivenQuantity,
): Expression {
  return isWorkedOut(load)
    ? tidy(printing, 'force-per-length', size.si)
    : asGiven(size);
}

function directionText({
  degrees,
  text,
}: {
  readonly degrees: number;
  readonly text?: string;
}): string {
  return wordOf(degrees) ?? `toward ${text?.replace(/ ?deg$/, '°') ?? `${degrees}°`}`;
}

function originOf(
  context: MemberContext,
  load: BeamLoad,
  symbol: Symbol,
): OriginFact | undefined {
  const from = load.from;
  if (from === undefined || load.kind !== 'distributed') return undefined;
  if (from.kind === 'self-weight') {
    return {
      kind: 'self-weight',
      ...(from.how === 'section-weight'
        ? {}
        : { product: selfWeight(context, symbol, load) }),
    };
  }
  const [first, second] = from.widths;
  const widths = first.si === second.si ? [first] : [first, second];
  const unit = displayUnit(context.printing.system, 'force-per-length');
  const lines = widths.map((width, index) => ({
    left: name(symbol),
    chain: [
      {
        sign: '=' as const,
        of: cancelUnits(
          withConversion(product(asGiven(from.pressure), asGiven(width)), unit),
        ),
      },
      {
        sign: '=' as const,
        of: tidy(
          context.printing,
          'force-per-length',
          load.sizes[index === 0 ? 0 : 1].si,
        ),
      },
    ],
  }));
  return { kind: 'area', area: from.area, product: { lines } };
}

/** Area times weight per volume of the stretch that the load lies on. */
function selfWeight(
  { definition, printing }: MemberContext,
  symbol: Symbol,
  load: Spread,
): Statement {
  const stretch =
    definition.sections.find(({ from }) => from.x === load.start.x) ??
    definition.sections[0];
  const factors = [stretch?.section.A, definition.material?.density].flatMap((q) =>
    q === undefined ? [] : [asGiven(q)],
  );
  const unit = displayUnit(printing.system, 'force-per-length');
  return {
    lines: [
      {
        left: name(symbol),
        chain: [
          { sign: '=', of: cancelUnits(withConversion(product(...factors), unit)) },
          { sign: '=', of: value(printing, 'force-per-length', load.sizes[0].si) },
        ],
      },
    ],
  };
}

type Spread = Extract<BeamLoad, { kind: 'distributed' }>;

/** The size after a factor with its reason: `w = 0.82 (0.4 kip/ft) = 0.328 kip/ft`. */
function factored(context: MemberContext, load: BeamLoad, symbol: Symbol): Statement {
  const factor = load.factor?.factor ?? 1;
  return {
    lines: endsOf(load).map((size) => ({
      left: name(symbol),
      chain: [
        {
          sign: '=' as const,
          of: product(number(factor), sizeAsPrinted(context, load, size)),
        },
        {
          sign: '=' as const,
          of: tidy(context.printing, unitOfLoad(load), factor * size.si),
        },
      ],
    })),
  };
}

function carriedRow(
  context: MemberContext,
  id: string,
  from: CarriedReaction | undefined,
): LoadRow {
  const load = context.structure.loads.find((candidate) => candidate.id === id);
  if (load === undefined || load.kind === 'distributed')
    throw new RangeError(`no load ${id}`);
  const { printing, symbols } = context;
  const [what, size] =
    load.kind === 'couple'
      ? (['moment', load.m] as const)
      : (['force', Math.hypot(load.fx, load.fy)] as const);
  const at: BeamPlace = {
    x: load.x,
    ...(from?.at.point === undefined ? {} : { point: from.at.point }),
  };
  return {
    symbol: symbols.load(id),
    case: load.case,
    kind: load.kind === 'couple' ? 'couple' : 'force',
    sizes: [value(printing, what, Math.abs(size))],
    at: placeOf(context, at),
    direction: wayOf(load),
    ...carriedFacts(from),
  };
}

function wayOf(load: Exclude<Load, { kind: 'distributed' }>): string {
  if (load.kind === 'couple') return load.m < 0 ? 'clockwise' : 'counterclockwise';
  return wordsOfDirection([load.fx, load.fy]);
}

function carriedFacts(
  from: CarriedReaction | undefined,
): Pick<LoadRow, 'uses' | 'note' | 'origin'> {
  if (from === undefined) return { uses: [] };
  const { member, point, times, uses } = from;
  const notes = [from.note, from.because].filter((text) => text !== undefined);
  return {
    uses,
    ...(notes.length === 0 ? {} : { note: notes.join('; ') }),
    origin: { kind: 'carried', member, point, anchor: `member-${member}`, times },
  };
}
