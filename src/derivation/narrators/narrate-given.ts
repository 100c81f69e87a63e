import {
  cancelUnits,
  name,
  number,
  product,
  type Expression,
  type Figure,
  type Statement,
  type Symbol,
} from '../../equation/index.ts';
import type {
  BeamLoad,
  BeamPlace,
  BeamSupport,
  CarriedReaction,
  CrossSection,
  LoadCase,
  Material,
} from '../../project/index.ts';
import { sameUnit, type GivenQuantity } from '../../units/index.ts';
import type { MemberContext } from '../case-context.ts';
import { asGiven, dimension, tidy, value } from '../printing.ts';
import type { GivenStep, LoadRow, OriginFact, Place, SupportRow } from '../steps.ts';
import { isWorkedOut } from '../load-figures.ts';
import { unitOfLoad } from './narrate-loads.ts';

/** Item 1 of a sheet: geometry, supports, loads, section and material as the file gives them. */
export function narrateGiven(
  context: MemberContext,
  cases: readonly LoadCase[],
  carried: ReadonlyMap<string, CarriedReaction>,
): readonly GivenStep[] {
  const { definition } = context;
  return [
    geometry(context),
    { kind: 'supports', supports: definition.supports.map(supportRow) },
    {
      kind: 'loads',
      loads: context.structure.loads.map(({ id }) => loadRow(context, id, carried)),
      cases: cases.map(({ mark, title }) => ({ mark, ...(title === undefined ? {} : { title }) })),
    },
    ...section(context),
    {
      kind: 'taken',
      selfWeight: definition.selfWeight !== undefined,
      hasStiffness: definition.sections.some(({ section: of }) => of.I !== undefined) && definition.material?.E !== undefined,
      limitStates: false,
    },
  ];
}

function geometry({ definition, structure, printing }: MemberContext): GivenStep {
  const first = structure.points[0]?.x ?? 0;
  const last = structure.points.at(-1)?.x ?? 0;
  return {
    kind: 'geometry',
    length: dimension(printing, last - first),
    points: definition.points.map((point) => {
      const station = point.relative ? dimension(printing, point.x) : asGiven(point.given);
      const decimal = tidy(printing, 'length', point.x);
      return {
        name: point.name,
        station,
        ...(readsAlike(station, decimal) ? {} : { decimal }),
        ...(point.relative ? { fromBefore: asGiven(point.given) } : {}),
      };
    }),
    hinges: definition.hinges.map(({ point }) => point),
  };
}

function readsAlike(one: Figure, other: Figure): boolean {
  const isCompound = one.print.kind === 'given' && one.print.compound;
  return one.quantity.si === 0 || (!isCompound && sameUnit(one.unit, other.unit));
}

const holds: Readonly<Record<BeamSupport['type'], SupportRow['holds']>> = {
  pin: { x: true, y: true, moment: false },
  roller: { x: false, y: true, moment: false },
  fixed: { x: true, y: true, moment: true },
  guide: { x: true, y: false, moment: true },
  spring: { x: false, y: true, moment: false },
};

function supportRow(support: BeamSupport): SupportRow {
  const { point, type, normal, stiffness, rotation, settlement } = support;
  const held = holds[type];
  const isTurningOnly = type === 'spring' && stiffness === undefined;
  return {
    point,
    type,
    holds: {
      x: held.x,
      y: held.y && !isTurningOnly,
      moment: held.moment || rotation !== undefined,
    },
    ...(normal === undefined ? {} : { normal: asGiven(normal) }),
    ...(stiffness === undefined ? {} : { stiffness: asGiven(stiffness) }),
    ...(rotation === undefined ? {} : { rotation: asGiven(rotation) }),
    ...(settlement === undefined
      ? {}
      : { settlement: { value: asGiven(settlement.value), case: settlement.case } }),
  };
}

function placeOf({ printing }: MemberContext, place: BeamPlace): Place {
  const station =
    place.given === undefined ? tidy(printing, 'length', place.x) : asGiven(place.given);
  return { station, ...(place.point === undefined ? {} : { point: place.point }) };
}

function loadRow(
  context: MemberContext,
  id: string,
  carried: ReadonlyMap<string, CarriedReaction>,
): LoadRow {
  const defined = context.defined.get(id);
  if (defined === undefined) return carriedRow(context, id, carried.get(id));
  const symbol = defined.kind === 'distributed' ? context.symbols.intensity(id) : context.symbols.load(id);
  const origin = originOf(context, defined, symbol);
  return {
    symbol,
    case: defined.case,
    ...placed(context, defined),
    ...(defined.note === undefined ? {} : { note: defined.note }),
    uses: defined.uses,
    ...(origin === undefined ? {} : { origin }),
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
        sizes: (isUniform ? [start] : [start, end]).map((size) => sizeAsPrinted(context, load, size)),
        from: placeOf(context, load.start),
        to: placeOf(context, load.end),
        direction: directionText(load.direction),
      };
    }
  }
}

/** As given; a product of the program's own (area load, self-weight) rounded like any result. */
function sizeAsPrinted({ printing }: MemberContext, load: BeamLoad, size: GivenQuantity): Expression {
  return isWorkedOut(load) ? tidy(printing, 'force-per-length', size.si) : asGiven(size);
}

function directionText({ degrees, text }: { readonly degrees: number; readonly text?: string }): string {
  const named: Readonly<Record<number, string>> = { 0: 'right', 90: 'up', 180: 'left', 270: 'down' };
  return named[degrees] ?? `toward ${text?.replace(/ ?deg$/, '°') ?? `${degrees}°`}`;
}

