import type { Diagnostic } from '../diagnostics/index.ts';
import type { Project } from '../project/index.ts';
import type { World } from '../world/index.ts';
import { chosenMembers, markOf } from './asked-for.ts';
import type { Part, Report } from './blocks.ts';
import {
  bindsCheckPrints,
  checkPrints,
  unmarkedFiles,
  workedLeftOut,
} from './check-prints.ts';
import { composeCheckPrints } from './compose-check-prints.ts';
import { composeReport } from './compose-report.ts';
import { loadPathEdges } from './load-path-edges.ts';
import { memberReport } from './member-outcomes.ts';
import type { ReportInput, UnknownChanges } from './report-input.ts';
import { datesLeftOver, peopleOfThisRevision } from './revision/own-date.ts';
import { revisionInput } from './revision/revise.ts';
import type { Superseded } from './revision/superseded.ts';
import { templateSources } from './template-sources.ts';
import type { WorkedMembers } from './worked-members.ts';

/** What the package is to hold. */
export interface PackageOptions {
  /** Marks of the members to bind; all where absent. */
  readonly only?: readonly string[];
  readonly program: { readonly name: string; readonly version: string };
  /** Why the package is archived although it is not in order, a sentence each: written on the cover. */
  readonly asIs?: readonly string[];
  /** The package that this one replaces, where its bag is named. */
  readonly superseded?: Superseded | UnknownChanges;
}

/** A package as blocks, and its check prints where they are bound on their own. */
export interface Composed {
  readonly report?: Report;
  readonly checkPrints?: Report;
  readonly diagnostics: readonly Diagnostic[];
}

/** The package as blocks, from a worked project. */
export function composePackage(
  world: World,
  worked: WorkedMembers,
  options: PackageOptions,
): Composed {
  const { project } = worked;
  if (project === undefined) return { diagnostics: [] };
  const sources = templateSources(world, project);
  const revision = revisionOf(worked, options, sources);
  const marked = checkPrints(project, worked.members, options.only);
  const isBoundWithin = bindsCheckPrints(project);
  const input: ReportInput = {
    ...inputOf(worked, project, options),
    worked: isBoundWithin ? marked : [],
    ...(revision === undefined ? {} : { revision }),
  };
  const report = composeReport(input, sources);
  const apart =
    isBoundWithin || marked.length === 0
      ? undefined
      : composeCheckPrints({ ...input, worked: marked }, sources);
  return {
    ...(report.value === undefined ? {} : { report: report.value }),
    ...(apart?.value === undefined ? {} : { checkPrints: apart.value }),
    diagnostics: [
      ...workedLeftOut(project, marked),
      ...unmarkedFiles(marked),
      ...datesLeftOver(project.definition, input.project.definition.people),
      ...report.diagnostics,
      ...(apart?.diagnostics ?? []),
    ],
  };
}

function inputOf(
  worked: WorkedMembers,
  project: Project,
  { only, program, asIs = [], superseded }: PackageOptions,
): ReportInput {
  const members = chosenMembers(worked.members, only);
  const earlier =
    superseded === undefined || 'why' in superseded
      ? undefined
      : superseded.worked.project?.definition;
  const people = peopleOfThisRevision(project.definition, earlier);
  return {
    project: { ...project, definition: { ...project.definition, people } },
    combinations: worked.combinations,
    members: members.map((member) => memberReport(project, member)),
    loadPath: loadPathEdges(project, members.map(markOf)),
    worked: [],
    closures: only === undefined ? worked.closures : [],
    program,
    asIs,
  };
}

/** What changed since the superseded package, its sheets composed by the same templates. */
function revisionOf(
  worked: WorkedMembers,
  options: PackageOptions,
  sources: Readonly<Record<string, string>>,
): ReportInput['revision'] {
  const { only, program, superseded } = options;
  if (superseded === undefined || 'why' in superseded) return superseded;
  const { project } = superseded.worked;
  if (project === undefined) return undefined;
  const asked = only === undefined ? { program } : { only, program };
  const input = inputOf(superseded.worked, project, asked);
  const earlier = composeReport(input, sources).value;
  return revisionInput(worked, superseded, earlier?.parts ?? noParts);
}

const noParts: readonly Part[] = [];
