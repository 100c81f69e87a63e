import type { InputChange, Reach } from './comparison.ts';
import { loadPath, type BeamDefinition, type Project } from '../project/index.ts';
import type { MemberResults, Results } from '../results/index.ts';
import { changedPremises, isTouched } from './inputs/touched-members.ts';
import { laterNames, type Names } from './inputs/names.ts';
import { sameFigures } from './results/same-figures.ts';

/** One side of a comparison: a project and what was worked from it. */
export interface ComparedSide {
  readonly project: Project;
  readonly results: Results;
}

/**
 * Members whose sheets a change reaches, in the later sheet order: those whose own file changed; those
 * that use something of the project's that changed, or that have any figure otherwise than before; and
 * all that carry reactions of these, of which nothing is assumed: whatever is downstream is reached.
 */
export function reachOf(
  earlier: ComparedSide,
  later: ComparedSide,
  inputs: readonly InputChange[],
  names: Names = laterNames,
): readonly Reach[] {
  const own = new Set(
    inputs.flatMap(({ part, member }) =>
      part === 'members' && member !== undefined ? [member] : [],
    ),
  );
  const premises = changedPremises(earlier.project, later.project, names);
  const direct = new Map<string, Reach['by']>();
  for (const { mark } of [...later.project.members, ...later.project.faulty])
    if (own.has(mark)) direct.set(mark, 'definition');
  for (const beam of later.project.members) {
    if (direct.has(beam.mark)) continue;
    const solved = later.results.members.find(({ mark }) => mark === beam.mark);
    if (isTouched(beam, premises, degreeOf(solved))) direct.set(beam.mark, 'project');
  }
  const downstream = carriedFrom(later.project.members, new Set(direct.keys()));
  const changed = unexplained(
    earlier,
    later,
    new Set([...direct.keys(), ...downstream]),
    names,
  );
  for (const mark of changed) direct.set(mark, 'project');
  const reached = new Set([
    ...direct.keys(),
    ...carriedFrom(later.project.members, new Set(direct.keys())),
  ]);
  const faulty = later.project.faulty.map(({ mark }) => ({ mark, carried: [] }));
  return [...later.project.members, ...faulty].flatMap((one) => {
    if (!reached.has(one.mark)) return [];
    const by = direct.get(one.mark) ?? 'carried';
    const from = by === 'carried' ? sourcesOf(one, reached) : [];
    return [{ member: one.mark, by, from }];
  });
}

/** Members that carry, over any number of others, a reaction of those reached. */
function carriedFrom(
  members: readonly BeamDefinition[],
  reached: ReadonlySet<string>,
): ReadonlySet<string> {
  const all = new Set(reached);
  // In the order of the load path a member stands after all that it carries: one pass is enough.
  for (const mark of loadPath(members).order) {
    const beam = members.find((one) => one.mark === mark);
    if (beam !== undefined && sourcesOf(beam, all).length > 0) all.add(mark);
  }
  return new Set([...all].filter((mark) => !reached.has(mark)));
}

function sourcesOf(
  { carried }: Pick<BeamDefinition, 'carried'>,
  reached: ReadonlySet<string>,
): readonly string[] {
  const marks = carried.map(({ member }) => member).filter((mark) => reached.has(mark));
  return [...new Set(marks)];
}

/** Members with a figure otherwise than before although nothing that they use is known to have changed. */
function unexplained(
  earlier: ComparedSide,
  later: ComparedSide,
  known: ReadonlySet<string>,
  names: Names,
): readonly string[] {
  return later.results.members
    .filter((after) => {
      if (known.has(after.mark)) return false;
      const before = earlier.results.members.find(
        ({ mark }) => names.member(mark) === after.mark,
      );
      return before === undefined || !sameFigures(before, after);
    })
    .map(({ mark }) => mark);
}

function degreeOf(member: MemberResults | undefined): number {
  return member?.statics?.degree ?? 0;
}
