import type { Determinacy } from '../statics/index.ts';
import { closureFigures, entryFigures } from './beam-figures.ts';
import { envelopesOf } from './envelope-figures.ts';
import { figuresIn, type FigureMaker } from './figures-in.ts';
import { rangeFigures, type RangeSetting } from './range-figures.ts';
import type {
  BeamResults,
  CheckFigures,
  MemberResults,
  Results,
  StaticsFigures,
  UnsolvedMember,
} from './results.ts';
import type {
  CheckInput,
  MemberInput,
  ResultsInput,
  SolvedBeamInput,
  UnsolvedMemberInput,
} from './results-input.ts';

/**
 * Every figure of a package as data, in the project's display units, in sheet order.
 *
 * @throws RangeError where two entries of a member share a mark, or a number is none.
 */
export function collectResults(input: ResultsInput): Results {
  const { number, title, revision, units } = input.project;
  const figure = figuresIn(units);
  return {
    format: 1,
    project: { number: number ?? null, title, revision: revision ?? null, units },
    members: input.members.map((member) =>
      memberResults(member, figure, input.stations),
    ),
  };
}

function memberResults(
  member: MemberInput,
  figure: FigureMaker,
  stations: number | undefined,
): MemberResults {
  switch (member.outcome) {
    case 'solved':
      return beamResults(member, figure, stations);
    case 'unsolved':
      return unsolvedMember(member);
  }
}

function beamResults(
  beam: SolvedBeamInput,
  figure: FigureMaker,
  stations: number | undefined,
): BeamResults {
  const setting: RangeSetting = { figure, choices: beam.choices ?? new Map() };
  const results = new Map(
    beam.entries.map(({ result, range }) => [
      result.mark,
      range === undefined
        ? entryFigures(result, figure, stations)
        : rangeFigures(range, setting, stations),
    ]),
  );
  if (results.size < beam.entries.length) {
    throw new RangeError(`${beam.mark} has two entries of one mark`);
  }
  return {
    mark: beam.mark,
    kind: beam.kind,
    ...titleAndSheet(beam),
    statics: staticsFigures(beam.determinacy),
    results: Object.fromEntries(results),
    ...envelopesOf(beam.entries, setting),
    checks: (beam.checks ?? []).map((check) => checkFigures(check, figure)),
    closure: beam.entries.flatMap(({ result }) => closureFigures(result, figure)),
  };
}

function checkFigures(
  { demand, capacity, at, ...rest }: CheckInput,
  figure: FigureMaker,
): CheckFigures {
  return {
    ...rest,
    demand: figure(demand, 'deflection'),
    capacity: figure(capacity, 'deflection'),
    at: figure(at, 'length'),
  };
}

function unsolvedMember(member: UnsolvedMemberInput): UnsolvedMember {
  const { determinacy, error } = member;
  return {
    mark: member.mark,
    kind: member.kind,
    ...titleAndSheet(member),
    ...(determinacy === undefined ? {} : { statics: staticsFigures(determinacy) }),
    error: {
      code: error.code,
      message: error.message,
      ...(error.file === undefined ? {} : { file: error.file }),
      ...(error.line === undefined ? {} : { line: error.line }),
    },
  };
}

function titleAndSheet(member: MemberInput): { title?: string; sheet?: number } {
  return {
    ...(member.title === undefined ? {} : { title: member.title }),
    ...(member.sheet === undefined ? {} : { sheet: member.sheet }),
  };
}

function staticsFigures(of: Determinacy): StaticsFigures {
  const { unknowns, equations, degree, stable } = of;
  return { unknowns, equations, degree, stable };
}
