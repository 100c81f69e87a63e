import {
  isAlike,
  type CheckChange,
  type ComparedFigure,
  type Comparison,
  type Reach,
} from '../../comparison/index.ts';
import {
  formatNumber,
  formatRatio,
  parseUnit,
  quantity,
  quantityText,
} from '../../units/index.ts';
import type { Part } from '../blocks.ts';
import type { ReportInput } from '../report-input.ts';
import { keptCheck } from '../revision/kept-check.ts';
import { initialsOf } from './foot.ts';
import { anchorOf } from './package-facts.ts';

/**
 * Facts of the revision sheet: from which revision to which, what changed and by how much, and the
 * sheets whose check is open again. `reached` are the parts that a change reaches, in their order.
 */
export function revisionFacts(input: ReportInput, reached: readonly Part[]): object {
  const { revision, project } = input;
  const { definition } = project;
  const mark = definition.revisions.at(-1)?.mark;
  const stated = {
    mark,
    number: definition.number,
    named: definition.supersedes,
    changes: definition.revisions.at(-1)?.note,
  };
  if (revision === undefined || 'why' in revision) return { ...stated, ...revision };
  const { comparison, bag, sha256 } = revision;
  const only = onlyOf(input, comparison);
  return {
    ...stated,
    bag,
    sha256,
    program: input.program,
    earlier: comparison.earlier,
    isAlike: isAlike(comparison),
    checks: comparison.checks.filter(only).map((check, index, all) => ({
      ...checkFacts(check),
      isFirst: check.member !== all[index - 1]?.member,
    })),
    outcomes: comparison.outcomes.filter(only).map((one) => ({
      ...one,
      anchor: anchorOf(one.member),
      is: outcomeWords[one.kind],
    })),
    parts: reached.map(({ anchor, title }) => ({
      anchor,
      title,
      ...reachFacts(comparison.reach.find(({ member }) => anchorOf(member) === anchor)),
    })),
    inputs: comparison.inputs.filter(only),
    results: resultFacts(comparison, definition.figures.value).filter(only),
    own: initialsOf(definition.people.checked),
    kept: keptCheck(definition, revision),
  };
}

/** What concerns a member is told where the package holds the member, or nobody does any more. */
function onlyOf(
  { members, project }: ReportInput,
  { reach }: Comparison,
): (one: { readonly member?: string }) => boolean {
  const held = new Set(
    members.map((one) => (one.kind === 'derived' ? one.derivation.mark : one.mark)),
  );
  const now = new Set([
    ...[...project.members, ...project.faulty].map(({ mark }) => mark),
    ...reach.map(({ member }) => member),
  ]);
  return ({ member }) => member === undefined || held.has(member) || !now.has(member);
}

const outcomeWords = {
  'no longer solved': 'has no results any more',
  'solved again': 'has results again',
  added: 'is new',
  removed: 'is gone',
} as const;

function checkFacts({ member, what, kind, before, after }: CheckChange): object {
  return {
    member,
    anchor: anchorOf(member),
    what,
    kind,
    isFailing: after !== undefined && !after.passes,
    before: before && ratioText(before),
    after: after && ratioText(after),
  };
}

const ratioText = ({ ratio, passes }: NonNullable<CheckChange['after']>): string =>
  `${formatRatio(ratio)} ${passes ? 'OK' : 'not OK'}`;

function reachFacts(reach: Reach | undefined): object {
  if (reach === undefined) return { isText: true };
  const { by, from } = reach;
  return {
    isOwn: by === 'definition',
    isProject: by === 'project',
    from: from.map((mark) => ({ mark, anchor: anchorOf(mark) })),
  };
}

function resultFacts(
  { results }: Comparison,
  figures: number,
): readonly { readonly member: string }[] {
  let above: string | undefined;
  return results.map(({ member, what, before, after, share }) => {
    const isFirst = member !== above;
    above = member;
    return {
      member,
      isFirst,
      anchor: anchorOf(member),
      what,
      before: before && figureText(before, figures),
      after: after && figureText(after, figures),
      entry: entryText(before, after),
      change: share === undefined ? undefined : percentText(share),
    };
  });
}

/** A value of results.json in the project's figures. */
function figureText({ value, unit }: ComparedFigure, figures: number): string {
  const print = { kind: 'figures', count: figures } as const;
  const parsed = parseUnit(unit);
  return parsed.unit === undefined
    ? `${formatNumber(value, print).text} ${unit}`
    : quantityText(quantity(value, parsed.unit), parsed.unit, print);
}

/** The entry that a value is from, both where it is another one now. */
function entryText(
  before: ComparedFigure | undefined,
  after: ComparedFigure | undefined,
): string {
  const [then, now] = [before?.entry, after?.entry];
  if (then === undefined || now === undefined || then === now) return now ?? then ?? '';
  return `${then}, now ${now}`;
}

/** A share as a change in per cent with its sign: `+12.5%`, `−3.0%`. */
function percentText(share: number): string {
  const { text } = formatNumber(Math.abs(share) * 100, { kind: 'decimals', count: 1 });
  return `${share < 0 ? '−' : '+'}${text}%`;
}
