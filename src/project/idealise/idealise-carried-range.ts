import type { Load, LoadChoice } from '../../statics/index.ts';
import type { CarriedReaction } from '../definitions.ts';
import { idealiseCarried, type CarriedComponents } from './idealise-carried.ts';

/** What a carried reaction brings in one case: loads that are always there, and choices between a greatest and a least. */
export interface CarriedLoads {
  readonly loads: readonly Load[];
  readonly choices: readonly LoadChoice[];
}

/**
 * The loads of a carried reaction that has no single state: each component is a choice of its own
 * between its greatest and its least. The arrangement that gives one component's greatest need not give another's, nor
 * that of another support, so this asks for no less than can happen. A component that does not vary is a plain load.
 */
export function idealiseCarriedRange(
  carried: CarriedReaction,
  { id, case: mark, reaction, range }: CarriedComponents,
): CarriedLoads {
  const loadsOf = (one: Partial<CarriedComponents['reaction']>): readonly Load[] =>
    idealiseCarried(carried, {
      id,
      case: mark,
      reaction: { x: null, y: null, moment: null, ...one },
    });
  if (range === undefined) return { loads: loadsOf(reaction), choices: [] };
  const parts = (['x', 'y', 'moment'] as const).map((part): CarriedLoads => {
    const ends = range[part];
    const tell = (load: Load, end: string): Load => ({
      ...load,
      id: `${load.id}:${part}${end}`,
    });
    if (ends === null || ends.max.value === ends.min.value) {
      const value = ends?.max.value ?? null;
      return {
        loads: loadsOf({ [part]: value }).map((load) => tell(load, '')),
        choices: [],
      };
    }
    const options = (['greatest', 'least'] as const).map((end) => {
      const { value } = ends[end === 'greatest' ? 'max' : 'min'];
      const loads = loadsOf({ [part]: value }).map((load) => tell(load, `:${end}`));
      return { name: end, loads };
    });
    // Without `carry: all` only the vertical component goes along.
    return options.every(({ loads }) => loads.length === 0)
      ? { loads: [], choices: [] }
      : { loads: [], choices: [{ id: `${id}:${mark}:${part}`, case: mark, options }] };
  });
  return {
    loads: parts.flatMap(({ loads }) => loads),
    choices: parts.flatMap(({ choices }) => choices),
  };
}

/** The greatest of every component: what stands for the range on the sheet. */
export function greatestComponents(
  range: NonNullable<CarriedComponents['range']>,
): CarriedComponents['reaction'] {
  return {
    x: range.x?.max.value ?? null,
    y: range.y?.max.value ?? null,
    moment: range.moment?.max.value ?? null,
  };
}
