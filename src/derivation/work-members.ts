import type { Diagnostic } from '../diagnostics/index.ts';
import {
  greatestComponents,
  idealise,
  loadPath,
  type BeamDefinition,
  type CarriedComponents,
  type CarriedReaction,
  type Idealised,
  type MemberDefinition,
  type Project,
} from '../project/index.ts';
import type { Combination } from '../standards/index.ts';
import {
  solveBeam,
  superpose,
  superposeRanges,
  type BeamSolution,
  type BeamStructure,
  type Determinacy,
  type Load,
  type RangeResult,
} from '../statics/index.ts';
import type { BeamWork } from './beam-work.ts';
import { placeWords } from './place-words.ts';
import { printingOf, valueText, type Printing } from './printing.ts';
import type { CautionStep, ResultStep } from './steps.ts';
import { unsolvedDiagnostic } from './unsolved-words.ts';

/** A member worked as far as it goes: solved, or the diagnostic that says why not. */
export type MemberWork =
  | { readonly kind: 'worked'; readonly work: BeamWork }
  | {
      readonly kind: 'unworked';
      readonly definition: BeamDefinition;
      readonly diagnostic: Diagnostic;
      /** What counting and rank say, where the member got so far. */
      readonly determinacy?: Determinacy;
    };

/**
 * Works every member in the order of the load path, so that reactions are known before they are
 * carried on; each is solved case by case, and combinations are superposed. Answers in sheet order.
 */
export function workMembers(
  project: Project,
  combinations: readonly Combination[],
): readonly MemberWork[] {
  const path = loadPath(project.members);
  const done = new Map<string, MemberWork>();
  for (const mark of path.order) {
    const definition = project.members.find((member) => member.mark === mark);
    if (definition !== undefined)
      done.set(mark, workMember({ project, combinations, done }, definition));
  }
  for (const definition of project.members) {
    if (done.has(definition.mark)) continue;
    const circle = path.circles.find((ring) => ring.includes(definition.mark));
    done.set(
      definition.mark,
      unworked(definition, circleDiagnostic(definition, circle)),
    );
  }
  const works = project.members.flatMap(({ mark }) => done.get(mark) ?? []);
  return works.map((one) => withPartsStayingBehind(one, works));
}

/** What a carried reaction leaves behind is a caution on both sheets: here on that of the member it comes from. */
function withPartsStayingBehind(
  one: MemberWork,
  works: readonly MemberWork[],
): MemberWork {
  if (one.kind === 'unworked') return one;
  const { mark } = one.work.definition;
  const more = works.flatMap((other): readonly CautionStep[] =>
    other.kind === 'unworked'
      ? []
      : other.work.cautions.flatMap((caution) =>
          caution.caution === 'left-behind' && caution.facts.member === mark
            ? [
                {
                  ...caution,
                  caution: 'handed-on-in-part',
                  facts: { ...caution.facts, member: other.work.definition.mark },
                },
              ]
            : [],
        ),
  );
  return more.length === 0
    ? one
    : { ...one, work: { ...one.work, cautions: [...one.work.cautions, ...more] } };
}

interface Setting {
  readonly project: Project;
  readonly combinations: readonly Combination[];
  readonly done: ReadonlyMap<string, MemberWork>;
}

function unworked(definition: BeamDefinition, diagnostic: Diagnostic): MemberWork {
  return { kind: 'unworked', definition, diagnostic };
}

function workMember(setting: Setting, definition: BeamDefinition): MemberWork {
  const { project, combinations, done } = setting;
  const missing = definition.carried.find(
    ({ member }) => done.get(member)?.kind !== 'worked',
  );
  if (missing !== undefined) return unworked(definition, leansOn(definition, missing));
  const printing = printingOf(project);
  const idealised = idealise(
    project,
    definition,
    carriedComponents(setting, definition),
  );
  const outcome = solveBeam(idealised.structure);
  if (outcome.kind === 'unsolved') {
    const diagnostic = unsolvedDiagnostic(definition, outcome.unsolved, printing);
    return {
      kind: 'unworked',
      definition,
      diagnostic,
      determinacy: outcome.unsolved.determinacy,
    };
  }
  return {
    kind: 'worked',
    work: {
      definition,
      structure: withTrainsStanding(
        idealised.asPlaced,
        (outcome.rolled ?? []).flatMap(({ standing }) => standing),
      ),
      arranged: idealised.structure,
      carried: new Map(
        idealised.loads.flatMap((view) =>
          view.kind === 'carried' ? [[view.load.id, view.from] as const] : [],
        ),
      ),
      solution: outcome,
      combinations,
      combined: combinations.map(({ mark, factors }) =>
        superpose(outcome.results, factors, mark),
      ),
      ranges: allRanges(outcome, combinations),
      handedOn: handedOn(project, definition),
      cautions: leftBehindCautions(definition, idealised, printing),
    },
  };
}

