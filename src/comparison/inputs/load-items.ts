import type {
  BeamLoad,
  BeamTemperature,
  BeamTrain,
  CarriedReaction,
  LoadFactor,
} from '../../project/index.ts';
import type { GivenQuantity } from '../../units/index.ts';
import type { LoadItem, Trait } from './load-item.ts';
import { placeOn, type Axis } from './places.ts';
import { numberText, type Value } from './value.ts';

/** Every load of a member, one a line of an area load or a temperature, one a place and case of the others. */
export function loadItems(axis: Axis): readonly LoadItem[] {
  const { loads, temperatures, trains, carried } = axis.beam;
  const areas = byLine(loads.filter(({ from }) => from?.kind === 'area'));
  return [
    // The weight of the member follows from its section and is asked for by a key of its own.
    ...loads.flatMap((load) =>
      load.from === undefined ? [writtenItem(load, axis)] : [],
    ),
    ...areas.flatMap((line) => areaItem(line, axis)),
    ...byLine(temperatures).flatMap((line) => temperatureItem(line, axis)),
    ...trains.map((train) => trainItem(train, axis)),
    ...carried.map((reaction) => carriedItem(reaction, axis)),
  ];
}

/** Loads that stand on one line of the file. */
function byLine<T extends Pick<BeamLoad, 'span'>>(
  loads: readonly T[],
): readonly (readonly T[])[] {
  const lines = new Map<string, readonly T[]>();
  for (const load of loads) {
    const key = `${load.span.start} ${load.span.end}`;
    lines.set(key, [...(lines.get(key) ?? []), load]);
  }
  return [...lines.values()];
}

function writtenItem(load: BeamLoad, axis: Axis): LoadItem {
  const shared = {
    subject: axis.names.case(load.case),
    about: aboutOf(load, axis),
  };
  switch (load.kind) {
    case 'point':
      return {
        ...shared,
        kind: 'point',
        places: [placeOn(axis, load.at)],
        value: sizes([load.size], 'to'),
        traits: [directionOf(load.direction.degrees), ...factorTraits(load.factor)],
      };
    case 'couple':
      return {
        ...shared,
        kind: 'couple',
        places: [placeOn(axis, load.at)],
        value: sizes([load.size], 'to'),
        traits: [
          { word: 'turn of', value: text(load.turn) },
          trait('side of', load.side),
          ...factorTraits(load.factor),
        ],
      };
    case 'distributed':
      return {
        ...shared,
        kind: 'distributed',
        places: [placeOn(axis, load.start), placeOn(axis, load.end)],
        value: sizes(load.sizes, 'to'),
        traits: [
          directionOf(load.direction.degrees),
          { word: 'length that counts for', value: text(load.per ?? 'member') },
          ...factorTraits(load.factor),
        ],
      };
  }
}

function areaItem(line: readonly BeamLoad[], axis: Axis): readonly LoadItem[] {
  const [load] = line;
  if (load?.kind !== 'distributed' || load.from?.kind !== 'area') return [];
  const factors = line.map((one) => factorText(one, axis));
  const isOne = new Set(factors.map(({ factor }) => factor)).size === 1;
  const told = isOne
    ? factors.slice(0, 1).map(({ factor }) => numberText(factor))
    : factors
        .filter(({ factor }) => factor !== 1)
        .map(({ mark, factor }) => `${numberText(factor)} on ${mark}`);
  const hasFactor = line.some(({ factor }) => factor !== undefined);
  return [
    {
      kind: 'area',
      subject: axis.names.area(load.from.area),
      places: [placeOn(axis, load.start), placeOn(axis, load.end)],
      value: sizes(load.from.widths, 'to'),
      traits: [
        directionOf(load.direction.degrees),
        hasFactor
          ? { word: 'factor on', value: { kind: 'set', items: told } }
          : { word: 'factor on' },
        trait(
          'reason for the factor on',
          line.find(({ factor }) => factor !== undefined)?.factor?.because,
        ),
      ],
      about: aboutOf(load, axis),
    },
  ];
}

function factorText(
  load: BeamLoad,
  { names }: Axis,
): { readonly mark: string; readonly factor: number } {
  return { mark: names.case(load.case), factor: load.factor?.factor ?? 1 };
}

