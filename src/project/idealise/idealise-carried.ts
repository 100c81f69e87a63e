import type { Load, RangeResult, Reaction } from '../../statics/index.ts';
import type { CarriedReaction } from '../definitions.ts';

/** What the support of another member gives to that member in one case, for one carried reaction. */
export interface CarriedComponents {
  /** Id of the carried reaction. */
  readonly id: string;
  readonly case: string;
  /** N and N·m, as results have them: what the support gives to the other member; null where it gives none. */
  readonly reaction: Pick<Reaction, 'x' | 'y' | 'moment'>;
  /** Where the case has no single state: greatest and least of each component. `reaction` is then the greatest of each. */
  readonly range?: Pick<RangeResult['reactions'][number], 'x' | 'y' | 'moment'>;
}

/** What of a carried reaction does not go along, because only the vertical component does; N and N·m. */
export interface LeftBehind {
  readonly id: string;
  readonly case: string;
  readonly x: number;
  readonly moment: number;
}

/**
 * The loads that a carried reaction brings in one case. What the support gives to the other
 * member, that member gives to this one, turned round (Newton's third law), as often as `times`.
 */
export function idealiseCarried(
  carried: CarriedReaction,
  components: CarriedComponents,
): readonly Load[] {
  const { x, y, moment } = components.reaction;
  const all = carried.carry === 'all';
  const turnedRound = (value: number | null): number =>
    value === null || value === 0 ? 0 : -value * carried.times;
  const force = { fx: all ? turnedRound(x) : 0, fy: turnedRound(y) };
  const couple = all ? turnedRound(moment) : 0;
  const base = { case: components.case, x: carried.at.x };
  const side = carried.side === undefined ? {} : { side: carried.side };
  return [
    ...(force.fx === 0 && force.fy === 0
      ? []
      : [
          {
            ...base,
            id: carriedLoadId(carried.id, components.case, 'force'),
            kind: 'point' as const,
            ...force,
          },
        ]),
    ...(couple === 0
      ? []
      : [
          {
            ...base,
            id: carriedLoadId(carried.id, components.case, 'couple'),
            kind: 'couple' as const,
            m: couple,
            ...side,
          },
        ]),
  ];
}

/** Components that stay behind and are not 0; undefined where nothing does. */
export function leftBehind(
  carried: CarriedReaction,
  components: CarriedComponents,
): LeftBehind | undefined {
  if (carried.carry === 'all') return undefined;
  const [x, moment] = [sizeLeft(components, 'x'), sizeLeft(components, 'moment')];
  return x === 0 && moment === 0
    ? undefined
    : { id: carried.id, case: components.case, x, moment };
}

/** Of a component between two ends the one of greater size. */
function sizeLeft(
  { reaction, range }: CarriedComponents,
  part: 'x' | 'moment',
): number {
  const [max, min] = [range?.[part]?.max.value ?? 0, range?.[part]?.min.value ?? 0];
  if (range === undefined) return reaction[part] ?? 0;
  return Math.abs(min) > Math.abs(max) ? min : max;
}

/** Ids of carried loads begin with that of the reaction, so that they keep its place in the file's order. */
function carriedLoadId(id: string, mark: string, part: 'force' | 'couple'): string {
  return `${id}:${mark}:${part}`;
}
