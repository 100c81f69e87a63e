import { collectResults, type Results } from '../results/index.ts';
import { chosenMembers } from './asked-for.ts';
import { memberInput } from './member-outcomes.ts';
import type { WorkedMembers } from './worked-members.ts';

/** Which figures of a package, and where they stand in it. */
export interface ResultsOptions {
  /** Marks of members; all where absent. */
  readonly marks?: readonly string[];
  /** Figures at the ends of N equal stretches as well. */
  readonly stations?: number;
  /** First sheet of each anchor, where a package was bound. */
  readonly sheets?: Readonly<Record<string, number>>;
}

/** Every figure of a worked project, as results.json holds them. */
export function packageResults(
  worked: WorkedMembers,
  { marks, stations, sheets }: ResultsOptions = {},
): Results {
  const { project, members } = worked;
  if (project === undefined) throw new RangeError('the project could not be read');
  const { number, title, revisions, units } = project.definition;
  const revision = revisions.at(-1)?.mark;
  return collectResults({
    project: {
      ...(number === undefined ? {} : { number }),
      title,
      ...(revision === undefined ? {} : { revision }),
      units,
    },
    members: chosenMembers(members, marks).map((member) =>
      memberInput(project, member, sheets),
    ),
    ...(stations === undefined ? {} : { stations }),
  });
}
