import { collectSymbols, type Statement, type Symbol } from '../equation/index.ts';
import type { LoadCase, Project } from '../project/index.ts';
import { withArrangements } from './arrangements/with-arrangements.ts';
import type { BeamWork } from './beam-work.ts';
import { isIdle, type RangeResult } from '../statics/index.ts';
import { loadsOfCase, type CaseContext, type MemberContext } from './case-context.ts';
import { closingSections, judgedGroups } from './closing-sections.ts';
import type { BeamDerivation, Section, Summary } from './derivation.ts';
import { greatestDeflections } from './displacements/greatest-deflections.ts';
import { narrateDisplacements } from './displacements/narrate-displacements.ts';
import { judgeLimits } from './limits/judge-limits.ts';
import { narrateLimits } from './limits/narrate-limits.ts';
import { stateOfSum } from './limits/state-of-sum.ts';
import { summariseLimits } from './limits/summarise-limits.ts';
import { mapStatements, statementsOf } from './map-statements.ts';
import { caseContext, memberContext } from './member-context.ts';
import { narrateAgreement } from './narrators/narrate-agreement.ts';
import { narrateEquations, narrateNoLoads } from './narrators/narrate-equations.ts';
import { narrateInternal } from './narrators/narrate-internal.ts';
import { diagramsFigure } from './pictures/diagram-figures.ts';
import { narrateRedundants } from './redundants/narrate-redundants.ts';
import { openingSections } from './opening-sections.ts';
import { reworkable } from './rework.ts';
import type { CheckOutcome } from './sense-checks/check-outcome.ts';
import { combinationAdds } from './sense-checks/combination-adds.ts';
import { extremesAreGreatest } from './sense-checks/result-agrees.ts';
import { runChecks } from './sense-checks/run-checks.ts';
import { runRangeChecks } from './sense-checks/run-range-checks.ts';
import { summarise } from './summarise.ts';
import { withMoving } from './moving/with-moving.ts';

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
  const cases = work.solution.results.map((result): CheckedCase => {
    const one = caseContext(context, result);
    const range = work.ranges.get(result.mark);
    return {
      context: one,
      checks: runChecks(one),
      ...(range === undefined ? {} : { range }),
    };
  });
  const failed =
    failedCase(cases) ??
    failedCombination(context, work) ??
    firstFailed(runRangeChecks(context, work));
  if (failed !== undefined) return { failed };
  const limits = judgeLimits(project, work);
  const sections = [
    ...openingSections(project, work, context),
    ...cases
      .filter((one) => !isIdleCase(one))
      .flatMap((one) =>
        withMoving(
          one.context,
          withArrangements(one.context, one.range, caseSections(project, one)),
        ),
      ),
    ...idleSection(cases.filter(isIdleCase)),
    ...closingSections(work, context, narrateLimits(context, limits, stateOfSum(work))),
  ].map((section) => enoughFigures(section));
  return {
    derivation: {
      ...bind(work, sections, {
        ...summarise(context, judgedGroups(work)[0]?.entries ?? []),
        ...summariseLimits(context, limits),
      }),
      checks: limits.judged,
    },
  };
}

/** A case with what its checks say. */
interface CheckedCase {
  readonly context: CaseContext;
  /** Where the case has no single state. */
  readonly range?: RangeResult;
  readonly checks: readonly CheckOutcome[];
}

type Failed = Extract<DeriveOutcome, { failed: unknown }>['failed'];

/** The first case whose numbers fail a check; an idle case is checked to be idle. */
function failedCase(cases: readonly CheckedCase[]): Failed | undefined {
  return firstFailed(cases.map(({ context: { mark }, checks }) => ({ mark, checks })));
}

/** The first combination that is not the sum of its cases. */
function failedCombination(context: MemberContext, work: BeamWork): Failed | undefined {
  return firstFailed(
    work.combined.flatMap((result, index) => {
      const factors = work.combinations[index]?.factors;
      if (factors === undefined) return [];
      const cases = work.solution.results;
      return [
        {
          mark: result.mark,
          checks: [
            ...combinationAdds(context, { cases, factors, result }),
            ...extremesAreGreatest(caseContext(context, result)),
          ],
        },
      ];
    }),
  );
}

function firstFailed(
  all: readonly { readonly mark: string; readonly checks: readonly CheckOutcome[] }[],
): Failed | undefined {
  for (const { mark, checks } of all) {
    const findings = checks.flatMap(({ holds, finding }) => (holds ? [] : [finding]));
    if (findings.length > 0) return { case: mark, findings };
  }
  return undefined;
}

/** A case in which nothing is on the member, moves its supports or bends it. */
function isIdleCase({ context, range }: CheckedCase): boolean {
  return range === undefined && isIdle(context.structure, context.mark);
}

/** All idle cases in one breath. */
function idleSection(cases: readonly CheckedCase[]): readonly Section[] {
  const [first] = cases;
  if (first === undefined) return [];
  const marks = cases.map(({ context }) => context.mark);
  return [{ kind: 'idle', steps: [narrateNoLoads(first.context, marks)] }];
}

/** Items 4 to 7 of one case. */
function caseSections(
  project: Project,
  { context, checks: worked }: CheckedCase,
): readonly Section[] {
  const of: LoadCase | undefined = project.loads.cases.find(
    ({ mark }) => mark === context.mark,
  );
  const head = {
    mark: context.mark,
    ...(of?.title === undefined ? {} : { title: of.title }),
  };
  const isWorked = context.method !== undefined;
  if (nothingActs(context)) {
    // Its supports may still move it, and warmth may bend it.
    const isMoved = greatestDeflections(context).length > 0;
    return [
      { kind: 'equations', case: head, steps: [narrateNoLoads(context)] },
      ...(isMoved ? displacementSection(context, head) : []),
    ];
  }
  const checks = worked.flatMap(({ fact }) => fact ?? []);
  return [
    isWorked
      ? { kind: 'redundants', case: head, steps: narrateRedundants(context) }
      : { kind: 'equations', case: head, steps: narrateEquations(context) },
    {
      kind: 'reasonable',
      case: head,
      steps: [
        ...checks,
        ...narrateAgreement(context),
        { kind: 'agreement', count: checks.length },
      ],
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
    ...displacementSection(context, head),
  ];
}

/** Item 7 of one case; nothing where E or I is not known. */
function displacementSection(
  context: CaseContext,
  head: NonNullable<Section['case']>,
): readonly Section[] {
  const steps = narrateDisplacements(context);
  return steps.length === 0 ? [] : [{ kind: 'displacements', case: head, steps }];
}

/** A determinate member feels its loads alone; another one also movements of its supports and warmth. */
function nothingActs({ structure, mark, method }: CaseContext): boolean {
  return method === undefined
    ? loadsOfCase(structure, mark).length === 0
    : isIdle(structure, mark);
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
): Omit<BeamDerivation, 'checks'> {
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
        ...definition.temperatures.flatMap(({ uses }) => uses),
        ...definition.carried.flatMap(({ uses }) => uses),
      ]),
    ],
    summary,
  };
}

function symbolsIn(statements: readonly Statement[]): readonly Symbol[] {
  return collectSymbols(statements);
}
