import { loadsAt, type FoundLoad } from './loads-at.ts';
import { stationOf, type MarkingContext } from '../marking-context.ts';
import { readLength } from './read-length.ts';

/** `load L at B`, `load L at 4 ft`, `load L`: a point load or couple of a case; `force L at B`, `couple L at B` where both stand there. */
const atPlace = /^(load|force|couple)(?:\s+(\S+?))?(?:\s+at\s+(.+))?$/u;

/** The point load or couple that a name stands for; several where it reads several ways. */
export function findLoad(
  context: MarkingContext,
  means: string,
): readonly FoundLoad[] | undefined {
  const found = atPlace.exec(means);
  if (found === null) return undefined;
  const [, word, mark, place] = found;
  const x = place === undefined ? undefined : stationOf(context, place, readLength);
  if (place !== undefined && x === undefined) return [];
  return loadsAt(context, { mark, x }).filter(
    ({ load }) => word === 'load' || (load.kind === 'couple') === (word === 'couple'),
  );
}
