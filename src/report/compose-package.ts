import type { DerivedMember, ProjectClosure } from '../derivation/index.ts';
import type { Diagnostic } from '../diagnostics/index.ts';
import type { Project } from '../project/index.ts';
import type { CombinationList } from '../standards/index.ts';
import type { World } from '../world/index.ts';
import { chosenMembers, markOf } from './asked-for.ts';
import type { Report } from './blocks.ts';
import { checkPrints } from './check-prints.ts';
import { composeReport } from './compose-report.ts';
import { loadPathEdges } from './load-path-edges.ts';
import { memberReport } from './member-outcomes.ts';
import { templateSources } from './template-sources.ts';

/** A project worked to its derivations, as the package takes it. */
export interface WorkedMembers {
  /** Absent where the project itself cannot be read. */
  readonly project?: Project;
  readonly combinations: CombinationList;
  readonly members: readonly DerivedMember[];
  readonly closures: readonly ProjectClosure[];
}

/** What the package is to hold. */
export interface PackageOptions {
  /** Marks of the members to bind; all where absent. */
  readonly only?: readonly string[];
  readonly program: { readonly name: string; readonly version: string };
  /** Why the package is archived although it is not in order, a sentence each: written on the cover. */
  readonly asIs?: readonly string[];
}

/** The package as blocks, from a worked project. */
export function composePackage(
  world: World,
  worked: WorkedMembers,
  options: PackageOptions,
): { readonly report?: Report; readonly diagnostics: readonly Diagnostic[] } {
  const { project, combinations } = worked;
  if (project === undefined) return { diagnostics: [] };
  const members = chosenMembers(worked.members, options.only);
  const composed = composeReport(
    {
      project,
      combinations,
      members: members.map((member) => memberReport(project, member)),
      loadPath: loadPathEdges(project, members.map(markOf)),
      worked: checkPrints(project, worked.members, options.only),
      closures: options.only === undefined ? worked.closures : [],
      program: options.program,
      asIs: options.asIs ?? [],
    },
    templateSources(world, project),
  );
  return {
    ...(composed.value === undefined ? {} : { report: composed.value }),
    diagnostics: composed.diagnostics,
  };
}
