import { termsOfCutSum, type CutTerm, type Sum } from '../../../src/statics/index.ts';
import type { MarkingContext } from '../../../src/review/marking-context.ts';
import type {
  SheetStep,
  SheetTerm,
  SheetUnits,
  SheetUnknown,
} from './narrated-sheet.ts';
import { figures } from './write-line.ts';

interface Setting {
  readonly unknowns: ReadonlyMap<string, SheetUnknown>;
  readonly stations: readonly number[];
  readonly units: SheetUnits;
}

/** The moment at one station and the shear at another, from all that stands to the left of them. */
export function valueSteps(
  context: MarkingContext,
  setting: Setting,
): readonly SheetStep[] {
  const [moment = 0, shear = 0] = setting.stations;
  return [
    valueStep(context, setting, { force: 'moment', x: moment }),
    valueStep(context, setting, { force: 'shear', x: shear }),
  ].flatMap((step) => step ?? []);
}

function valueStep(
  context: MarkingContext,
  setting: Setting,
  { force, x }: { readonly force: 'moment' | 'shear'; readonly x: number },
): SheetStep | undefined {
  const { structure, loading } = context;
  const places = [
    ...structure.points.map((point) => point.x),
    ...structure.loads.flatMap((load) =>
      load.kind === 'distributed' ? [load.from, load.to] : [load.x],
    ),
  ];
  const length = structure.points.at(-1)!.x - structure.points[0]!.x;
  if (places.some((place) => Math.abs(place - x) < 0.01 * length)) return undefined;
  const sum: Sum =
    force === 'moment' ? { kind: 'moments', about: x } : { kind: 'forces', along: 'y' };
  const all = termsOfCutSum(structure, loading, { to: { x, side: 'left' } }, sum);
  const own = all.find(({ source }) => source.kind === 'cut' && source.force === force);
  if (own === undefined) return undefined;
  const others = all.filter(({ source }) => source.kind !== 'cut');
  const worths = others.map((term) => -worthOf(context, term) / own.factor);
  const value = worths.reduce((total, one) => total + one, 0);
  const gross = worths.reduce((total, one) => total + Math.abs(one), 0);
  // Three figures tell nothing of a small difference of great terms.
  if (Math.abs(value) < 0.3 * gross || gross === 0) return undefined;
  const { units } = setting;
  const [f, l] = [units.force[1], units.length[1]];
  const symbols = new Set(
    [...setting.unknowns.values()].map(({ point, index }) => `${point} ${index}`),
  );
  const isTold = others.every(
    ({ source }) =>
      source.kind !== 'reaction' || symbols.has(`${source.point} ${source.index}`),
  );
  if (!isTold) return undefined;
  const terms = others.flatMap((term) =>
    termOf(setting, term, { scale: -1 / own.factor, x, force }),
  );
  const station = `${Number((x / l).toFixed(3))} ${units.length[0]}`;
  return {
    head: `value: ${force} at ${station}`,
    terms,
    ending: '',
    symbol: force === 'moment' ? 'MX' : 'VX',
    count: value / f / (force === 'moment' ? l : 1),
    unit: force === 'moment' ? `${units.force[0]} ${units.length[0]}` : units.force[0],
  };
}

function worthOf({ structure, result }: MarkingContext, term: CutTerm): number {
  const { source } = term;
  if (source.kind !== 'reaction') return (term.magnitude ?? 0) * term.factor;
  const at = structure.supports.findIndex(({ point }) => point === source.point);
  return (result.reactions[at]?.components[source.index] ?? 0) * term.factor;
}

interface Written {
  readonly scale: number;
  readonly x: number;
  readonly force: 'moment' | 'shear';
}

function termOf(
  setting: Setting,
  term: CutTerm,
  { scale, x, force }: Written,
): readonly SheetTerm[] {
  const by = term.factor * scale;
  if (Math.abs(by) < 1e-9) return [];
  const [lName, l] = setting.units.length;
  const isLever = force === 'moment' && term.quantity === 'force';
  const reach = isLever ? Math.abs(term.x - x) : 1;
  const arm = isLever ? ` * ${figures(reach / l, 5)} ${lName}` : '';
  const lever = { by, reach, arm, armCount: isLever ? reach / l : 1 };
  return term.source.kind === 'reaction'
    ? reactionTerm(setting, term, lever)
    : loadTerm(setting, term, lever);
}

/** What a term counts with, and its arm: in SI, as text, and in the sheet's unit. */
interface Lever {
  readonly by: number;
  readonly reach: number;
  readonly arm: string;
  readonly armCount: number;
}

function reactionTerm(
  { unknowns }: Setting,
  { source }: CutTerm,
  { by, reach, arm, armCount }: Lever,
): readonly SheetTerm[] {
  const [symbol = ''] = [...unknowns].flatMap(([one, { point, index }]) =>
    source.kind === 'reaction' && point === source.point && index === source.index
      ? [one]
      : [],
  );
  const share = Math.abs(by) / reach;
  const part = Math.abs(share - 1) < 1e-9 ? '' : ` * ${figures(share, 5)}`;
  const text = `{}${part}${arm}`;
  const factor = share * armCount;
  const sign = by < 0 ? -1 : 1;
  return [{ sign, text, repeats: symbol, isOpen: false, size: 1, factor }];
}

function loadTerm(
  { units }: Setting,
  { magnitude = 0, quantity }: CutTerm,
  { by, reach, arm, armCount }: Lever,
): readonly SheetTerm[] {
  const worth = magnitude * by;
  if (worth === 0) return [];
  const [[fName, f], [lName, l]] = [units.force, units.length];
  const isCouple = quantity === 'couple';
  const size = Math.abs(worth) / reach / f / (isCouple ? l : 1);
  const text = `${figures(size, 5)} ${isCouple ? `${fName} ${lName}` : fName}${arm}`;
  const sign = worth < 0 ? -1 : 1;
  return [{ sign, text, isOpen: false, size, factor: armCount }];
}
