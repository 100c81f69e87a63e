import {
  deriveMembers,
  workMembers,
  type BeamDerivation,
  type BeamWork,
  type Section,
  type Step,
} from '../../src/derivation/index.ts';
import type { CaseContext } from '../../src/derivation/case-context.ts';
import { statementsOf } from '../../src/derivation/map-statements.ts';
import { caseContext, memberContext } from '../../src/derivation/member-context.ts';
import { lineToLinear, type Statement } from '../../src/equation/index.ts';
import type { Project } from '../../src/project/index.ts';
import { combinationsFor } from '../../src/standards/index.ts';
import type { BeamResult } from '../../src/statics/index.ts';
import { beamYaml, soundFolder } from './folder.ts';

/** A project of beams, worked and narrated; anything that fails on the way fails the test. */
export interface Derived {
  readonly project: Project;
  readonly works: readonly BeamWork[];
  readonly derivations: readonly BeamDerivation[];
}

/** Works a folder given as texts by path. */
export function derivedFolder(files: Readonly<Record<string, string>>): Derived {
  const project = soundFolder(files);
  const { combinations } = combinationsFor({
    ...project.loads,
    standards: project.definition.standards,
  });
  const members = deriveMembers(project, workMembers(project, combinations));
  const failed = members.flatMap((one) =>
    one.kind === 'failed' ? one.diagnostics.map(({ message }) => message) : [],
  );
  if (failed.length > 0) throw new Error(failed.join('\n'));
  const derived = members.flatMap((one) => (one.kind === 'derived' ? [one] : []));
  return {
    project,
    works: derived.map(({ work }) => work),
    derivations: derived.map(({ derivation }) => derivation),
  };
}

/** Works one beam; `rest` replaces what it names of a simple beam's file. */
export function derivedBeam(
  rest: Readonly<Record<string, string>>,
  files: Readonly<Record<string, string>> = {},
): {
  readonly project: Project;
  readonly work: BeamWork;
  readonly derivation: BeamDerivation;
} {
  const { project, works, derivations } = derivedFolder({
    ...files,
    'members/b1.yaml': beamYaml(rest),
  });
  return { project, work: works[0]!, derivation: derivations[0]! };
}

/** The project file in SI, for tests that read in metres. */
export const siProject = 'project: { title: Weir crossing }\nunits: si\n';

/** The sections of a kind, of one case where it is named. */
export function sectionsOf(
  derivation: BeamDerivation,
  kind: Section['kind'],
  mark?: string,
): readonly Section[] {
  return derivation.sections.filter(
    (section) =>
      section.kind === kind && (mark === undefined || section.case?.mark === mark),
  );
}

/** The steps of the sections of a kind. */
export function stepsOf(
  derivation: BeamDerivation,
  kind: Section['kind'],
  mark?: string,
): readonly Step[] {
  return sectionsOf(derivation, kind, mark).flatMap(({ steps }) => steps);
}

/** Every printed line of a section, as text. */
export function linesOf(
  derivation: BeamDerivation,
  kind: Section['kind'],
  mark?: string,
): readonly string[] {
  return stepsOf(derivation, kind, mark)
    .flatMap(statementsOf)
    .flatMap(linesOfStatement);
}

/** The lines of a statement as text. */
export function linesOfStatement({ lines }: Statement): readonly string[] {
  return lines.map((line) => lineToLinear(line).replaceAll('\u00a0', ' '));
}

/** The only step of a kind. */
export function stepOf<K extends Step['kind']>(
  steps: readonly Step[],
  kind: K,
): Extract<Step, { kind: K }> {
  const found = steps.filter(
    (step): step is Extract<Step, { kind: K }> => step.kind === kind,
  );
  if (found.length !== 1) throw new Error(`${found.length} steps of kind ${kind}`);
  return found[0]!;
}

/** What the checks see of a case, with the result that somebody claims for it. */
export function claimed(
  project: Project,
  work: BeamWork,
  result: BeamResult,
): CaseContext {
  return caseContext(memberContext(project, work), result);
}
