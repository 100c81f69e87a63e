import type { BeamPlace, CarriedReaction } from '../../project/index.ts';
import type { Load } from '../../statics/index.ts';
import type { MemberContext } from '../case-context.ts';
import { wordsOfDirection } from '../direction.ts';
import { value } from '../printing.ts';
import type { LoadRow } from '../steps.ts';
import { placeOf } from './places.ts';

/** A carried reaction as the given list shows it; its size is what the other member found. */
export function carriedRow(
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
