import { collectSymbols, type Statement, type Symbol } from '../equation/index.ts';
import type {
  BeamDefinition,
  CarriedReaction,
  LoadCase,
  Project,
} from '../project/index.ts';
import type { Combination } from '../standards/index.ts';
import {
  tidyStructure,
  type BeamResult,
  type BeamSolution,
  type BeamStructure,
} from '../statics/index.ts';
import {
  loadsOfCase,
  nameShares,
  type CaseContext,
  type MemberContext,
} from './case-context.ts';
import type { BeamDerivation, Section, Summary } from './derivation.ts';
import { mapStatements, statementsOf } from './map-statements.ts';
import { narrateCautions } from './narrators/narrate-cautions.ts';
import {
  narrateCombinations,
  type Entry,
  type JudgedGroup,
} from './narrators/narrate-combinations.ts';
import { narrateEquations, narrateNoLoads } from './narrators/narrate-equations.ts';
import { narrateGiven } from './narrators/narrate-given.ts';
import { narrateInternal } from './narrators/narrate-internal.ts';
import { narrateResults } from './narrators/narrate-results.ts';
import { narrateDeterminacy, narrateSupports } from './narrators/narrate-statics.ts';
import { diagramsFigure, envelopeFigure } from './pictures/diagram-figures.ts';
import {
  asLoadedFigure,
  freeBodyFigure,
  piecesFigure,
} from './pictures/member-figures.ts';
import { printingOf } from './printing.ts';
import { runChecks } from './sense-checks/run-checks.ts';
import { reworkable } from './rework.ts';
import type { CautionStep, ResultStep, Step } from './steps.ts';
import { summarise } from './summarise.ts';
import { symbolsOf } from './symbols.ts';

/** A solved beam with everything that its sheets speak of. */
export interface BeamWork {
  readonly definition: BeamDefinition;
  readonly structure: BeamStructure;
  /** Carried reactions by the id of the load that each became. */
  readonly carried: ReadonlyMap<string, CarriedReaction>;
  readonly solution: BeamSolution;
  /** Combinations and their results, in one order. */
  readonly combinations: readonly Combination[];
  readonly combined: readonly BeamResult[];
  readonly handedOn: ResultStep['handedOn'];
  /** Cautions that only the project as a whole can know. */
  readonly cautions: readonly CautionStep[];
}

/** The derivation, or the check that stopped it. */
export type DeriveOutcome =
  | { readonly derivation: BeamDerivation }
  | {
      readonly failed: { readonly case: string; readonly findings: readonly string[] };
    };

/**
 * Narrates a solved beam: facts in the order of the sheet. Every check is worked on the numbers;
 * one that does not hold stops the sheet, and no result is given.
 */
export function deriveBeam(project: Project, work: BeamWork): DeriveOutcome {
  const context = memberContext(project, work);
  const cases = work.solution.results.map((result): CaseContext => ({
    ...context,
    mark: result.mark,
    result,
    shareOf: nameShares(context.structure, []),
  }));
  const worked = cases.filter(
    ({ mark }) => loadsOfCase(context.structure, mark).length > 0,
  );
  for (const one of worked) {
    const findings = runChecks(one).flatMap(({ holds, finding }) =>
      holds ? [] : [finding],
    );
    if (findings.length > 0) return { failed: { case: one.mark, findings } };
  }
  const sections = [
    ...opening(project, work, context),
    ...cases.flatMap((one) => caseSections(project, one)),
    ...closing(work, context),
  ].map((section) => enoughFigures(section));
  return {
    derivation: bind(
      work,
      sections,
      summarise(context, judgedGroups(work)[0]?.entries ?? []),
    ),
  };
}

function memberContext(
  project: Project,
  { definition, structure: given }: BeamWork,
): MemberContext {
  // The solver works on the same, so that stations and directions can be compared as they are.
  const structure = tidyStructure(given);
  return {
    definition,
    structure,
    symbols: symbolsOf(structure),
    printing: printingOf(project),
    conventions: project.definition.conventions,
    defined: new Map(definition.loads.map((load) => [load.id, load])),
  };
}

/** Items 1 to 3. */
function opening(
  project: Project,
  work: BeamWork,
  context: MemberContext,
): readonly Section[] {
  const results = judgedOf(work).map(({ result }) => result);
  const cautions = [
    ...narrateCautions(context, work.solution.determinacy, results),
    ...work.cautions,
  ];
  return [
    {
      kind: 'given',
      steps: [
        ...narrateGiven(context, project.loads.cases, work.carried),
        { kind: 'figure', shows: 'as-loaded', figure: asLoadedFigure(context) },
        ...cautions,
      ],
    },
    {
      kind: 'supports',
      steps: [
        ...narrateSupports(context),
        { kind: 'figure', shows: 'free-body', figure: freeBodyFigure(context) },
      ],
    },
    {
      kind: 'determinacy',
      steps: [
        ...narrateDeterminacy(context, work.solution.determinacy),
        ...(work.structure.hinges.length === 0
          ? []
          : [
              {
                kind: 'figure',
                shows: 'pieces',
                figure: piecesFigure(context),
              } as const,
            ]),
      ],
    },
  ];
}