function originOf(context: MemberContext, load: BeamLoad, symbol: Symbol): OriginFact | undefined {
  const from = load.from;
  if (from === undefined || load.kind !== 'distributed') return undefined;
  if (from.kind === 'self-weight') {
    return { kind: 'self-weight', ...(from.how === 'section-weight' ? {} : { product: selfWeight(context, symbol, load.sizes[0]) }) };
  }
  const [first, second] = from.widths;
  const widths = first.si === second.si ? [first] : [first, second];
  const lines = widths.map((width, index) => ({
    left: name(symbol),
    chain: [
      { sign: '=' as const, of: cancelUnits(product(asGiven(from.pressure), asGiven(width))) },
      {
        sign: '=' as const,
        of: tidy(context.printing, 'force-per-length', load.sizes[index === 0 ? 0 : 1].si),
      },
    ],
  }));
  return { kind: 'area', area: from.area, product: { lines } };
}

function selfWeight({ definition, printing }: MemberContext, symbol: Symbol, size: GivenQuantity): Statement {
  const area = definition.sections[0]?.section.A;
  const density = definition.material?.density;
  const factors: readonly Expression[] = [area, density].flatMap((q) => (q === undefined ? [] : [asGiven(q)]));
  return {
    lines: [
      {
        left: name(symbol),
        chain: [
          { sign: '=', of: product(...factors) },
          { sign: '=', of: value(printing, 'force-per-length', size.si) },
        ],
      },
    ],
  };
}

/** The size after a factor with its reason: `w = 0.82 (0.4 kip/ft) = 0.328 kip/ft`. */
function factored(context: MemberContext, load: BeamLoad, symbol: Symbol): Statement {
  const sizes = load.kind === 'distributed' ? load.sizes : [load.size];
  const distinct = sizes.filter((size, index) => index === 0 || size.si !== sizes[0]?.si);
  const factor = load.factor?.factor ?? 1;
  return {
    lines: distinct.map((size) => ({
      left: name(symbol),
      chain: [
        { sign: '=' as const, of: product(number(factor), sizeAsPrinted(context, load, size)) },
        { sign: '=' as const, of: tidy(context.printing, unitOfLoad(load), factor * size.si) },
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
  if (load === undefined || load.kind === 'distributed') throw new RangeError(`no load ${id}`);
  const { printing, symbols } = context;
  const isCouple = load.kind === 'couple';
  const size = isCouple ? load.m : load.fx === 0 ? load.fy : Math.hypot(load.fx, load.fy);
  const direction = isCouple
    ? load.m < 0 ? 'clockwise' : 'counterclockwise'
    : load.fx === 0 ? (load.fy > 0 ? 'up' : 'down') : load.fx > 0 ? 'right' : 'left';
  const at: BeamPlace = { x: load.x, ...(from?.at.point === undefined ? {} : { point: from.at.point }) };
  return {
    symbol: symbols.load(id),
    case: load.case,
    kind: isCouple ? 'couple' : 'force',
    sizes: [value(printing, isCouple ? 'moment' : 'force', Math.abs(size))],
    at: placeOf(context, at),
    direction,
    uses: from?.uses ?? [],
    ...(from?.note === undefined ? {} : { note: from.note }),
    ...(from === undefined
      ? {}
      : {
          origin: {
            kind: 'carried' as const,
            member: from.member,
            point: from.point,
            anchor: `member-${from.member}`,
            times: from.times,
          },
        }),
  };
}

const meanings: Readonly<Record<string, string>> = {
  A: 'area of the cross-section',
  I: 'second moment of area about the bending axis',
  S: 'elastic section modulus',
  w: 'weight per length',
  d: 'depth of the cross-section',
  E: 'modulus of elasticity',
  γ: 'weight per volume',
  α: 'coefficient of thermal expansion',
};

type NamedValue = { readonly symbol: Symbol; readonly value: Expression };

function named(letter: string, given: GivenQuantity | undefined): readonly NamedValue[] {
  if (given === undefined) return [];
  return [{ symbol: { letter, meaning: meanings[letter] ?? letter }, value: asGiven(given) }];
}

function section(context: MemberContext): readonly GivenStep[] {
  const { sections, material, bracing } = context.definition;
  if (sections.length === 0 && material === undefined && bracing === undefined) return [];
  return [
    {
      kind: 'section',
      stretches: sections.map(({ from, to, section: of }) => ({
        from: placeOf(context, from),
        to: placeOf(context, to),
        ...(of.name === undefined ? {} : { name: of.name }),
        values: sectionValues(of),
        ...(of.source === undefined ? {} : { source: of.source }),
      })),
      ...(material === undefined ? {} : { material: materialFact(material) }),
      ...(bracing === undefined ? {} : { bracing }),
    },
  ];
}

function sectionValues(of: CrossSection): readonly NamedValue[] {
  return [
    ...named('A', of.A),
    ...named('I', of.I),
    ...named('S', of.S),
    ...named('d', of.depth),
    ...named('w', of.weight),
  ];
}

function materialFact(material: Material): NonNullable<Extract<GivenStep, { kind: 'section' }>['material']> {
  return {
    ...(material.name === undefined ? {} : { name: material.name }),
    values: [...named('E', material.E), ...named('γ', material.density), ...named('α', material.expansion)],
    ...(material.source === undefined ? {} : { source: material.source }),
  };
}
