import {
  choiceNames,
  type BeamWork,
  type DerivedMember,
  type JudgedLimit,
} from '../derivation/index.ts';
import { placeAt, type Diagnostic } from '../diagnostics/index.ts';
import type { Project } from '../project/index.ts';
import type { CheckInput, EntryInput, MemberInput } from '../results/index.ts';
import { markOf } from './asked-for.ts';
import { reactionTable } from './reaction-table.ts';
import type { MemberReport } from './report-input.ts';

/** A member as results.json takes it: its entries, or why it has none. */
export function memberInput(
  project: Project,
  member: DerivedMember,
  sheets: Readonly<Record<string, number>> | undefined,
): MemberInput {
  const mark = markOf(member);
  const sheet = sheets?.[`member-${mark}`];
  const title = member.kind === 'derived' ? member.derivation.title : member.title;
  const identity = {
    mark,
    ...(title === undefined ? {} : { title }),
    ...(sheet === undefined ? {} : { sheet }),
  };
  if (member.kind === 'derived') {
    return {
      ...identity,
      outcome: 'solved',
      kind: 'beam',
      determinacy: member.work.solution.determinacy,
      entries: entriesOf(member.work),
      choices: choiceNames(member.work.definition, member.work.arranged),
      checks: member.derivation.checks.map(checkInput),
    };
  }
  const [first] = member.diagnostics;
  return {
    ...identity,
    outcome: 'unsolved',
    kind: member.memberKind,
    ...(member.determinacy === undefined ? {} : { determinacy: member.determinacy }),
    error: {
      code: first?.code ?? 'unstable',
      message: first?.message ?? '',
      ...placeOf(project, first),
    },
  };
}

/** A judged limit as data: its clause is the file's own limit, with the source of a doubled length. */
function checkInput({
  entry,
  text,
  from,
  span,
  size,
  greatest,
  ratio,
  passes,
}: JudgedLimit): CheckInput {
  const doubled = size.kind === 'share' && size.times === 2;
  return {
    name: 'deflection',
    clause: `${text}, deflection limit of the ${from}${doubled ? ', twice the length (IBC Table 1604.3, note)' : ''}`,
    combination: entry,
    demand: Math.abs(greatest.value),
    capacity: size.si,
    ratio,
    passes,
    span: `${span.start} to ${span.end}`,
    at: greatest.x,
  };
}

/** Cases, then combinations; a combination marked like a case is the same entry. */
function entriesOf({
  solution,
  combinations,
  combined,
  ranges,
}: BeamWork): readonly EntryInput[] {
  const uses = new Map<string, EntryInput>();
  for (const result of solution.results)
    uses.set(result.mark, { result, uses: ['case'] });
  for (const [index, result] of combined.entries()) {
    const known = uses.get(result.mark);
    const use = combinations[index]?.for ?? 'strength';
    uses.set(result.mark, {
      result: known?.result ?? result,
      uses: [...(known?.uses ?? []), use],
    });
  }
  return [...uses.values()].map((entry) => {
    const range = ranges.get(entry.result.mark);
    return range === undefined ? entry : { ...entry, range };
  });
}

function placeOf(
  project: Project,
  diagnostic: Diagnostic | undefined,
): { readonly file?: string; readonly line?: number } {
  const span = diagnostic?.span;
  if (span === undefined) return {};
  const source = project.files.find(({ path }) => path === span.file);
  return source === undefined
    ? { file: span.file }
    : { file: span.file, line: placeAt(source, span.start).line };
}

/** A member as the package takes it: narrated with its reactions, or the findings that stand on its sheet instead. */
export function memberReport(project: Project, member: DerivedMember): MemberReport {
  if (member.kind === 'failed') {
    return {
      kind: 'failed',
      mark: member.mark,
      ...(member.title === undefined ? {} : { title: member.title }),
      findings: member.diagnostics.map((diagnostic) => {
        const { file, line } = placeOf(project, diagnostic);
        return {
          code: diagnostic.code,
          place:
            file === undefined
              ? ''
              : line === undefined
                ? file
                : `${file}, line ${line}`,
          message: diagnostic.message,
          hints: diagnostic.hints,
        };
      }),
    };
  }
  const { units, figures } = project.definition;
  return {
    kind: 'derived',
    derivation: member.derivation,
    reactions: reactionTable(member.work, { system: units, figures: figures.value }),
    closure: closureOf(member.work),
  };
}

/** The greatest residual beside its scale. */
function closureOf({ solution }: BeamWork): number {
  const shares = solution.results.flatMap(({ residuals }) =>
    residuals.map(({ residual, scale }) =>
      scale === 0 ? 0 : Math.abs(residual) / scale,
    ),
  );
  return Math.max(0, ...shares);
}

/** Members whose definition holds an error: they appear with it and without results. */
export function faultyMembers(
  project: Project,
  diagnostics: readonly Diagnostic[],
): readonly DerivedMember[] {
  return project.faulty.map(({ mark, kind, title }) => ({
    kind: 'failed',
    mark,
    memberKind: kind,
    ...(title === undefined ? {} : { title }),
    diagnostics: diagnostics.filter(
      ({ member, severity }) => member === mark && severity === 'error',
    ),
  }));
}
