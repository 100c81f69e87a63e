import { placeWords } from '../derivation/index.ts';
import type { CarriedReaction, Project } from '../project/index.ts';
import type { LoadPathEdge } from './report-input.ts';

/**
 * Where the reactions of the members in the package go, as far as both ends are in it: one entry a reaction and
 * member that it acts on, the places of one line of the file together.
 */
export function loadPathEdges(
  { members }: Project,
  marks: readonly string[],
): readonly LoadPathEdge[] {
  return members.flatMap(({ mark, carried }) => {
    const here = carried.filter(
      ({ member }) => marks.includes(member) && marks.includes(mark),
    );
    const keys = [...new Set(here.map(keyOf))];
    return keys.flatMap((key) => {
      const alike = here.filter((one) => keyOf(one) === key);
      const [first] = alike;
      if (first === undefined) return [];
      return [
        {
          from: first.member,
          point: first.point,
          to: mark,
          at: alike.map(({ at }) => placeWords(at)),
          times: first.times,
          isWhole: first.carry === 'all',
        },
      ];
    });
  });
}

const keyOf = ({ member, point, times, carry }: CarriedReaction): string =>
  [member, point, times, carry].join(' ');
