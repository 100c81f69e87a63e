import type { Symbol } from '../../equation/index.ts';
import type { FigureSpec } from '../../figure/index.ts';
import type { Conventions, ProjectDefinition } from '../../project/index.ts';
import type { Combination } from '../../standards/index.ts';
import type { MemberReport, ReportInput } from '../report-input.ts';
import { notationOf } from './notation.ts';

/** Members that were narrated. */
export function derivedOf(
  members: readonly MemberReport[],
): readonly Extract<MemberReport, { kind: 'derived' }>[] {
  return members.flatMap((member) => (member.kind === 'derived' ? [member] : []));
}

/** The anchor of a member's sheets. */
export function anchorOf(mark: string): string {
  return `member-${mark}`;
}

/** Mark and title of a member as headings and the foot name it. */
export function nameOf(mark: string, title: string | undefined): string {
  return title === undefined ? mark : `${mark} ${title}`;
}

/** Facts of the basis of design. */
export function basisFacts({ project, combinations, members }: ReportInput): object {
  const { definition, loads } = project;
  return {
    ...definition,
    lengths: definition.lengths.value,
    isCantileversPlain: definition.cantilevers === 'plain',
    figures: definition.figures.value,
    conventions: conventionFacts(definition.conventions),
    conventionFigure: conventionFigure(definition.conventions),
    cases: loads.cases.map((one) => ({
      ...one,
      kindWords: one.kind?.replace('-', ' '),
    })),
    areas: Object.values(loads.areas).map((area) => ({
      ...area,
      values: Object.entries(area.byCase).map(([mark, value]) => ({
        mark,
        value: givenText(value),
      })),
    })),
    strength: combinations.combinations
      .filter((one) => one.for === 'strength')
      .map(combinationFacts),
    service: combinations.combinations
      .filter((one) => one.for === 'service')
      .map(combinationFacts),
    notes: combinations.notes
      .filter(({ kind }) => kind !== 'assumption')
      .map(({ text }) => text),
    materials: materialsOf(project.members),
    notation: inTwoColumns(notationOf(symbolsOf(members))),
  };
}

/** A list to be read down one column and then down the next. */
function inTwoColumns<T>(
  list: readonly T[],
): readonly { readonly first: T; readonly second?: T }[] {
  const rows = Math.ceil(list.length / 2);
  return list.slice(0, rows).map((first, index) => {
    const second = list[rows + index];
    return second === undefined ? { first } : { first, second };
  });
}

function symbolsOf(members: readonly MemberReport[]): readonly Symbol[] {
  return derivedOf(members).flatMap(({ derivation }) => derivation.symbols);
}

function combinationFacts({ mark, clauses }: Combination): object {
  return {
    mark,
    clauses: clauses.map((clause) =>
      clause === 'project' ? 'the project’s own' : clause,
    ),
  };
}

function givenText({
  text,
  unit,
}: {
  readonly text: string;
  readonly unit: { readonly factors: readonly { symbol: string }[] };
}): string {
  return `${text}\u00a0${unit.factors.map(({ symbol }) => symbol).join('·')}`;
}

function materialsOf(members: ReportInput['project']['members']): readonly object[] {
  const named = new Map(
    members.flatMap(({ mark, material }) =>
      material?.name === undefined
        ? []
        : [
            [
              material.name,
              { name: material.name, source: material.source, mark },
            ] as const,
          ],
    ),
  );
  return [...named.values()];
}

function conventionFacts(conventions: Conventions): object {
  return Object.fromEntries(
    Object.entries(conventions).map(
      ([key, stated]: [string, { value: string; origin: string }]) => [
        key,
        { value: stated.value, isDefault: stated.origin === 'default' },
      ],
    ),
  );
}

/** The sign conventions as small drawings, side by side. */
function conventionFigure({
  moments,
  horizontal,
  vertical,
  momentDiagram,
}: Conventions): FigureSpec {
  return {
    kind: 'conventions',
    shown: [
      {
        what: {
          kind: 'forces',
          horizontal: horizontal.value,
          vertical: vertical.value,
        },
        caption: 'forces in sums',
      },
      {
        what: { kind: 'moments', positive: moments.value },
        caption: 'moments in sums',
      },
      { what: { kind: 'axial' }, caption: 'axial force N' },
      { what: { kind: 'shear' }, caption: 'shear force V' },
      {
        what: { kind: 'bending', drawnOn: momentDiagram.value },
        caption: 'bending moment M',
      },
    ],
    alternate: `Sign conventions. In sums, forces count positive ${horizontal.value} and ${vertical.value}, moments ${moments.value}. Axial force is positive in tension, shear where the left part pushes the right part up, bending moment where the member sags.`,
  };
}

/** Facts of the list of assumptions: the project's and the program's, with the sheets that lean on each. */
export function assumptionFacts({
  project,
  members,
  combinations,
}: ReportInput): object {
  const users = (
    id: string,
  ): readonly { readonly mark: string; readonly anchor: string }[] =>
    derivedOf(members)
      .filter(({ derivation }) => derivation.uses.includes(id))
      .map(({ derivation }) => ({
        mark: derivation.mark,
        anchor: anchorOf(derivation.mark),
      }));
  const { assumptions, references } = project.definition;
  const withSelfWeight = project.members
    .filter(({ selfWeight }) => selfWeight !== undefined)
    .map(({ mark }) => mark);
  const withAssumedStiffness = derivedOf(members)
    .filter(({ derivation }) =>
      derivation.sections.some(({ steps }) =>
        steps.some(
          (step) =>
            step.kind === 'method' &&
            step.redundants?.assumesConstantStiffness === true,
        ),
      ),
    )
    .map(({ derivation }) => derivation.mark);
  return {
    assumptions: assumptions.map((one) => ({ ...one, users: users(one.id) })),
    references: references.map((one) => ({ ...one, users: users(one.id) })),
    fromStandards: combinations.notes
      .filter(({ kind }) => kind === 'assumption')
      .map(({ text }) => text),
    defaults: defaultsOf(project.definition),
    withSelfWeight,
    hasSelfWeight: withSelfWeight.length > 0,
    withAssumedStiffness,
    hasAssumedStiffness: withAssumedStiffness.length > 0,
  };
}

/** What the file did not say and the program took instead. */
function defaultsOf(
  definition: ProjectDefinition,
): readonly { readonly what: string; readonly value: string }[] {
  const { conventions } = definition;
  const stated = [
    {
      what: 'figures printed',
      of: { ...definition.figures, value: String(definition.figures.value) },
    },
    { what: 'paper', of: definition.paper },
    { what: 'lengths', of: definition.lengths },
    { what: 'status', of: definition.status },
    { what: 'moments positive in sums', of: conventions.moments },
    { what: 'horizontal forces positive in sums', of: conventions.horizontal },
    { what: 'vertical forces positive in sums', of: conventions.vertical },
    { what: 'moment diagram drawn on the side in', of: conventions.momentDiagram },
  ];
  return stated
    .filter(({ of }) => of.origin === 'default')
    .map(({ what, of }) => ({ what, value: of.value }));
}

/** Facts of the cautions that every package carries, and the project's own. */
export function cautionFacts({ project, combinations }: ReportInput): object {
  return {
    given: project.definition.cautions,
    fromCombinations: combinations.notes
      .filter(({ kind }) => kind === 'caution')
      .map(({ text }) => text),
    untaken: combinations.untaken,
  };
}
