import type { ResultChange } from '../comparison.ts';
import type { BeamResults } from '../../results/index.ts';
import { differs, inUnit, shareOf } from './figures.ts';
import { governing, wordsFor, type Governing } from './governing.ts';

/** How the governing values of a member changed; `pointName` reads the earlier points in later names. */
export function compareValues(
  earlier: BeamResults,
  later: BeamResults,
  pointName: (name: string) => string,
): readonly ResultChange[] {
  const words = wordsFor(earlier, later);
  const before = governing(earlier, words, pointName);
  const after = governing(later, words, (name) => name);
  const scales = scalesOf(before, after);
  const member = later.mark;
  const gone = before.filter(({ what }) => after.every((one) => one.what !== what));
  const changes = [
    ...after.flatMap(({ what, kind, figure }): readonly ResultChange[] => {
      const was = before.find((one) => one.what === what)?.figure;
      if (was === undefined) return [{ member, what, after: figure }];
      if (!differs(was, figure, scales.get(kind) ?? 0)) return [];
      const share = shareOf(was, figure);
      const change = { member, what, before: was, after: figure };
      return [share === undefined ? change : { ...change, share }];
    }),
    ...gone.map(({ what, figure }): ResultChange => ({ member, what, before: figure })),
  ];
  return changes.flatMap((change) => onceForBoth(change, changes));
}

/** A reaction of which greatest and least are one value before and after is told once. */
function onceForBoth(
  change: ResultChange,
  changes: readonly ResultChange[],
): readonly ResultChange[] {
  const [, end, reaction] = /^(greatest|least) (reaction .*)$/u.exec(change.what) ?? [];
  if (reaction === undefined) return [change];
  const otherEnd = end === 'greatest' ? 'least' : 'greatest';
  const other = changes.find(({ what }) => what === `${otherEnd} ${reaction}`);
  const isOne =
    other !== undefined &&
    change.before?.value === other.before?.value &&
    change.after?.value === other.after?.value;
  if (!isOne) return [change];
  return end === 'greatest' ? [{ ...change, what: reaction }] : [];
}

/** The greatest size of each kind on either side, in the later side's unit. */
function scalesOf(
  before: readonly Governing[],
  after: readonly Governing[],
): ReadonlyMap<Governing['kind'], number> {
  const scales = new Map<Governing['kind'], number>();
  for (const { kind, figure } of [...before, ...after]) {
    const unit = after.find((one) => one.kind === kind)?.figure.unit ?? figure.unit;
    const size = Math.abs(inUnit(figure, unit) ?? 0);
    scales.set(kind, Math.max(size, scales.get(kind) ?? 0));
  }
  return scales;
}