function temperatureItem(
  line: readonly BeamTemperature[],
  axis: Axis,
): readonly LoadItem[] {
  const [first, last] = [line[0], line.at(-1)];
  if (first === undefined || last === undefined) return [];
  const { difference, depth, expansion, taken } = first;
  return [
    {
      kind: 'temperature',
      subject: axis.names.case(first.case),
      places: [placeOn(axis, first.start), placeOn(axis, last.end)],
      value: sizes([difference], 'to'),
      traits: [
        { word: 'depth for', value: inherited(depth, taken.depth) },
        { word: 'expansion for', value: inherited(expansion, taken.expansion) },
        ...factorTraits(first.factor),
      ],
      about: aboutOf(first, axis),
    },
  ];
}

function trainItem(train: BeamTrain, axis: Axis): LoadItem {
  const { axles, spacings, travel, lane, factors, relieving } = train;
  return {
    kind: 'axles',
    subject: axis.names.case(train.case),
    places: [],
    value: sizes(axles, 'and'),
    traits: [
      spacings.length === 0
        ? { word: 'spacing of' }
        : {
            word: 'spacing of',
            value: sizes(
              spacings.flatMap(({ least, greatest }) => [least, greatest]),
              'bounds',
            ),
          },
      { word: 'travel of', value: text(travel.value) },
      lane === undefined
        ? { word: 'lane load with' }
        : { word: 'lane load with', value: sizes([lane], 'to') },
      numeric('factor on axles of', factors?.axles),
      numeric('factor on the lane load with', factors?.lane),
      trait('reason for the factors on', factors?.because),
      { word: 'relieving axles of', value: text(relieving.value) },
    ],
    about: aboutOf(train, axis),
  };
}

function carriedItem(reaction: CarriedReaction, axis: Axis): LoadItem {
  const { names } = axis;
  const { member, point, at, times, carry, side, because } = reaction;
  return {
    kind: 'carried',
    subject: `${names.member(member)}.${names.point(member, point)}`,
    places: [placeOn(axis, at)],
    value: { kind: 'number', value: times },
    traits: [
      { word: 'components of', value: text(carry) },
      trait('side of', side),
      trait('reason for the factor on', because),
    ],
    about: aboutOf(reaction, axis),
  };
}

function aboutOf(
  { note, uses }: { readonly note?: string; readonly uses: readonly string[] },
  { names }: Axis,
): readonly Trait[] {
  return [
    trait('note on', note),
    uses.length === 0
      ? { word: 'grounds of' }
      : { word: 'grounds of', value: { kind: 'set', items: uses.map(names.id) } },
  ];
}

function factorTraits(factor: LoadFactor | undefined): readonly Trait[] {
  return [
    numeric('factor on', factor?.factor),
    trait('reason for the factor on', factor?.because),
  ];
}

function directionOf(degrees: number): Trait {
  // Degrees that were worked out of radians are off by a last digit.
  const whole = Number(degrees.toPrecision(12));
  const turned = ((whole % 360) + 360) % 360;
  const named = directions.get(turned);
  return {
    word: 'direction of',
    value: named === undefined ? sizesOfAngle(turned) : text(named),
  };
}

const directions: ReadonlyMap<number, string> = new Map([
  [0, 'right'],
  [90, 'up'],
  [180, 'left'],
  [270, 'down'],
]);

const sizesOfAngle = (degrees: number): Value => text(`${numberText(degrees)}°`);
const text = (of: string): Value => ({ kind: 'text', text: of });
const sizes = (
  of: readonly GivenQuantity[],
  joined: 'to' | 'and' | 'bounds',
): Value => ({
  kind: 'quantities',
  of,
  joined,
});
const inherited = (of: GivenQuantity, isTaken: boolean): Value => ({
  kind: 'quantities',
  of: [of],
  joined: 'to',
  isTaken,
});
const trait = (word: string, of: string | undefined): Trait =>
  of === undefined ? { word } : { word, value: text(of) };
const numeric = (word: string, of: number | undefined): Trait =>
  of === undefined ? { word } : { word, value: { kind: 'number', value: of } };
