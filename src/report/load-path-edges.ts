import { placeWords } from '../derivation/index.ts';
import type { Project } from '../project/index.ts';
import type { LoadPathEdge } from './report-input.ts';

/** Where the reactions of the members in the package go, as far as both ends are in it. */
export function loadPathEdges(
  { members }: Project,
  marks: readonly string[],
): readonly LoadPathEdge[] {
  return members.flatMap(({ mark, carried }) =>
    carried
      .filter(({ member }) => marks.includes(member) && marks.includes(mark))
      .map(({ member, point, at }) => ({
        from: member,
        point,
        to: mark,
        at: placeWords(at),
      })),
  );
}