/** Items 4 to 6 of one case. */
function caseSections(project: Project, context: CaseContext): readonly Section[] {
  const of: LoadCase | undefined = project.loads.cases.find(
    ({ mark }) => mark === context.mark,
  );
  const head = {
    mark: context.mark,
    ...(of?.title === undefined ? {} : { title: of.title }),
  };
  if (loadsOfCase(context.structure, context.mark).length === 0) {
    return [{ kind: 'equations', case: head, steps: [narrateNoLoads(context)] }];
  }
  const checks = runChecks(context).flatMap(({ fact }) => fact ?? []);
  return [
    { kind: 'equations', case: head, steps: narrateEquations(context) },
    {
      kind: 'reasonable',
      case: head,
      steps: [...checks, { kind: 'agreement', count: checks.length }],
    },
    {
      kind: 'internal-forces',
      case: head,
      steps: [
        ...narrateInternal(context),
        {
          kind: 'figure',
          shows: 'diagrams',
          case: context.mark,
          figure: diagramsFigure(context, context.result),
        },
      ],
    },
  ];
}

/** The entries that the member is judged on: combinations where there are any, else cases. */
function judgedOf({ combinations, combined, solution }: BeamWork): readonly Entry[] {
  if (combined.length === 0) return solution.results.map((result) => ({ result }));
  return combined.flatMap((result, index) => {
    const combination = combinations[index];
    return combination === undefined ? [] : [{ result, combination }];
  });
}

/** Entries in groups that are never mixed: strength, service, or the cases where nothing is combined. */
function judgedGroups(work: BeamWork): readonly JudgedGroup[] {
  const judged = judgedOf(work);
  if (work.combined.length === 0) return [{ for: 'cases', entries: judged }];
  return (['strength', 'service'] as const)
    .map((scope) => ({
      for: scope,
      entries: judged.filter(({ combination }) => combination?.for === scope),
    }))
    .filter(({ entries }) => entries.length > 0);
}

/** Items 8 and 10. */
function closing(work: BeamWork, context: MemberContext): readonly Section[] {
  const cases = work.solution.results;
  const groups = judgedGroups(work);
  const isCombined = work.combined.length > 0;
  const table = narrateCombinations(context, cases, {
    for: 'cases',
    entries: cases.map((result) => ({ result })),
  });
  const steps: readonly Step[] = [
    ...(isCombined && cases.length > 1
      ? table.filter(({ kind }) => kind === 'entries')
      : []),
    ...groups.flatMap((group): readonly Step[] => [
      ...(isCombined || cases.length > 1
        ? narrateCombinations(context, cases, group)
        : []),
      ...envelope(context, group),
    ]),
  ];
  return [
    ...(steps.length === 0 ? [] : [{ kind: 'combinations' as const, steps }]),
    { kind: 'results', steps: [narrateResults(context, groups, work.handedOn)] },
  ];
}

function envelope(
  context: MemberContext,
  { for: scope, entries }: JudgedGroup,
): readonly Step[] {
  if (entries.length < 2) return [];
  const figure = envelopeFigure(
    context,
    entries.map(({ result }) => result),
  );
  return [{ kind: 'figure', shows: 'envelope', for: scope, figure }];
}

function enoughFigures(section: Section): Section {
  return {
    ...section,
    steps: section.steps.map((step) => mapStatements(step, reworkable)),
  };
}

function bind(
  { definition }: BeamWork,
  sections: readonly Section[],
  summary: Summary,
): BeamDerivation {
  const statements = sections.flatMap(({ steps }) => steps.flatMap(statementsOf));
  return {
    kind: 'beam',
    mark: definition.mark,
    ...(definition.title === undefined ? {} : { title: definition.title }),
    ...(definition.where === undefined ? {} : { where: definition.where }),
    ...(definition.typical === undefined ? {} : { typical: definition.typical }),
    sections,
    symbols: symbolsIn(statements),
    uses: [
      ...new Set([
        ...definition.uses,
        ...definition.loads.flatMap(({ uses }) => uses),
        ...definition.carried.flatMap(({ uses }) => uses),
      ]),
    ],
    summary,
  };
}

function symbolsIn(statements: readonly Statement[]): readonly Symbol[] {
  return collectSymbols(statements);
}
