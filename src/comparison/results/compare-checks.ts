import type { CheckChange } from '../comparison.ts';
import type { BeamResults, CheckFigures } from '../../results/index.ts';
import { laterNames, sumIn, type Names } from '../inputs/names.ts';
import { tolerance } from './figures.ts';

/** How the checks of a member changed. `earlier` is absent for a member that came or could not be solved then. */
export function compareChecks(
  earlier: BeamResults | undefined,
  later: BeamResults,
  names: Names,
): readonly CheckChange[] {
  const before = (earlier?.checks ?? []).map((check) => ({
    key: keyOf(check, names, (name) => names.point(earlier?.mark ?? '', name)),
    check,
  }));
  const after = later.checks.map((check) => ({
    key: keyOf(check, laterNames, (name) => name),
    check,
  }));
  const member = later.mark;
  const gone = before.filter(({ key }) => after.every((one) => one.key !== key));
  return [
    ...after.flatMap(({ key, check }): readonly CheckChange[] => {
      const was = before.find((one) => one.key === key)?.check;
      const stand = { member, what: checkWords(check), after: judged(check) };
      if (was === undefined) {
        // Nobody has to be told that a check which is new holds on a member that is new.
        if (earlier === undefined && check.passes) return [];
        return [{ kind: check.passes ? 'added' : 'newly failing', ...stand }];
      }
      const kind = kindOf(was, check);
      return kind === undefined ? [] : [{ kind, ...stand, before: judged(was) }];
    }),
    ...gone.map(({ check }): CheckChange => ({
      kind: 'removed',
      member,
      what: checkWords(check),
      before: judged(check),
    })),
  ];
}

/** What makes a check the same on both sides, in the later names. */
function keyOf(
  { name, combination, span }: CheckFigures,
  names: Names,
  pointName: (name: string) => string,
): string {
  const ends = (span ?? '').split(' to ').map(pointName).join(' to ');
  return `${name} ${sumIn(names, combination)} ${ends}`;
}

/** Newly failing first, the rest in their order. */
export function failingFirst(changes: readonly CheckChange[]): readonly CheckChange[] {
  const isFirst = ({ kind }: CheckChange): boolean => kind === 'newly failing';
  return [...changes.filter(isFirst), ...changes.filter((change) => !isFirst(change))];
}

function kindOf(
  before: CheckFigures,
  after: CheckFigures,
): CheckChange['kind'] | undefined {
  if (before.passes && !after.passes) return 'newly failing';
  if (!before.passes && after.passes) return 'mended';
  const scale = Math.max(Math.abs(before.ratio), Math.abs(after.ratio));
  if (Math.abs(after.ratio - before.ratio) <= tolerance * scale) return undefined;
  return after.passes ? 'changed' : 'still failing';
}

function checkWords({ name, combination, span }: CheckFigures): string {
  return `${name} ${combination}${span === undefined ? '' : ` of span ${span}`}`;
}

const judged = ({
  ratio,
  passes,
}: CheckFigures): { readonly ratio: number; readonly passes: boolean } => ({
  ratio,
  passes,
});