/** Trains as the loads that stand for them in the states of their cases. */
function withTrainsStanding(
  { trains, ...rest }: BeamStructure,
  standing: readonly Load[],
): BeamStructure {
  return trains === undefined ? rest : { ...rest, loads: [...rest.loads, ...standing] };
}

/** The ranges of cases, and of the combinations that hold one of them. */
function allRanges(
  solution: BeamSolution,
  combinations: readonly Combination[],
): ReadonlyMap<string, RangeResult> {
  const combined = combinations.flatMap(
    ({ mark, factors }) => superposeRanges(solution, factors, mark) ?? [],
  );
  return new Map([...combined, ...solution.ranges].map((range) => [range.mark, range]));
}

/** What the supports of other members give, case by case. */
function carriedComponents(
  { done }: Setting,
  definition: BeamDefinition,
): readonly CarriedComponents[] {
  return definition.carried.flatMap((carried) => {
    const from = done.get(carried.member);
    if (from?.kind !== 'worked') return [];
    return from.work.solution.results.flatMap(
      (result): readonly CarriedComponents[] => {
        const isHere = ({ point }: { readonly point: string }): boolean =>
          point === carried.point;
        const reaction = result.reactions.find(isHere);
        if (reaction === undefined) return [];
        const of = { id: carried.id, case: result.mark };
        const range = from.work.ranges.get(result.mark)?.reactions.find(isHere);
        return range === undefined
          ? [{ ...of, reaction }]
          : [{ ...of, reaction: greatestComponents(range), range }];
      },
    );
  });
}

function handedOn(
  project: Project,
  { mark }: MemberDefinition,
): ResultStep['handedOn'] {
  return project.members.flatMap((other) =>
    other.carried
      .filter(({ member }) => member === mark)
      .map(({ point, at }) => ({
        point,
        to: other.mark,
        anchor: `member-${other.mark}`,
        at: placeWords(at),
      })),
  );
}

function leftBehindCautions(
  definition: BeamDefinition,
  { leftBehind }: Idealised,
  printing: Printing,
): readonly CautionStep[] {
  return leftBehind.map(({ id, case: mark, x, moment }) => {
    const carried = definition.carried.find((one) => one.id === id);
    const parts = [
      ...(x === 0 ? [] : [`${valueText(printing, 'force', Math.abs(x))} along x`]),
      ...(moment === 0
        ? []
        : [`a moment of ${valueText(printing, 'moment', Math.abs(moment))}`]),
    ];
    return {
      kind: 'caution',
      caution: 'left-behind',
      facts: {
        member: carried?.member ?? '',
        point: carried?.point ?? '',
        case: mark,
        what: parts.join(' and '),
      },
    };
  });
}

function leansOn(definition: BeamDefinition, carried: CarriedReaction): Diagnostic {
  return {
    severity: 'error',
    code: 'depends-on-unsolved',
    message: `carries ${carried.member}.${carried.point}, and ${carried.member} could not be solved`,
    span: carried.span,
    hints: [`mend ${carried.member} first`],
    member: definition.mark,
  };
}

function circleDiagnostic(
  definition: BeamDefinition,
  circle: readonly string[] | undefined,
): Diagnostic {
  const ring = circle === undefined ? [] : [...circle, circle[0] ?? ''];
  const first = definition.carried[0];
  return {
    severity: 'error',
    code: 'depends-on-unsolved',
    message:
      circle === undefined
        ? 'leans on members that carry one another in a circle'
        : `carries itself in a circle: ${ring.join(' carries ')}`,
    span: first?.span ?? definition.markSpan,
    hints: ['break the circle: enter one of the reactions as a load'],
    member: definition.mark,
  };
}
