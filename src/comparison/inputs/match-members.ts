import type { Project } from '../../project/index.ts';
import { assign } from './assign.ts';
import { likeness, type MemberSide } from './compare-members.ts';
import type { Names } from './names.ts';

/** From this likeness on a member that is gone and one that came are one member with another mark. */
const nearly = 0.75;
/** The same where both stand in one file. */
const nearlyInOneFile = 0.5;

/** Members that have another mark now, earlier mark to later; `names` know no members yet. */
export function renamedMembers(
  earlier: Project,
  later: Project,
  names: Names,
): ReadonlyMap<string, string> {
  const gone = leftOver(earlier, later);
  const come = leftOver(later, earlier);
  const costs = gone.map((one) =>
    come.map((other) => {
      const same = likeness(one, other, names);
      const isOneFile = one.beam.file === other.beam.file;
      const isOne = same >= (isOneFile ? nearlyInOneFile : nearly);
      return isOne ? 1 - same + (isOneFile ? 0 : 0.01) : Infinity;
    }),
  );
  return new Map(
    assign(costs, 1).flatMap((column, row) => {
      const [one, other] = [gone[row], column === undefined ? undefined : come[column]];
      return one === undefined || other === undefined
        ? []
        : [[one.beam.mark, other.beam.mark] as const];
    }),
  );
}

function leftOver(side: Project, other: Project): readonly MemberSide[] {
  const marks = new Set([...other.members, ...other.faulty].map(({ mark }) => mark));
  return side.members
    .filter(({ mark }) => !marks.has(mark))
    .map((beam) => ({ project: side, beam }));
}
